package dev.poleward.domain.running;

import java.util.Arrays;
import java.util.List;

/**
 * What somebody does who does not think ahead: the dogs in the order given, the first to the first
 * pole set, the next to the next and round again, each its drills in turn; whatever a dog needs is
 * laid out when it is up, and everybody waits while it rests.
 */
final class NaiveOrder {

  private NaiveOrder() {}

  /**
   * @param setups of each dog's turns in their order, by dog
   */
  static RunningOrder.Naive of(Lesson lesson, List<List<Integer>> setups) {
    int lanes = Math.min(lesson.poleSets(), lesson.instructors);
    int[] last = new int[lanes];
    int[] ready = new int[lanes];
    int[] dogBefore = lesson.lastDog.clone();
    long millimetres = 0;
    int waited = 0;
    Arrays.fill(last, Lesson.NONE);
    int up = 0;
    for (int dog = 0; dog < lesson.dogs(); dog++) {
      if (setups.get(dog).isEmpty()) {
        continue;
      }
      int lane = up++ % lanes;
      int rested = lesson.rested[dog];
      for (int setup : setups.get(dog)) {
        boolean stands =
            last[lane] == Lesson.NONE ? lesson.stands[lane] == setup : last[lane] == setup;
        millimetres += stands ? 0 : lesson.distances.from(lane, last[lane], setup);
        int from = ready[lane] + (stands ? 0 : lesson.pace.change());
        int starts = Math.max(from, rested);
        if (dogBefore[lane] != Lesson.NONE && lesson.apart[dogBefore[lane]][dog]) {
          int done = ready[lane] == 0 ? lesson.lastEnd[lane] : ready[lane];
          starts = Math.max(starts, done + lesson.pace.turn());
        }
        waited += starts - from;
        ready[lane] = starts + lesson.pace.turn();
        rested = ready[lane] + lesson.pace.rest();
        dogBefore[lane] = dog;
        last[lane] = setup;
      }
    }
    int ends = Arrays.stream(ready).max().orElse(0);
    return new RunningOrder.Naive(Distances.metres(millimetres), waited, ends);
  }
}
