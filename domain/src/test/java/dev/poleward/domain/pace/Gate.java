package dev.poleward.domain.pace;

import dev.poleward.domain.event.TimingEvent.TimingRecorded;
import dev.poleward.domain.history.Happening;
import dev.poleward.domain.history.Told;
import org.jspecify.annotations.Nullable;

/**
 * Tells what the device gate-1 timed in a test: its clock showed 0 at minute 0, and a run of 1.5
 * seconds ended at the minute that is told, unless it says otherwise.
 */
record Gate(@Nullable String session, @Nullable String dog, @Nullable String rep, double seconds) {

  private static final double MINUTE = 60_000;

  /** It says nothing but times. */
  static final Gate DUMB = new Gate(null, null, null, 1.5);

  /** It knows that it is juniper's, in s-1. */
  static final Gate OF_JUNIPER = new Gate("s-1", "juniper", null, 1.5);

  /** The timing of that run. */
  static Gate of(String rep) {
    return new Gate(null, null, rep, 1.5);
  }

  Gate in(double told) {
    return new Gate(session, dog, rep, told);
  }

  /** At that minute, under that event id. */
  Happening at(int minute, String id) {
    return taken(minute, minute, minute).as(id);
  }

  /** A run that ended at one minute, is said to have at another, and was sent at a third. */
  Happening taken(double ended, int said, double sent) {
    return Happening.of(
            new TimingRecorded(
                "gate-1",
                (long) ended,
                (long) (sent * MINUTE),
                ended * MINUTE - 1_000 * seconds,
                ended * MINUTE,
                null,
                session,
                dog,
                rep,
                null))
        .at(said)
        .recordedAt(Told.RECORDED_FROM);
  }
}
