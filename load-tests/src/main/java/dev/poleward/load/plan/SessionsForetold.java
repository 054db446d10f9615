package dev.poleward.load.plan;

import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.PoolStanding;
import dev.poleward.domain.planning.SessionPlan;
import dev.poleward.load.figures.Report;
import java.util.EnumMap;
import java.util.Map;

/** How often whole sessions were expected below the programme's floor, and came out there. */
final class SessionsForetold {

  /** What the dog brought to a session. */
  private enum Knows {
    NOTHING_SOLID("dogs with nothing solid"),
    SOMETHING_SOLID("dogs with something solid");

    private final String words;

    Knows(String words) {
      this.words = words;
    }

    static Knows of(DogStanding dog) {
      return dog.pools().stream().anyMatch(PoolStanding::isSolid) ? SOMETHING_SOLID : NOTHING_SOLID;
    }
  }

  private static final double SLIVER = 1e-9;

  /** Sessions of dogs of one kind. */
  private static final class Count {
    private int sessions;
    private int expectedBelow;
    private int chanceBelow;
    private int cleanBelow;
    private double expected;
    private double least = 1;
  }

  private final Map<Knows, Count> counts = new EnumMap<>(Knows.class);
  private Count count = new Count();
  private double floor;
  private int reps;
  private int clean;
  private double chances;

  void begins(SessionPlan plan, Trainee dog) {
    ends();
    DogStanding standing = dog.standing();
    floor = standing.programme().cleanFloor();
    count = counts.computeIfAbsent(Knows.of(standing), _ -> new Count());
    count.sessions++;
    count.expected += plan.expectedClean();
    count.expectedBelow += plan.expectedClean() < floor - SLIVER ? 1 : 0;
    count.least = Math.min(count.least, plan.expectedClean());
  }

  void ran(double chance, boolean isClean) {
    reps++;
    clean += isClean ? 1 : 0;
    chances += chance;
  }

  private void ends() {
    if (reps > 0) {
      count.chanceBelow += chances / reps < floor - SLIVER ? 1 : 0;
      count.cleanBelow += (double) clean / reps < floor - SLIVER ? 1 : 0;
    }
    reps = 0;
    clean = 0;
    chances = 0;
  }

  void print(String program, String settings) {
    ends();
    Report report =
        new Report(
            program + ": sessions",
            settings,
            "sessions of",
            "sessions",
            "expected share",
            "least expected",
            "expected below the floor",
            "true chance below it",
            "clean share below it");
    counts.forEach(
        (knows, each) ->
            report.row(
                knows.words,
                each.sessions,
                Calibration.share(each.expected / each.sessions),
                Calibration.share(each.least),
                Calibration.share((double) each.expectedBelow / each.sessions),
                Calibration.share((double) each.chanceBelow / each.sessions),
                Calibration.share((double) each.cleanBelow / each.sessions)));
    report.print();
  }
}
