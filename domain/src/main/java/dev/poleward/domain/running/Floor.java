package dev.poleward.domain.running;

import java.util.Arrays;

/**
 * Where a lesson has come to while an order of turns is tried: turns are begun in the order of
 * their starts, each as early as it can be, and taken back. For one thread.
 */
final class Floor {

  private static final int NONE = Lesson.NONE;

  /**
   * A turn that can come next.
   *
   * @param round how many turns the dog had before
   * @param waits seconds that the pole set stands ready before it
   */
  record Step(int poleSet, int setup, int dog, int round, int starts, int waits) {}

  /** What a step overwrites. */
  private record Before(int setup, long left, int ready, int lastDog, int rested, Step last) {}

  final Lesson lesson;

  /** By pole set: what stands there of the lesson's setups, or nothing. */
  final int[] setup;

  /** By pole set: what is to be laid out there later. */
  final long[] left;

  /** By pole set: when its last dog was done. */
  final int[] ready;

  final int[] lastDog;

  /** By setup and dog: turns to come. */
  final int[][] todo;

  /** By setup: turns to come. */
  final int[] todoOver;

  /** By pole set and dog: turns to come. */
  final int[][] todoOn;

  /** By dog: turns to come. */
  final int[] todoOf;

  /** By dog: turns that it has had. */
  private final int[] had;

  /** By dog: from when on it may run again. */
  final int[] rested;

  private final Step[] steps;
  private final Before[] before;
  private int taken;
  private int waited;

  Floor(Lesson lesson, long[] deal) {
    this.lesson = lesson;
    int poleSets = lesson.poleSets();
    this.setup = new int[poleSets];
    this.left = deal.clone();
    this.ready = new int[poleSets];
    this.lastDog = lesson.lastDog.clone();
    this.todo = Arrays.stream(lesson.turns).map(int[]::clone).toArray(int[][]::new);
    this.todoOver = lesson.turnsOver.clone();
    this.todoOn = new int[poleSets][lesson.dogs()];
    this.todoOf = new int[lesson.dogs()];
    this.had = lesson.had.clone();
    this.rested = lesson.rested.clone();
    int turns = lesson.turnsInAll();
    this.steps = new Step[turns];
    this.before = new Before[turns];
    for (int poleSet = 0; poleSet < poleSets; poleSet++) {
      setup[poleSet] = NONE;
      for (long rest = left[poleSet]; rest != 0; rest &= rest - 1) {
        int over = Long.numberOfTrailingZeros(rest);
        for (int dog = 0; dog < lesson.dogs(); dog++) {
          todoOn[poleSet][dog] += todo[over][dog];
          todoOf[dog] += todo[over][dog];
        }
      }
    }
  }

  boolean isDone() {
    return taken == steps.length;
  }

  /** The steps taken so far. */
  Step[] taken() {
    return Arrays.copyOf(steps, taken);
  }

  int waited() {
    return waited;
  }

  Step last() {
    return taken == 0 ? new Step(NONE, NONE, NONE, 0, 0, 0) : steps[taken - 1];
  }

  /** Whether the dogs over what stands on a pole set are not through yet. */
  boolean isUnderWay(int poleSet) {
    return setup[poleSet] != NONE && todoOver[setup[poleSet]] > 0;
  }

  /** The turn of a dog that has one over that setup, as early as it can be. */
  Step step(int poleSet, int over, int dog) {
    int stands = readyFor(poleSet, over);
    int starts = Math.max(stands, rested[dog]);
    int previous = lastDog[poleSet];
    if (previous != NONE && lesson.apart[previous][dog]) {
      int done = ready[poleSet] == 0 ? lesson.lastEnd[poleSet] : ready[poleSet];
      starts = Math.max(starts, done + lesson.pace.turn());
    }
    if (lesson.instructors < ready.length) {
      starts = whenSomebodyIsFree(starts);
    }
    return new Step(poleSet, over, dog, had[dog], starts, starts - stands);
  }

  /** The earliest start of a turn, from then on, for which there is an instructor all the while. */
  private int whenSomebodyIsFree(int from) {
    int first = taken;
    while (first > 0 && steps[first - 1].starts() > from - lesson.pace.turn()) {
      first--;
    }
    int starts = from;
    for (int i = first; i < taken; i++) {
      // What is out over a turn grows only where another one begins.
      int moment = Math.max(starts, steps[i].starts());
      if (moment < starts + lesson.pace.turn() && out(first, moment) >= lesson.instructors) {
        starts = firstThrough(first, moment);
        i = first - 1;
      }
    }
    return starts;
  }

  private int out(int first, int moment) {
    int out = 0;
    for (int i = first; i < taken; i++) {
      out += isOut(steps[i], moment) ? 1 : 0;
    }
    return out;
  }

  private int firstThrough(int first, int moment) {
    int through = Integer.MAX_VALUE;
    for (int i = first; i < taken; i++) {
      if (isOut(steps[i], moment)) {
        through = Math.min(through, steps[i].starts() + lesson.pace.turn());
      }
    }
    return through;
  }

