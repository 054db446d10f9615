package dev.poleward.domain.programme;

import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.event.Reward;
import dev.poleward.domain.event.RewardDelivery;
import dev.poleward.domain.event.RewardKind;
import dev.poleward.domain.event.RewardPlace;
import dev.poleward.domain.layout.ClockPosition;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.layout.PoleLine;
import dev.poleward.domain.programme.Entries.Clocks;
import dev.poleward.domain.programme.Entries.Turned;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/** Makes programmes of every kind that is in order, none of them large. For one thread. */
final class ProgrammeMaker {

  private final SplittableRandom random;

  ProgrammeMaker(SplittableRandom random) {
    this.random = random;
  }

  Programme programme() {
    List<Stage> stages = new ArrayList<>();
    for (int i = 1 + random.nextInt(4); i > 0; i--) {
      stages.add(stage("s-" + stages.size(), stages));
    }
    double target = random.nextDouble(0.5, 1);
    return new Programme(
        "made",
        1 + random.nextInt(9),
        "Made",
        random.nextBoolean() ? "by a machine" : null,
        target,
        target * random.nextDouble(0.1, 0.9),
        stages);
  }

  private Stage stage(String id, List<Stage> before) {
    LeadIn leadIn = of(LeadIn.values());
    StageKind kind = of(StageKind.values());
    PoleLine line = new PoleLine(2 + random.nextInt(11), random.nextDouble(0.3, 1.5));
    return new Stage(
        id,
        random.nextBoolean() ? "Stage " + id : null,
        new StageGround(
            line,
            leadIn,
            leadIn != LeadIn.NONE && random.nextBoolean() ? random.nextDouble(0, 50) : null),
        entries(line),
        handlings(),
        leadIn == LeadIn.JUMP ? some(BackChainStep.values()) : List.of(),
        before.stream()
            .filter(each -> each.terms().kind() == StageKind.REGULAR || kind == StageKind.PROBE)
            .filter(_ -> random.nextBoolean())
            .map(Stage::id)
            .toList(),
        new StageTerms(
            kind, of(StageOrder.values()), random.nextDouble(0.5, 15), rule(), ladder()));
  }

  private Entries entries(PoleLine line) {
    if (random.nextBoolean()) {
      List<ClockPosition> clocks = new ArrayList<>();
      for (int half = 0; half < 24; half++) {
        int hour = half / 2 == 0 ? 12 : half / 2;
        if (half != 12 && random.nextInt(4) == 0) {
          clocks.add(new ClockPosition(hour, half % 2 == 1));
        }
      }
      return new Clocks(clocks.isEmpty() ? List.of(new ClockPosition(12, false)) : clocks);
    }
    double start = random.nextBoolean() ? 0 : random.nextDouble(0, 90);
    TurnStep step =
        random.nextBoolean()
            ? new TurnStep.Degrees(random.nextDouble(5, 90))
            : new TurnStep.Chord(Math.min(5, random.nextDouble(0.1, 1) * line.longestChord()));
    return new Turned(start, start + random.nextDouble(0, 85), step, of(EntrySide.values()));
  }

  /** Each manoeuvre with any side or with each; all but the first end somewhere. */
  private List<Handling> handlings() {
    List<Handling> handlings = new ArrayList<>();
    for (Manoeuvre manoeuvre : some(Manoeuvre.values())) {
      Double until = handlings.isEmpty() ? null : Double.valueOf(179);
      if (Handling.knowsSides(manoeuvre) && random.nextBoolean()) {
        handlings.add(new Handling(manoeuvre, DogSide.LEFT, until));
        handlings.add(new Handling(manoeuvre, DogSide.RIGHT, until));
      } else {
        handlings.add(new Handling(manoeuvre, null, until));
      }
    }
    return handlings.isEmpty() ? List.of(new Handling(Manoeuvre.ALONGSIDE, null, null)) : handlings;
  }

  private MovingOnRule rule() {
    int back = 1 + random.nextInt(20);
    double misfit = random.nextDouble(0.01, 0.49);
    int n = 1 + random.nextInt(100);
    double mastered = random.nextDouble(0.5, 1);
    return switch (random.nextInt(3)) {
      case 0 -> new MovingOnRule.KOfN(1 + random.nextInt(n), n, back, misfit);
      case 1 -> new MovingOnRule.Run(n, back, misfit);
      default ->
          new MovingOnRule.Sequential(
              mastered, mastered * random.nextDouble(0.1, 0.9), misfit / 2, misfit, back, misfit);
    };
  }

  private RewardLadder ladder() {
    List<RewardStep> steps = new ArrayList<>();
    for (int i = 1 + random.nextInt(3); i > 0; i--) {
      List<Reward> rewards = new ArrayList<>();
      for (int j = random.nextInt(3); j > 0; j--) {
        rewards.add(
            new Reward(
                of(RewardKind.values()),
                of(RewardPlace.values()),
                random.nextBoolean() ? random.nextInt(51) : null,
                maybe(RewardDelivery.values())));
      }
      steps.add(new RewardStep(random.nextBoolean() ? "step " + i : null, rewards));
    }
    return new RewardLadder(steps);
  }

  private <T> T of(T[] these) {
    return these[random.nextInt(these.length)];
  }

  private <T> @Nullable T maybe(T[] these) {
    return random.nextBoolean() ? of(these) : null;
  }

  private <T> List<T> some(T[] these) {
    List<T> some = new ArrayList<>();
    for (T each : these) {
      if (random.nextInt(3) == 0) {
        some.add(each);
      }
    }
    return some;
  }
}
