package dev.poleward.domain.learner;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class HalfLifeTest {

  @Test
  void halfIsLeftAfterOneAndAQuarterAfterTwo() {
    HalfLife halfLife = new HalfLife(60);

    assertThat(halfLife.left(0)).isEqualTo(1);
    assertThat(halfLife.left(60)).isEqualTo(0.5);
    assertThat(halfLife.left(120)).isEqualTo(0.25);
  }

  @Test
  void whatIsAskedAgainHasTheSameAnswerWhateverCameBetween() {
    HalfLife halfLife = new HalfLife(25);
    double first = halfLife.left(1);

    assertThat(halfLife.left(1)).isEqualTo(first);
    assertThat(halfLife.left(5_040)).isLessThan(first);
    assertThat(halfLife.left(1)).isEqualTo(first);
  }
}