  private boolean isOut(Step step, int moment) {
    return step.starts() <= moment && moment < step.starts() + lesson.pace.turn();
  }

  /** When a setup stands, if it is the next one. */
  private int readyFor(int poleSet, int over) {
    boolean changes =
        setup[poleSet] == NONE ? lesson.stands[poleSet] != over : setup[poleSet] != over;
    return ready[poleSet] + (changes ? lesson.pace.change() : 0);
  }

  /** Whether a step comes after those that were taken: by its start, then by its pole set. */
  boolean isInOrder(Step step) {
    Step last = last();
    return step.starts() > last.starts()
        || (step.starts() == last.starts() && step.poleSet() > last.poleSet());
  }

  void take(Step step) {
    int poleSet = step.poleSet();
    int dog = step.dog();
    before[taken] =
        new Before(
            setup[poleSet], left[poleSet], ready[poleSet], lastDog[poleSet], rested[dog], step);
    int done = step.starts() + lesson.pace.turn();
    setup[poleSet] = step.setup();
    left[poleSet] &= ~(1L << step.setup());
    ready[poleSet] = done;
    lastDog[poleSet] = dog;
    rested[dog] = done + lesson.pace.rest();
    count(step, -1);
    waited += step.waits();
    steps[taken++] = step;
  }

  void takeBack() {
    Before was = before[--taken];
    Step step = was.last();
    int poleSet = step.poleSet();
    setup[poleSet] = was.setup();
    left[poleSet] = was.left();
    ready[poleSet] = was.ready();
    lastDog[poleSet] = was.lastDog();
    rested[step.dog()] = was.rested();
    count(step, 1);
    waited -= step.waits();
  }

  private void count(Step step, int turns) {
    todo[step.setup()][step.dog()] += turns;
    todoOver[step.setup()] += turns;
    todoOn[step.poleSet()][step.dog()] += turns;
    todoOf[step.dog()] += turns;
    had[step.dog()] -= turns;
  }

  /** What no way to go on comes below. */
  Worth atLeast() {
    int waits = waited;
    int end = 0;
    for (int poleSet = 0; poleSet < ready.length; poleSet++) {
      int plain = ready[poleSet] + busy(poleSet);
      int reached = plain;
      if (plain > ready[poleSet]) {
        int stands =
            ready[poleSet] + (isUnderWay(poleSet) || standsYet(poleSet) ? 0 : lesson.pace.change());
        reached += Math.max(0, last().starts() - stands);
      }
      for (int dog = 0; dog < rested.length; dog++) {
        if (todoOn[poleSet][dog] > 0) {
          reached = Math.max(reached, through(dog, todoOn[poleSet][dog]));
        }
      }
      waits += reached - plain;
      end = Math.max(end, reached);
    }
    for (int dog = 0; dog < rested.length; dog++) {
      if (todoOf[dog] > 0) {
        end = Math.max(end, through(dog, todoOf[dog]));
      }
    }
    return new Worth(waits, end);
  }

  private boolean standsYet(int poleSet) {
    return setup[poleSet] == NONE && lesson.standsAmong(poleSet, left[poleSet]);
  }

  /** When a dog is through with so many turns, with its rests between them. */
  private int through(int dog, int turns) {
    return Math.max(rested[dog], last().starts())
        + turns * lesson.pace.turn()
        + (turns - 1) * lesson.pace.rest();
  }

  /** How long a pole set still is busy, without anybody waiting. */
  private int busy(int poleSet) {
    int busy = isUnderWay(poleSet) ? todoOver[setup[poleSet]] * lesson.pace.turn() : 0;
    return setup[poleSet] == NONE
        ? lesson.busy(poleSet, left[poleSet])
        : busy + later(left[poleSet]);
  }

  private int later(long setups) {
    int busy = 0;
    for (long rest = setups; rest != 0; rest &= rest - 1) {
      busy +=
          lesson.pace.change()
              + lesson.turnsOver[Long.numberOfTrailingZeros(rest)] * lesson.pace.turn();
    }
    return busy;
  }

  /** All that what can still come depends on. */
  int[] situation() {
    int poleSets = ready.length;
    int soonest = last().starts();
    int[] all = new int[poleSets * 5 + 2 + rested.length * (poleSets + 1)];
    int at = 0;
    for (int poleSet = 0; poleSet < poleSets; poleSet++) {
      all[at++] = setup[poleSet];
      all[at++] = (int) left[poleSet];
      all[at++] = (int) (left[poleSet] >>> 32);
      all[at++] = ready[poleSet];
      all[at++] = lastDog[poleSet];
      for (int dog = 0; dog < rested.length; dog++) {
        all[at++] = isUnderWay(poleSet) ? todo[setup[poleSet]][dog] : 0;
      }
    }
    for (int dog = 0; dog < rested.length; dog++) {
      all[at++] = todoOf[dog] == 0 ? 0 : Math.max(rested[dog], soonest);
    }
    all[at++] = soonest;
    all[at] = last().poleSet();
    return all;
  }
}
