package dev.poleward.domain.running;

import dev.poleward.domain.running.Floor.Step;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Finds the best order of turns over all tours, by branch and bound: first how good it can get,
 * what looks best first; then, of all that are as good, the one whose steps (by start, then pole
 * set) come first by pole set, setup, turns that the dog had before, and dog. Gives up after a
 * number of looks, and says so. For one thread.
 */
final class TurnSearch {

  /** A situation that was looked at. Never changed. */
  private static final class Seen {
    private final int[] situation;
    private final int hash;

    Seen(int[] situation) {
      this.situation = situation;
      this.hash = Arrays.hashCode(situation);
    }

    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Seen seen
          && seen.hash == hash
          && Arrays.equals(seen.situation, situation);
    }

    @Override
    public int hashCode() {
      return hash;
    }
  }

  /** What came of a search. */
  sealed interface Outcome {

    /** Situations that were looked at until it was known how good it can get. */
    int looks();

    /**
     * The best order, or the best that was found.
     *
     * @param waitsAtLeast seconds that no order over tours as short as these goes below
     */
    record Found(List<Step> steps, Worth worth, int waitsAtLeast, int looks) implements Outcome {}

    /** No order over these tours ends in time. */
    record Late(int looks) implements Outcome {}

    /** None was found that ends in time, and there may be one. */
    record GivenUp(int looks) implements Outcome {}
  }

  private static final Comparator<Step> PLAIN =
      Comparator.comparingInt(Step::poleSet)
          .thenComparingInt(Step::setup)
          .thenComparingInt(Step::round)
          .thenComparingInt(Step::dog);

  private final Lesson lesson;
  private final Tours tours;
  private final Set<Seen> seen = new HashSet<>();
  private Step @Nullable [] best;
  private Worth worth = new Worth(Integer.MAX_VALUE, Integer.MAX_VALUE);
  private int waitsAtLeast = Integer.MAX_VALUE;
  private final int looksMax;
  private int looks;
  private boolean settles;

  private TurnSearch(Lesson lesson, Tours tours, int looksMax) {
    this.lesson = lesson;
    this.tours = tours;
    this.looksMax = looksMax;
  }

  /**
   * Searches.
   *
   * @param looksMax situations that are looked at in each of the two parts
   */
  static Outcome of(Lesson lesson, Tours tours, int looksMax) {
    return new TurnSearch(lesson, tours, looksMax).search();
  }

  private Outcome search() {
    tours.deals(
        deal -> {
          explore(deal);
          return looks < looksMax;
        });
    int looked = looks;
    Step[] found = best;
    if (found == null) {
      return looked < looksMax ? new Outcome.Late(looked) : new Outcome.GivenUp(looked);
    }
    int atLeast = Math.min(worth.waits(), leastWaits(looked < looksMax));
    Step[] settled = settled();
    return new Outcome.Found(List.of(settled == null ? found : settled), worth, atLeast, looked);
  }

  private int leastWaits(boolean isThrough) {
    return switch (tours) {
      case ExactTours _ when isThrough -> worth.waits();
      // With one pole set it is busy for as long in whatever order; else some deals may be unseen.
      case ExactTours _, FoundTour _ -> lesson.poleSets() == 1 ? waitsAtLeast : 0;
    };
  }

  /** Of all orders that are as good the first; null where there are too many to tell. */
  private Step @Nullable [] settled() {
    looks = 0;
    settles = true;
    Step[][] first = {null};
    tours.deals(
        deal -> {
          best = null;
          explore(deal);
          if (best != null && (first[0] == null || compare(best, first[0]) < 0)) {
            first[0] = best;
          }
          return looks < looksMax;
        });
    return looks < looksMax ? first[0] : null;
  }

  private void explore(long[] deal) {
    seen.clear();
    Floor floor = new Floor(lesson, deal);
    waitsAtLeast = Math.min(waitsAtLeast, floor.atLeast().waits());
    look(floor);
  }

  private void look(Floor floor) {
    looks++;
    if (floor.isDone()) {
      Worth reached = floor.atLeast();
      if (settles ? reached.equals(worth) : reached.compareTo(worth) < 0) {
        worth = reached;
        best = floor.taken();
      }
      return;
    }
    // With too few instructors what can come depends on where they stood idle, too.
    if (lesson.instructors >= lesson.poleSets() && !seen.add(new Seen(floor.situation()))) {
      return;
    }
    for (Step step : steps(floor)) {
      if (looks >= looksMax) {
        return;
      }
      floor.take(step);
      if (isWorthwhile(floor.atLeast())) {
        look(floor);
      }
      floor.takeBack();
      if (settles && best != null) {
        return;
      }
    }
  }

  private boolean isWorthwhile(Worth bound) {
    int compared = bound.compareTo(worth);
    return bound.end() <= lesson.seconds && (settles ? compared <= 0 : compared < 0);
  }

  private List<Step> steps(Floor floor) {
    List<Step> steps = new ArrayList<>();
    for (int poleSet = 0; poleSet < lesson.poleSets(); poleSet++) {
      if (floor.isUnderWay(poleSet)) {
        add(floor, poleSet, floor.setup[poleSet], steps);
        continue;
      }
      long left = floor.left[poleSet];
      for (long rest = left; rest != 0; rest &= rest - 1) {
        int next = Long.numberOfTrailingZeros(rest);
        if (tours.mayBeNext(poleSet, floor.setup[poleSet], left, next)) {
          add(floor, poleSet, next, steps);
        }
      }
    }
    steps.sort(
        settles
            ? PLAIN
            : Comparator.comparingInt(Step::starts)
                .thenComparingInt(Step::poleSet)
                .thenComparingInt(step -> -floor.todoOf[step.dog()]));
    return steps;
  }

  private void add(Floor floor, int poleSet, int setup, List<Step> steps) {
    for (int dog = 0; dog < lesson.dogs(); dog++) {
      if (floor.todo[setup][dog] > 0) {
        Step step = floor.step(poleSet, setup, dog);
        if (floor.isInOrder(step)) {
          steps.add(step);
        }
      }
    }
  }

  private static int compare(Step[] one, Step[] other) {
    return Arrays.compare(one, other, PLAIN);
  }
}
