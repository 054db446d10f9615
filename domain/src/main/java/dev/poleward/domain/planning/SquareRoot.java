package dev.poleward.domain.planning;

/**
 * The lower triangle whose square is a symmetric matrix that is positive definite (Cholesky; Golub,
 * Van Loan 2013, Matrix Computations, 4th edition, section 4.2 [M]). A dozen rows: a library for
 * that would be more to carry than these lines.
 */
final class SquareRoot {

  private final double[][] lower;

  private SquareRoot(double[][] lower) {
    this.lower = lower;
  }

  /** Takes the root of a matrix of which the lower triangle is given; overwrites it. */
  static SquareRoot of(double[][] matrix) {
    for (int i = 0; i < matrix.length; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = matrix[i][j];
        for (int k = 0; k < j; k++) {
          sum -= matrix[i][k] * matrix[j][k];
        }
        if (i == j) {
          if (!(sum > 0)) {
            throw new IllegalArgumentException("not positive definite, at row " + i);
          }
          matrix[i][i] = Math.sqrt(sum);
        } else {
          matrix[i][j] = sum / matrix[j][j];
        }
      }
    }
    return new SquareRoot(matrix);
  }

  /** What the matrix turns into {@code right}. */
  double[] solved(double[] right) {
    double[] x = forward(right);
    for (int i = x.length - 1; i >= 0; i--) {
      for (int k = i + 1; k < x.length; k++) {
        x[i] -= lower[k][i] * x[k];
      }
      x[i] /= lower[i][i];
    }
    return x;
  }

  /** {@code vector} times the inverse of the matrix times {@code vector}. */
  double inverseForm(double[] vector) {
    double sum = 0;
    for (double each : forward(vector)) {
      sum += each * each;
    }
    return sum;
  }

  private double[] forward(double[] right) {
    double[] x = right.clone();
    for (int i = 0; i < x.length; i++) {
      for (int k = 0; k < i; k++) {
        x[i] -= lower[i][k] * x[k];
      }
      x[i] /= lower[i][i];
    }
    return x;
  }
}
