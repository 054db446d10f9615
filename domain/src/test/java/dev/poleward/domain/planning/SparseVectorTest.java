package dev.poleward.domain.planning;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** By hand [D]. */
class SparseVectorTest {

  private static final SparseVector VECTOR = SparseVector.of(new double[] {0, 2, 0, -3});

  @Test
  void itsProductSumsOverItsPlaces() {
    assertThat(VECTOR.dot(new double[] {7, 5, 11, 4})).isEqualTo(2 * 5 - 3 * 4);
  }

  @Test
  void itIsAddedSoManyTimes() {
    double[] sum = {1, 1, 1, 1};

    VECTOR.addTo(sum, 0.5);

    assertThat(sum).containsExactly(1, 2, 1, -0.5);
  }

  @Test
  void itsSquareGoesToTheLowerTriangle() {
    double[][] lower = new double[4][4];

    VECTOR.addSquareTo(lower, 2);

    assertThat(lower)
        .isDeepEqualTo(new double[][] {{0, 0, 0, 0}, {0, 8, 0, 0}, {0, 0, 0, 0}, {0, -12, 0, 18}});
  }
}
