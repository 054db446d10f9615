package dev.poleward.domain.report;

import org.jspecify.annotations.Nullable;

/**
 * One dog in one session.
 *
 * @param dog its id after merges
 * @param presence what follows from the note and the reps
 * @param noted what was noted last; null when nothing was
 * @param reps how many it has there, helped and void ones too
 */
public record Attendance(String dog, Presence presence, @Nullable Boolean noted, int reps) {

  static Attendance of(String dog, @Nullable Boolean noted, int reps) {
    return new Attendance(dog, presence(noted, reps), noted, reps);
  }

  private static Presence presence(@Nullable Boolean noted, int reps) {
    if (reps > 0 || Boolean.TRUE.equals(noted)) {
      return Presence.PRESENT;
    }
    return noted == null ? Presence.UNKNOWN : Presence.ABSENT;
  }

  /** Whether the dog was said to be away and has reps all the same. */
  public boolean isContradicted() {
    return reps > 0 && Boolean.FALSE.equals(noted);
  }
}
