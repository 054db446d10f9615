package dev.poleward.domain.pace;

import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.layout.Setup;
import java.util.ArrayList;
import java.util.List;

/**
 * Which timed reps say how fast a dog is, and how many were set aside for what.
 *
 * @param runs those that count, in the order of their reps
 * @param notClean void, with a fault, or helped: the time is another thing then
 * @param withoutPoles of which nobody knows how many poles stood
 * @param implausible clean, and faster than {@link #GAPS_A_SECOND_MAX}: an error of the timing
 */
record CountedRuns(List<CleanRun> runs, int notClean, int withoutPoles, int implausible) {

  /** Twelve poles in 2.0 seconds; what is faster is an error [C]. */
  static final double GAPS_A_SECOND_MAX = 5.5;

  static CountedRuns of(List<TimedRep> reps) {
    List<CleanRun> runs = new ArrayList<>();
    int notClean = 0;
    int withoutPoles = 0;
    int implausible = 0;
    for (TimedRep timed : reps) {
      Setup setup = timed.rep().setup();
      if (timed.rep().outcome() != Outcome.CLEAN || timed.rep().isHelped()) {
        notClean++;
      } else if (setup == null) {
        withoutPoles++;
      } else if (setup.poles() - 1 > GAPS_A_SECOND_MAX * timed.seconds()) {
        implausible++;
      } else {
        runs.add(run(timed, setup));
      }
    }
    return new CountedRuns(List.copyOf(runs), notClean, withoutPoles, implausible);
  }

  private static CleanRun run(TimedRep timed, Setup setup) {
    return new CleanRun(
        new RunKind(setup.poles(), timed.rep().angle() == null ? null : timed.rep().angle().side()),
        timed.rep().manoeuvre(),
        timed.rep().moment().time(),
        timed.seconds(),
        timed.gapSeconds(setup.poles()));
  }
}
