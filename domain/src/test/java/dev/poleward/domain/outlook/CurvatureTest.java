package dev.poleward.domain.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class CurvatureTest {

  private static final double[][] MATRIX = {{4, 2, 0.6}, {2, 5, 1}, {0.6, 1, 3}};

  @Test
  void whatIsSolvedLeadsBack() {
    double[] x = Curvature.of(MATRIX).solve(new double[] {1, -2, 3});

    for (int row = 0; row < 3; row++) {
      double sum = 0;
      for (int column = 0; column < 3; column++) {
        sum += MATRIX[row][column] * x[column];
      }
      assertThat(sum).isCloseTo(new double[] {1, -2, 3}[row], within(1e-12));
    }
  }

  /** The diagonal of the inverse is the square sum of what unit vectors are drawn out to. */
  @Test
  void numbersAreDrawnAsTheInverseSays() {
    Curvature curvature = Curvature.of(MATRIX);
    double[] squares = new double[3];
    for (int unit = 0; unit < 3; unit++) {
      double[] vector = new double[3];
      vector[unit] = 1;
      double[] drawn = curvature.solveUpper(vector);
      for (int place = 0; place < 3; place++) {
        squares[place] += drawn[place] * drawn[place];
      }
    }
    for (int place = 0; place < 3; place++) {
      assertThat(curvature.inverseAt(place)).isCloseTo(squares[place], within(1e-12));
    }
  }

  @Test
  void whatIsNotPositiveDefiniteIsRefused() {
    assertThatThrownBy(() -> Curvature.of(new double[][] {{1, 2}, {2, 1}}))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
