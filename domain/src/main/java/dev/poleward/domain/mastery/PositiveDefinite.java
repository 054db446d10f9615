package dev.poleward.domain.mastery;

/**
 * A symmetric matrix that is positive definite, as the lower triangle whose square it is (Cholesky;
 * Golub, Van Loan 2013, Matrix Computations, 4th edition, section 4.2 [M]). A dozen rows: a library
 * for that would be more to carry than these lines. Immutable.
 */
public final class PositiveDefinite {

  private final double[][] lower;

  private PositiveDefinite(double[][] lower) {
    this.lower = lower;
  }

  /**
   * Decomposes a matrix, of which the lower triangle is looked at.
   *
   * @throws IllegalArgumentException when it is not positive definite
   */
  public static PositiveDefinite of(double[][] matrix) {
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
            throw new IllegalArgumentException("not positive definite, at row " + row);
          }
          lower[row][row] = Math.sqrt(rest);
        } else {
          lower[row][column] = rest / lower[column][column];
        }
      }
    }
    return new PositiveDefinite(lower);
  }

  /** What the matrix turns into {@code right}. */
  public double[] solved(double[] right) {
    return solvedByUpper(solvedByLower(right));
  }

  private double[] solvedByLower(double[] right) {
    double[] x = right.clone();
    for (int row = 0; row < x.length; row++) {
      for (int k = 0; k < row; k++) {
        x[row] -= lower[row][k] * x[k];
      }
      x[row] /= lower[row][row];
    }
    return x;
  }

  /**
   * What the upper triangle turns into {@code right}: of independent standard normal numbers it
   * makes numbers that lie about as the inverse of the matrix says.
   */
  public double[] solvedByUpper(double[] right) {
    double[] x = right.clone();
    for (int row = x.length - 1; row >= 0; row--) {
      for (int k = row + 1; k < x.length; k++) {
        x[row] -= lower[k][row] * x[k];
      }
      x[row] /= lower[row][row];
    }
    return x;
  }

  /** {@code vector} times the inverse of the matrix times {@code vector}. */
  public double inverseForm(double[] vector) {
    double sum = 0;
    for (double each : solvedByLower(vector)) {
      sum += each * each;
    }
    return sum;
  }

  /** An element of the diagonal of the inverse. */
  public double inverseAt(int place) {
    double[] unit = new double[lower.length];
    unit[place] = 1;
    return inverseForm(unit);
  }
}
