package dev.poleward.domain.mastery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PositiveDefiniteTest {

  /** Its root has the rows (2), (6, 1), (-8, 5, 3): by multiplying it out [D]. */
  private static final PositiveDefinite MATRIX =
      PositiveDefinite.of(new double[][] {{4, 12, -16}, {12, 37, -43}, {-16, -43, 98}});

  /** The matrix times (1, -3, 2.5): 4 - 36 - 40 and so on [D]. */
  @Test
  void itSolvesWhatIsMultipliedOutByHand() {
    double[] solved = MATRIX.solved(new double[] {-72, -206.5, 358});

    assertThat(solved).containsExactly(new double[] {1, -3, 2.5}, within(1e-9));
  }

  /** Cofactors over the determinant, which is (2 · 1 · 3)² [D]. */
  @Test
  void theInverseIsThatOfItsCofactors() {
    assertThat(MATRIX.inverseForm(new double[] {1, 0, 0}))
        .isCloseTo((37 * 98 - 43 * 43) / 36.0, within(1e-9));
    assertThat(MATRIX.inverseForm(new double[] {1, 0, 1}))
        .isCloseTo(
            ((37 * 98 - 43 * 43) + 2 * (12 * -43 + 16 * 37) + (4 * 37 - 12 * 12)) / 36.0,
            within(1e-9));
    assertThat(MATRIX.inverseAt(2)).isCloseTo((4 * 37 - 12 * 12) / 36.0, within(1e-9));
  }

  /** The diagonal of the inverse is the square sum of what unit vectors are drawn out to [D]. */
  @Test
  void numbersAreDrawnAsTheInverseSays() {
    double[] squares = new double[3];
    for (int unit = 0; unit < 3; unit++) {
      double[] vector = new double[3];
      vector[unit] = 1;
      double[] drawn = MATRIX.solvedByUpper(vector);
      for (int place = 0; place < 3; place++) {
        squares[place] += drawn[place] * drawn[place];
      }
    }
    for (int place = 0; place < 3; place++) {
      assertThat(MATRIX.inverseAt(place)).isCloseTo(squares[place], within(1e-9));
    }
  }

  @Test
  void whatIsNotPositiveDefiniteIsRefused() {
    assertThatThrownBy(() -> PositiveDefinite.of(new double[][] {{1, 2}, {2, 1}}))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("row 1");
  }
}
