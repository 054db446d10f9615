package dev.poleward.domain.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class ClimbTest {

  /** Slopes and bends are those of the height, by small differences. */
  @Test
  void theHillsAreWhatTheySay() {
    Hill dogs = new BetaBinomialHill(List.of(new Tally(3, 9), new Tally(7, 8), new Tally(0, 2)));
    Hill days =
        new RetentionHill(
            List.of(new Return(3, true, 1), new Return(40, false, .7), new Return(0, false, 2)),
            Retention.USUAL);
    double by = 1e-4;
    for (Hill hill : List.of(dogs, days)) {
      for (double x : new double[] {-1, 0.3, 2}) {
        for (double y : new double[] {-0.5, 0.2, 1}) {
          Hill.Place here = hill.at(x, y);
          Hill.Place right = hill.at(x + by, y);
          Hill.Place left = hill.at(x - by, y);
          Hill.Place up = hill.at(x, y + by);
          Hill.Place down = hill.at(x, y - by);

          assertThat(here.byX()).isCloseTo((right.height() - left.height()) / 2 / by, within(1e-5));
          assertThat(here.byY()).isCloseTo((up.height() - down.height()) / 2 / by, within(1e-5));
          assertThat(here.byXX()).isCloseTo((right.byX() - left.byX()) / 2 / by, within(1e-5));
          assertThat(here.byYY()).isCloseTo((up.byY() - down.byY()) / 2 / by, within(1e-5));
          assertThat(here.byXY()).isCloseTo((right.byY() - left.byY()) / 2 / by, within(1e-5));
        }
      }
    }
  }

  @Test
  void fromFarAwayTheTopIsFound() {
    Hill dogs = new BetaBinomialHill(List.of(new Tally(3, 9), new Tally(7, 8), new Tally(0, 6)));
    Hill.Place near = Climb.from(dogs, 0, 0, 12);
    for (double far : new double[] {-8, -3, 4, 9}) {
      Hill.Place top = Climb.from(dogs, far, -far, 12);

      assertThat(top.x()).isCloseTo(near.x(), within(1e-6));
      assertThat(top.y()).isCloseTo(near.y(), within(1e-6));
    }
  }
}
