package dev.poleward.domain.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EntryAngleTest {

  @ParameterizedTest
  @ValueSource(
      doubles = {
        180,
        -180,
        180.5,
        360,
        Double.NaN,
        Double.POSITIVE_INFINITY,
        Double.NEGATIVE_INFINITY
      })
  void whatHasNoSideIsRefused(double degrees) {
    assertThat(EntryAngle.isAllowed(degrees)).isFalse();
    assertThatIllegalArgumentException().isThrownBy(() -> new EntryAngle(degrees));
  }

  @ParameterizedTest
  @ValueSource(doubles = {179.999999, -179.999999, 0.000001, -0.000001})
  void whatHasASideIsAllowedHoweverSmall(double degrees) {
    assertThat(EntryAngle.isAllowed(degrees)).isTrue();
    assertThat(new EntryAngle(degrees).side())
        .isEqualTo(degrees > 0 ? EntrySide.POLE : EntrySide.GAP);
  }

  @Test
  void straightOnCountsOnEitherSide() {
    assertThat(EntryAngle.STRAIGHT.side()).isEqualTo(EntrySide.BOTH);
    assertThat(EntryAngle.STRAIGHT.size()).isZero();
    assertThat(EntryAngle.STRAIGHT.clock()).contains(new ClockPosition(12, false));
  }

  @Test
  void zeroHasNoSign() {
    assertThat(new EntryAngle(-0.0))
        .isEqualTo(new EntryAngle(0.0))
        .hasToString(EntryAngle.STRAIGHT.toString());
  }

  @Test
  void theSizeForgetsTheSide() {
    assertThat(new EntryAngle(-45).size()).isEqualTo(45);
    assertThat(new EntryAngle(45).size()).isEqualTo(45);
  }

  @ParameterizedTest
  @ValueSource(doubles = {4.776, 14.999999, 15.000001, -44, 179})
  void betweenTheHalfHoursThereIsNoPosition(double degrees) {
    assertThat(new EntryAngle(degrees).clock()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.5, 180, 200, Double.NaN})
  void theLineTurnsByLessThanHalfACircleToTheSideNamed(double turn) {
    for (LastPoleMoves lastPole : LastPoleMoves.values()) {
      assertThatIllegalArgumentException().isThrownBy(() -> EntryAngle.ofTurn(lastPole, turn));
    }
  }
}
