package dev.poleward.domain.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** By arithmetic [D]; three times the odds is where Kass and Raftery 1995 begin to speak [M]. */
class PlacesSeenTest {

  private static final double[] SIX = {1 / 6.0, 1 / 6.0, 1 / 6.0, 1 / 6.0, 1 / 6.0, 1 / 6.0};

  private static PlacesSeen ofSix(double... after) {
    return PlacesSeen.of(SIX, after);
  }

  /** The third of six places is reached with 0.75, and it was 0.67 before the first rep. */
  @Test
  void whatWasLikelyBeforeTheFirstRepRulesOutNothing() {
    PlacesSeen flat = ofSix(0.15, 0.10, 0.15, 0.18, 0.18, 0.24);

    assertThat(flat.reach(2)).isCloseTo(0.75, within(1e-12));
    assertThat(flat.moved(1)).isCloseTo((0.75 / 0.25) / (4 / 2.0), within(1e-12));
    assertThat(flat.earliestLeft()).isZero();
    assertThat(flat.areToldApart()).isFalse();
  }

  @Test
  void aStageIsRuledOutByOddsThatBecameThreeTimesWhatTheyWere() {
    // Odds of being beyond the first place were 5; with 15/16 they are 15, just three times that.
    double just = 1 / 16.0;
    PlacesSeen three = ofSix(just, 0.2, 0.2, 0.2, 0.2, 0.2 - just);
    PlacesSeen hardly = ofSix(just + 0.001, 0.2, 0.2, 0.2, 0.2, 0.2 - just - 0.001);

    assertThat(three.moved(0)).isCloseTo(3, within(1e-12));
    assertThat(ofSix(just - 0.001, 0.2, 0.2, 0.2, 0.2, 0.201 - just).areRuledOutUpTo(0)).isTrue();
    assertThat(hardly.areRuledOutUpTo(0)).isFalse();
    assertThat(hardly.reach(1)).isGreaterThan(PlacesSeen.BEYOND);
  }

  /**
   * Odds of the end were 1/5; with 0.5 they are 1, five times that, and yet it is but as likely.
   */
  @Test
  void movedOddsAreNotEnoughWhereTheDogIsAsLikelyNotBeyond() {
    PlacesSeen end = ofSix(0.0, 0.0, 0.0, 0.0, 0.5, 0.5);

    assertThat(end.moved(4)).isCloseTo(5, within(1e-12));
    assertThat(end.areRuledOutUpTo(3)).isTrue();
    assertThat(end.areRuledOutUpTo(4)).isFalse();
    assertThat(end.earliestLeft()).isEqualTo(4);
  }

  @Test
  void repsThatShowABeginnerTellItApartWithoutRulingOutAnything() {
    PlacesSeen beginner = ofSix(0.9, 0.06, 0.04, 0.0, 0.0, 0.0);

    assertThat(beginner.areToldApart()).isTrue();
    assertThat(beginner.earliestLeft()).isZero();
  }

  @Test
  void whereAllIsRuledOutTheLastStageIsLeft() {
    PlacesSeen finished = ofSix(0.0, 0.0, 0.0, 0.0, 0.1, 0.9);

    assertThat(finished.areRuledOutUpTo(4)).isTrue();
    assertThat(finished.earliestLeft()).isEqualTo(4);
  }

  @Test
  void placesThatNoDogOfThePanelReachedAreNotRuledUponEitherWay() {
    PlacesSeen never = PlacesSeen.of(new double[] {0.5, 0.5, 0}, new double[] {0.5, 0.5, 0});

    assertThat(never.moved(1)).isEqualTo(1);
    assertThat(never.areToldApart()).isFalse();
  }
}
