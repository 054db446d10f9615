package dev.poleward.domain.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SquareRootTest {

  /** Its root has the rows (2), (6, 1), (-8, 5, 3): by multiplying it out [D]. */
  private static double[][] matrix() {
    return new double[][] {{4, 12, -16}, {12, 37, -43}, {-16, -43, 98}};
  }

  /** The matrix times (1, -3, 2.5): 4 - 36 - 40 and so on [D]. */
  @Test
  void itSolvesWhatIsMultipliedOutByHand() {
    double[] solved = SquareRoot.of(matrix()).solved(new double[] {-72, -206.5, 358});

    assertThat(solved).containsExactly(new double[] {1, -3, 2.5}, within(1e-9));
  }

  /** Cofactors over the determinant, which is (2 · 1 · 3)² [D]. */
  @Test
  void theFormOfTheInverseIsThatOfItsCofactors() {
    double first = SquareRoot.of(matrix()).inverseForm(new double[] {1, 0, 0});

    assertThat(first).isCloseTo((37 * 98 - 43 * 43) / 36.0, within(1e-9));
    assertThat(SquareRoot.of(matrix()).inverseForm(new double[] {0, 0, 1}))
        .isCloseTo((4 * 37 - 12 * 12) / 36.0, within(1e-9));
  }

  @Test
  void whatIsNotPositiveDefiniteIsRefused() {
    assertThatThrownBy(() -> SquareRoot.of(new double[][] {{1, 2}, {2, 1}}))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("row 1");
  }
}
