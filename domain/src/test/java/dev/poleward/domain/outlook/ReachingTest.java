package dev.poleward.domain.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ReachingTest {

  private static Reaching all(int sessions, int times) {
    List<Integer> runs = new ArrayList<>();
    for (int i = 0; i < times; i++) {
      runs.add(sessions);
    }
    return new Reaching(runs);
  }

  @Test
  void whatComesWithAllRunsMayHaveAnyPlace() {
    assertThat(all(7, 50).partBetween(0.1, 0.9, 7)).isCloseTo(0.8, within(1e-12));
    assertThat(all(Ahead.NEVER, 50).partBetween(0.1, 0.9, Ahead.NEVER))
        .isCloseTo(0.8, within(1e-12));
  }

  @Test
  void whatComesBeforeOrAfterAllRunsLiesOutside() {
    assertThat(all(7, 50).partBetween(0.1, 0.9, 6)).isZero();
    assertThat(all(7, 50).partBetween(0.1, 0.9, 8)).isZero();
    assertThat(all(7, 50).partBetween(0.1, 0.9, Ahead.NEVER)).isZero();
  }

  /** Each of some dogs in turn against the others: exactly 80% between, however many tie [D]. */
  @Test
  void amongDogsThatAreAlikeEightOfTenLieBetween() {
    List<Integer> dogs = List.of(3, 3, 3, 4, 4, 6, 9, 9, 9, 9, 11, 17, Ahead.NEVER, Ahead.NEVER);
    double sum = 0;
    for (int dog = 0; dog < dogs.size(); dog++) {
      List<Integer> others = new ArrayList<>(dogs);
      others.remove(dog);
      sum += new Reaching(others).partBetween(0.1, 0.9, dogs.get(dog));
    }
    assertThat(sum / dogs.size()).isCloseTo(0.8, within(1e-12));
  }
}
