package dev.poleward.domain.outlook;

/**
 * A symmetric positive definite matrix, as the lower triangle of Cholesky's decomposition.
 * Immutable.
 */
final class Curvature {

  private final double[][] lower;

  private Curvature(double[][] lower) {
    this.lower = lower;
  }

  /**
   * Decomposes a matrix.
   *
   * @throws IllegalArgumentException when it is not positive definite
   */
  static Curvature of(double[][] matrix) {
    int size = matrix.length;
    double[][] lower = new double[size][size];
    for (int row = 0; row < size; row++) {
      for (int column = 0; column <= row; column++) {
        double rest = matrix[row][column];
        for (int k = 0; k < column; k++) {
          rest -= lower[row][k] * lower[column][k];
        }
        if (row == column) {
          if (!(rest > 0)) {
            throw new IllegalArgumentException("not positive definite");
          }
          lower[row][row] = Math.sqrt(rest);
        } else {
          lower[row][column] = rest / lower[column][column];
        }
      }
    }
    return new Curvature(lower);
  }

  /** x, so that the matrix times x is the given vector. */
  double[] solve(double[] vector) {
    int size = lower.length;
    double[] x = new double[size];
    for (int row = 0; row < size; row++) {
      double rest = vector[row];
      for (int k = 0; k < row; k++) {
        rest -= lower[row][k] * x[k];
      }
      x[row] = rest / lower[row][row];
    }
    return solveUpper(x);
  }

  /**
   * x, so that the upper triangle times x is the given vector: of independent standard normal
   * numbers it makes numbers that lie about as the inverse of the matrix says.
   */
  double[] solveUpper(double[] vector) {
    int size = lower.length;
    double[] x = vector.clone();
    for (int row = size - 1; row >= 0; row--) {
      for (int k = row + 1; k < size; k++) {
        x[row] -= lower[k][row] * x[k];
      }
      x[row] /= lower[row][row];
    }
    return x;
  }

  /** An element of the diagonal of the inverse. */
  double inverseAt(int place) {
    double[] unit = new double[lower.length];
    unit[place] = 1;
    return solve(unit)[place];
  }
}
