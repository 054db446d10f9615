package dev.poleward.domain.outlook;

import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.judgement.MovingOnTest;
import dev.poleward.domain.outlook.Curriculum.Exercise;
import dev.poleward.domain.outlook.Curriculum.Place;
import dev.poleward.domain.outlook.Curriculum.Pool;
import dev.poleward.domain.programme.DrillMatch;
import dev.poleward.domain.programme.DrillOfStage;
import dev.poleward.domain.programme.Stage;
import dev.poleward.domain.record.PlacedRep;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;

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

  /** A second one that says the same. */
  public Notebook copy() {
    return new Notebook(this);
  }

  /** What is gone through. */
  public Curriculum curriculum() {
    return curriculum;
  }

  /** Reads a record, ascending by (time, id). */
  public void readAll(List<PlacedRep> reps) {
    readAll(reps, (_, _) -> {});
  }

  /**
   * The same.
   *
   * @param passing is told each rep with the pool that it passed
   */
  void readAll(List<PlacedRep> reps, BiConsumer<PlacedRep, Integer> passing) {
    Map<DrillOfStage, Place> places = new HashMap<>();
    for (int i = 0; i < curriculum.pools().size(); i++) {
      Pool pool = curriculum.pools().get(i);
      for (Exercise exercise : pool.drills()) {
        places.put(
            new DrillOfStage(curriculum.stages().get(pool.stage()).id(), exercise.drill()),
            new Place(i, exercise.handling()));
      }
    }
    for (PlacedRep rep : reps) {
      if (curriculum.matching().match(rep) instanceof DrillMatch.Counts counts) {
        boolean isClean = rep.outcome() == Outcome.CLEAN;
        for (DrillOfStage drill : counts.drills()) {
          Place place = places.get(drill);
          if (place != null && !passed[place.pool()]) {
            read(place, isClean);
            if (passed[place.pool()]) {
              passing.accept(rep, place.pool());
            }
          }
        }
      }
    }
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

  /** The stages before that one count as done. */
  public void startedAt(int stage) {
    for (int pool = 0; pool < passed.length; pool++) {
      if (curriculum.pools().get(pool).stage() < stage) {
        pass(pool);
      }
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
