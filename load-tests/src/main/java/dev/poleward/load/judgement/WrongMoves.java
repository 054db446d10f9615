package dev.poleward.load.judgement;

import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.judgement.Decision;
import dev.poleward.domain.judgement.Evidence;
import dev.poleward.domain.judgement.HandledRep;
import dev.poleward.domain.judgement.MovingOnTest;
import dev.poleward.domain.judgement.RungJudgement;
import dev.poleward.domain.judgement.RungStanding;
import dev.poleward.domain.judgement.SlipWatch;
import dev.poleward.domain.judgement.Verdict;
import dev.poleward.domain.programme.Handling;
import dev.poleward.domain.programme.MovingOnRule;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * How often a rule moves dogs on whose share of clean reps never changes.
 *
 * @param rule of the programme
 * @param share of clean reps, the same with every handling
 */
public record WrongMoves(MovingOnRule rule, double share) {

  private static final List<Handling> HANDLINGS =
      List.of(
          new Handling(Manoeuvre.ALONGSIDE, DogSide.LEFT, null),
          new Handling(Manoeuvre.ALONGSIDE, DogSide.RIGHT, null),
          new Handling(Manoeuvre.REAR_CROSS, DogSide.LEFT, null),
          new Handling(Manoeuvre.RECALL, null, null));

  /** Ends of tests, a dog each. */
  public record OneTest(double movedOn, double reps) {}

  /** One test a dog, until it decides; a rule that looks at n reps decides at the n-th at last. */
  public OneTest oneTest(int dogs, SplittableRandom random) {
    int movedOn = 0;
    long reps = 0;
    for (int dog = 0; dog < dogs; dog++) {
      Evidence evidence = MovingOnTest.of(rule).begun();
      while (evidence.decision() == Decision.UNDECIDED) {
        evidence = evidence.with(random.nextDouble() < share);
        reps++;
      }
      movedOn += evidence.decision() == Decision.MOVE_ON ? 1 : 0;
    }
    return new OneTest((double) movedOn / dogs, (double) reps / dogs);
  }

  /**
   * How often a rung is moved on from at the one handling that was left until the test was through:
   * from there on only that is run, until the verdict is no longer undecided. The other handlings
   * have the share, this one its own.
   *
   * @param late share of clean reps with the last handling
   */
  public double byTheLastHandling(double late, int rungs, SplittableRandom random) {
    int movedOn = 0;
    for (int rung = 0; rung < rungs; rung++) {
      List<HandledRep> trained = new ArrayList<>();
      RungJudgement judgement = judged(trained);
      while (!judgement.testPassed() || judgement.missing().size() > 1) {
        Handling handling = HANDLINGS.get(random.nextInt(HANDLINGS.size() - 1));
        trained.add(new HandledRep(handling, random.nextDouble() < share));
        judgement = judged(trained);
      }
      while (judgement.verdict() instanceof Verdict.Undecided) {
        trained.add(new HandledRep(HANDLINGS.getLast(), random.nextDouble() < late));
        judgement = judged(trained);
      }
      movedOn += judgement.verdict() instanceof Verdict.MoveOn ? 1 : 0;
    }
    return (double) movedOn / rungs;
  }

  /**
   * How often one test of a rung, with its handlings one after the other, moves a dog on: each is
   * run until it was clean or something is decided, the last until then.
   */
  public double handlingByHandling(int rungs, SplittableRandom random) {
    int movedOn = 0;
    for (int rung = 0; rung < rungs; rung++) {
      List<HandledRep> trained = new ArrayList<>();
      RungJudgement judgement = judged(trained);
      while (judgement.verdict() instanceof Verdict.Undecided) {
        List<Handling> missing = judgement.missing();
        // The last is left until the test is through.
        Handling next =
            missing.size() > 1
                ? missing.getFirst()
                : judgement.testPassed() ? HANDLINGS.getLast() : HANDLINGS.getFirst();
        trained.add(new HandledRep(next, random.nextDouble() < share));
        judgement = judged(trained);
      }
      movedOn += judgement.verdict() instanceof Verdict.MoveOn ? 1 : 0;
    }
    return (double) movedOn / rungs;
  }

  private RungJudgement judged(List<HandledRep> trained) {
    return RungJudgement.of(HANDLINGS, rule, SlipWatch.USUAL, trained);
  }

  /**
   * Whether each of so many rungs was moved on from within so many reps: test after test, stepping
   * back, every handling clean once, as the service judges.
   */
  public boolean[] rungs(int rungs, int reps, SplittableRandom random) {
    boolean[] movedOn = new boolean[rungs];
    for (int rung = 0; rung < rungs; rung++) {
      List<HandledRep> trained = new ArrayList<>(reps);
      for (int rep = 0; rep < reps; rep++) {
        Handling handling = HANDLINGS.get(random.nextInt(HANDLINGS.size()));
        trained.add(new HandledRep(handling, random.nextDouble() < share));
      }
      RungStanding standing = judged(trained).standing();
      movedOn[rung] = standing == RungStanding.SOLID || standing == RungStanding.SLIPPING;
    }
    return movedOn;
  }
}
