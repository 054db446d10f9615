package dev.poleward.domain.outlook;

import dev.poleward.domain.programme.Programme;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** How long a dog will need, as far as can be told. */
public sealed interface Outlook {

  /**
   * It can be told.
   *
   * @param from the day that is looked ahead from: today, or the end of the dog's rest
   * @param traits what is held of the dog, in the units of {@link Trait}
   * @param ownShare how much of the quickness comes from the dog's own reps, 0 to 1
   * @param reps of the dog that were looked at
   * @param clubDogs how many other dogs of the club spoke
   * @param own the dog's rhythm as it was measured
   * @param rhythms the dog's own first, where it has one; never empty
   */
  record Told(
      Programme programme,
      LocalDate from,
      Map<Trait, Normal> traits,
      double ownShare,
      int reps,
      int clubDogs,
      OwnRhythm own,
      List<RhythmAhead> rhythms)
      implements Outlook {

    /** Keeps everything from changing, and the traits in their order. */
    public Told {
      traits = Collections.unmodifiableMap(new TreeMap<>(traits));
      rhythms = List.copyOf(rhythms);
    }

    /** At the dog's own rhythm, or at the first of the others. */
    public RhythmAhead likeliest() {
      return rhythms.getFirst();
    }
  }

  /** It cannot be told. */
  record CannotTell(Reason reason) implements Outlook {}

  /** Why it cannot be told. */
  enum Reason {
    /** The programme that is assigned has a document with faults. */
    NO_PROGRAMME,
    /** The dog rests until further notice. */
    RESTING,
    /** It has run too few reps. */
    TOO_FEW_REPS,
    /** It has trained too few times. */
    TOO_FEW_SESSIONS
  }
}
