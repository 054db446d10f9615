package dev.poleward.domain.planning;

/**
 * Numbers of which most are nought, by their places: two of three of a rep's {@link Traits} are. To
 * sum over the others comes to the very same and takes a fraction of the time. Immutable.
 */
final class SparseVector {

  private final int[] places;
  private final double[] values;

  private SparseVector(int[] places, double[] values) {
    this.places = places;
    this.values = values;
  }

  static SparseVector of(double[] all) {
    int count = 0;
    for (double each : all) {
      count += each == 0 ? 0 : 1;
    }
    int[] places = new int[count];
    double[] values = new double[count];
    int next = 0;
    for (int place = 0; place < all.length; place++) {
      if (all[place] != 0) {
        places[next] = place;
        values[next] = all[place];
        next++;
      }
    }
    return new SparseVector(places, values);
  }

  double dot(double[] other) {
    double sum = 0;
    for (int i = 0; i < places.length; i++) {
      sum += values[i] * other[places[i]];
    }
    return sum;
  }

  /** Adds {@code times} the vector. */
  void addTo(double[] sum, double times) {
    for (int i = 0; i < places.length; i++) {
      sum[places[i]] += times * values[i];
    }
  }

  /** Adds {@code times} the vector's product with itself to the lower triangle of a matrix. */
  void addSquareTo(double[][] lower, double times) {
    for (int i = 0; i < places.length; i++) {
      double[] row = lower[places[i]];
      double ofRow = times * values[i];
      for (int j = 0; j <= i; j++) {
        row[places[j]] += ofRow * values[j];
      }
    }
  }
}
