package dev.poleward.domain.outlook;

import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.MovingOnTest;
import dev.poleward.domain.judgement.PoolStanding;
import dev.poleward.domain.judgement.RungJudgement;
import dev.poleward.domain.judgement.Verdict;
import dev.poleward.domain.outlook.Curriculum.Exercise;
import dev.poleward.domain.outlook.Curriculum.Place;
import dev.poleward.domain.outlook.Curriculum.Pool;
import dev.poleward.domain.programme.Handling;
import dev.poleward.domain.programme.Stage;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What a plain trainer writes down of one dog: for each pool how its test stands, which handlings
 * were clean, and whether it is passed. Passed is passed: slips are not looked for ahead. For one
 * thread.
 */
public final class Notebook {

  private final Curriculum curriculum;
  private final TestState[] begun;
  private final int[] stepBackAfter;
  private final TestState[] tests;
  private final long[] clean;
  private final int[] missesInARow;
  private final boolean[] passed;
  private final int[] left;

  private Notebook(Curriculum curriculum) {
    this.curriculum = curriculum;
    int pools = curriculum.pools().size();
    this.begun = new TestState[pools];
    this.stepBackAfter = new int[pools];
    this.clean = new long[pools];
    this.missesInARow = new int[pools];
    this.passed = new boolean[pools];
    this.left = new int[curriculum.stages().size()];
    Map<MovingOnTest, TestState> states = new HashMap<>();
    for (int i = 0; i < pools; i++) {
      Pool pool = curriculum.pools().get(i);
      Stage stage = curriculum.stages().get(pool.stage());
      begun[i] = states.computeIfAbsent(MovingOnTest.of(stage.terms().rule()), TestState::begun);
      stepBackAfter[i] = stage.terms().rule().stepBackAfter();
      left[pool.stage()]++;
    }
    this.tests = begun.clone();
  }

  private Notebook(Notebook other) {
    this.curriculum = other.curriculum;
    this.begun = other.begun;
    this.stepBackAfter = other.stepBackAfter;
    this.tests = other.tests.clone();
    this.clean = other.clean.clone();
    this.missesInARow = other.missesInARow.clone();
    this.passed = other.passed.clone();
    this.left = other.left.clone();
  }

  /** Of a dog that has not begun. */
  public static Notebook begun(Curriculum curriculum) {
    return new Notebook(curriculum);
  }

  /**
   * Of a dog that stands there: what is behind it is passed, and every test goes on where it was.
   *
   * @param standing in the curriculum's programme
   */
  public static Notebook of(Curriculum curriculum, DogStanding standing) {
    Notebook notebook = new Notebook(curriculum);
    List<PoolStanding> stood = standing.pools();
    for (int i = 0; i < curriculum.pools().size(); i++) {
      Pool pool = curriculum.pools().get(i);
      Stage stage = curriculum.stages().get(pool.stage());
      for (PoolStanding each : stood) {
        if (each.stage().id().equals(stage.id()) && each.pool().equals(pool.pool())) {
          notebook.takeOver(i, each);
        }
      }
    }
    return notebook;
  }

  private void takeOver(int pool, PoolStanding standing) {
    if (standing.isBehind()) {
      pass(pool);
      return;
    }
    RungJudgement judgement = standing.judgement();
    tests[pool] = begun[pool].at(judgement.verdict().evidence());
    List<Handling> handlings = curriculum.pools().get(pool).handlings();
    for (int handling = 0; handling < handlings.size(); handling++) {
      if (!judgement.missing().contains(handlings.get(handling))) {
        clean[pool] |= 1L << handling;
      }
    }
    // Of fewer misses in a row a standing does not tell; they are forgiven.
    if (judgement.verdict() instanceof Verdict.StepBack back) {
      missesInARow[pool] = back.missesInARow();
    }
  }

  /** A second one that says the same. */
  public Notebook copy() {
    return new Notebook(this);
  }

  /** What is gone through. */
  public Curriculum curriculum() {
    return curriculum;
  }

  /** A rep of a drill. */
  public void read(Exercise exercise, boolean isClean) {
    for (Place place : exercise.countsFor()) {
      read(place, isClean);
    }
  }

  private void read(Place place, boolean isClean) {
    int pool = place.pool();
    if (passed[pool]) {
      return;
    }
    if (isClean) {
      clean[pool] |= 1L << place.handling();
    }
    TestState before = missesInARow[pool] >= stepBackAfter[pool] ? begun[pool] : tests[pool];
    tests[pool] = before.with(isClean);
    missesInARow[pool] = isClean ? 0 : missesInARow[pool] + 1;
    if (tests[pool].passed() && clean[pool] == curriculum.pools().get(pool).allHandlings()) {
      pass(pool);
    }
  }

  private void pass(int pool) {
    if (!passed[pool]) {
      passed[pool] = true;
      left[curriculum.pools().get(pool).stage()]--;
    }
  }

  /** Whether a pool is passed. */
  public boolean isPassed(int pool) {
    return passed[pool];
  }

  /** Whether a handling of a pool was clean once. */
  boolean wasClean(int pool, int handling) {
    return (clean[pool] & 1L << handling) != 0;
  }

  /** Whether all pools of a stage are passed. */
  public boolean isDone(int stage) {
    return left[stage] == 0;
  }

  /** Whether half of a stage's pools or more are passed, but not all; never at the end. */
  boolean isHalfDone(int stage) {
    return stage < left.length && left[stage] > 0 && 2 * left[stage] <= pools(stage);
  }

  private int pools(int stage) {
    return (int) curriculum.pools().stream().filter(pool -> pool.stage() == stage).count();
  }

  /** The first stage that is not done; the number of stages when all are. */
  public int stage() {
    int stage = 0;
    while (stage < left.length && isDone(stage)) {
      stage++;
    }
    return stage;
  }

  /** Whether all stages are done. */
  public boolean isFinished() {
    return stage() == left.length;
  }
}
