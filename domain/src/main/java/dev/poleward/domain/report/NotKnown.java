package dev.poleward.domain.report;

/**
 * Something that a page cannot say, or says less surely for.
 *
 * @param matter what it is about
 * @param count of how many things; 1 where there is nothing to count
 */
public record NotKnown(Matter matter, int count) {

  /** What is not known. */
  public enum Matter {
    /** The class had no session in the span. */
    SESSIONS,
    /** Nobody was a member in the span. */
    MEMBERS,
    /** The dog ran no rep in the span; or so many dogs did not. */
    REPS,
    /** There are fewer than {@link DogPage#REPS_FEW} reps without help: so many. */
    FEW_REPS,
    /** Nobody said when the dog was born. */
    AGE,
    /** No programme was assigned; the default one was followed. */
    PROGRAMME,
    /** The programme assigned has a document with faults; the one before stayed in use. */
    READABLE_PROGRAMME,
    /** For so many reps nobody said what stood. */
    SETUP_OF_REPS,
    /** For so many reps nobody said where the dog came from. */
    ANGLE_OF_REPS,
    /** So many reps belong to no drill of the programme: they count for curves alone. */
    DRILL_OF_REPS,
    /** For so many faults nobody said at which pole. */
    POLE_OF_FAULTS,
    /** Nothing was told of the rewards of what the dog works on. */
    REWARDS,
    /** So many times nobody noted whether a member was there, and it has no reps. */
    ATTENDANCE,
    /** So many times a dog was noted to be away and has reps. */
    CONTRADICTED_ATTENDANCE,
    /** So many sessions with reps have no setup. */
    SETUP_OF_SESSIONS,
    /** Of so many setups nobody knows until when they stood. */
    EQUIPMENT_TIME
  }
}
