package dev.poleward.domain.running;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Tours that were found, between what none goes below and the shortest there is. */
class TourSearchTest {

  private static final int LESSONS = 120;
  private static final int SHAKES = 60;
  private static final int PLENTY = 1_000_000;

  @Test
  void theShortestLiesBetweenTheBoundAndWhatIsFound() {
    int met = 0;
    for (int seed = 0; seed < LESSONS; seed++) {
      Lesson lesson = lesson(seed, 2 + seed % 11, 1 + seed % 3, PLENTY);
      long shortest = ExactTours.of(lesson).orElseThrow().millimetres();
      FoundTour found = TourSearch.of(lesson, SHAKES).orElseThrow();

      assertThat(found.atLeast()).as("bound of lesson %d", seed).isLessThanOrEqualTo(shortest);
      assertThat(found.millimetres())
          .as("what is found of lesson %d", seed)
          .isBetween(shortest, shortest + shortest / 20);
      met += found.millimetres() == shortest ? 1 : 0;
    }
    assertThat(met).as("lessons of which the shortest is found").isGreaterThan(LESSONS * 9 / 10);
  }

  @Test
  void theBoundIsNear() {
    for (int seed = 0; seed < 20; seed++) {
      FoundTour found = TourSearch.of(lesson(seed, 40, 1, PLENTY), SHAKES).orElseThrow();
      assertThat((double) found.millimetres() / found.atLeast())
          .as("lesson %d", seed)
          .isBetween(1.0, 1.05);
    }
  }

  @Test
  void noPoleSetIsBusyForLongerThanThereIsTime() {
    // 24 setups of a turn of 60 seconds and a change of 30 on three pole sets: eight on each.
    int seconds = 8 * 90;
    for (int seed = 0; seed < 20; seed++) {
      Lesson lesson = lesson(seed, 24, 3, seconds);
      FoundTour found = TourSearch.of(lesson, SHAKES).orElseThrow();
      found.deals(
          deal -> {
            for (int poleSet = 0; poleSet < deal.length; poleSet++) {
              assertThat(lesson.busy(poleSet, deal[poleSet])).isLessThanOrEqualTo(seconds);
            }
            return true;
          });
      assertThat(TourSearch.of(lesson(seed, 24, 3, seconds - 60), SHAKES)).isEmpty();
    }
  }

  /** Setups as places on a plane, one turn over each, and pole sets with something else on them. */
  private static Lesson lesson(int seed, int setups, int poleSets, int seconds) {
    SplittableRandom random = new SplittableRandom(seed);
    long[][] all = Plane.between(Plane.places(setups + poleSets, random));
    long[][] between = new long[setups][];
    for (int setup = 0; setup < setups; setup++) {
      between[setup] = Arrays.copyOf(all[setup], setups);
    }
    long[][] first = new long[poleSets][];
    for (int poleSet = 0; poleSet < poleSets; poleSet++) {
      first[poleSet] = Arrays.copyOf(all[setups + poleSet], setups);
    }
    int[][] turns = new int[setups][1];
    Arrays.stream(turns).forEach(row -> row[0] = 1);
    int[] none = new int[poleSets];
    Arrays.fill(none, Lesson.NONE);
    return new Lesson(
        new Distances(between, first),
        new Pace(60, 30, 0),
        seconds,
        seconds,
        poleSets,
        turns,
        none,
        none,
        new int[poleSets],
        new int[1],
        new int[1],
        new boolean[1][1]);
  }
}
