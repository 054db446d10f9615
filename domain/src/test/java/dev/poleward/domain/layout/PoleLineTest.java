package dev.poleward.domain.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How long a line is, and how far it turns while the last pole moves. */
class PoleLineTest {

  private static final double INCH = 0.0254;

  /** Competition lines, by arithmetic [D]. */
  @ParameterizedTest
  @CsvSource({"6, 0.60, 3.00", "12, 0.60, 6.60", "6, 0.6096, 3.048", "12, 0.6096, 6.7056"})
  void aLineHasOneGapLessThanPoles(int poles, double spacing, double metres) {
    assertThat(new PoleLine(poles, spacing).length()).isCloseTo(metres, within(1e-9));
  }

  /** Turning by a chord of the last pole, at 24 inches from pole to pole, by arithmetic [D]. */
  @ParameterizedTest
  @CsvSource({"4, 6, 4.776", "4, 12, 9.560", "6, 6, 2.865", "12, 6, 1.302"})
  void theLastPoleMovesAChord(int poles, double inches, double degrees) {
    assertThat(new PoleLine(poles, 24 * INCH).turnOfChord(inches * INCH))
        .isCloseTo(degrees, within(5e-4));
  }

  /** From 45 degrees on one side to 45 on the other, and from 90 to 90 [D]. */
  @ParameterizedTest
  @CsvSource({"2.59, 90", "3.66, 180"})
  void swingingFromSideToSideMovesTheLastPoleFar(double metres, double degrees) {
    PoleLine line = new PoleLine(4, 24 * INCH);

    assertThat(line.turnOfChord(Math.min(metres, line.longestChord())))
        .isCloseTo(degrees, within(0.2));
    assertThat(line.longestChord() * Math.sin(Math.toRadians(degrees / 2)))
        .isCloseTo(metres, within(0.005));
  }

  @Test
  void theLastPoleMovesNoFurtherThanAcrossItsCircle() {
    PoleLine line = new PoleLine(2, 0.6);

    assertThat(line.turnOfChord(0)).isZero();
    assertThat(line.turnOfChord(1.2)).isCloseTo(180, within(1e-9));
    assertThatThrownBy(() -> line.turnOfChord(1.21)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> line.turnOfChord(Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void whatIsNoLineIsRefused() {
    assertThatThrownBy(() -> new PoleLine(1, 0.6)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new PoleLine(4, 0)).isInstanceOf(IllegalArgumentException.class);
  }
}
