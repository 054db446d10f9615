package dev.poleward.domain.planning;

import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.record.PlacedRep;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * What came of a plan: the dog's reps from when it was handed out, for a day and a half, whatever
 * was handed out since. Each rep counts for the first drill it is a run of that lacks reps; what is
 * more, or else, is apart. Void reps are left out.
 *
 * @param drills one for each of the plan, in its order
 * @param otherReps that were not planned
 * @param otherClean of them
 */
public record PlanOutcome(List<Done> drills, int otherReps, int otherClean) {

  /** So long a plan is looked after [C]. */
  public static final Duration LOOKED_AFTER = Duration.ofHours(36);

  /**
   * What was done of a drill.
   *
   * @param reps at most those planned
   * @param clean of them
   */
  public record Done(int reps, int clean) {

    private Done with(boolean isClean) {
      return new Done(reps + 1, clean + (isClean ? 1 : 0));
    }
  }

  /** Keeps the drills from changing. */
  public PlanOutcome {
    drills = List.copyOf(drills);
  }

  /**
   * Compares.
   *
   * @param reps of the dog, ascending by (time, id)
   * @param issued when the plan was handed out
   */
  public static PlanOutcome of(List<PlannedDrill> planned, List<PlacedRep> reps, Instant issued) {
    Instant until = issued.plus(LOOKED_AFTER);
    List<Done> done = new ArrayList<>();
    planned.forEach(_ -> done.add(new Done(0, 0)));
    int others = 0;
    int othersClean = 0;
    for (PlacedRep rep : reps) {
      Instant time = rep.moment().time();
      if (time.isBefore(issued) || !time.isBefore(until) || rep.outcome() == Outcome.VOID) {
        continue;
      }
      boolean clean = rep.outcome() == Outcome.CLEAN;
      int place = place(planned, done, rep);
      if (place < 0) {
        others++;
        othersClean += clean ? 1 : 0;
      } else {
        done.set(place, done.get(place).with(clean));
      }
    }
    return new PlanOutcome(done, others, othersClean);
  }

  private static int place(List<PlannedDrill> planned, List<Done> done, PlacedRep rep) {
    for (int i = 0; i < planned.size(); i++) {
      if (done.get(i).reps() < planned.get(i).reps() && planned.get(i).isRunBy(rep)) {
        return i;
      }
    }
    return -1;
  }

  /** How many reps were planned and run. */
  public int reps() {
    return drills.stream().mapToInt(Done::reps).sum();
  }

  /** How many of those were clean. */
  public int clean() {
    return drills.stream().mapToInt(Done::clean).sum();
  }
}
