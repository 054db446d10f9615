package dev.poleward.domain.mastery;

/**
 * What was tried at several places, each with the weight of what was made and of what was missed
 * there. The places ascend and are distinct. Never changes.
 */
public final class Trials {

  private final double[] places;
  private final double[] made;
  private final double[] missed;

  /**
   * Takes the trials place by place; the three arrays are of one length and are copied.
   *
   * @param places ascending, distinct, finite
   * @param made weights, at least 0
   * @param missed weights, at least 0
   */
  public Trials(double[] places, double[] made, double[] missed) {
    this.places = places.clone();
    this.made = made.clone();
    this.missed = missed.clone();
    for (int i = 0; i < places.length; i++) {
      if (!Double.isFinite(places[i]) || (i > 0 && !(places[i - 1] < places[i]))) {
        throw new IllegalArgumentException("places ascend: " + places[i]);
      }
      if (!(made[i] >= 0 && missed[i] >= 0 && made[i] + missed[i] < Double.POSITIVE_INFINITY)) {
        throw new IllegalArgumentException("no weights: " + made[i] + ", " + missed[i]);
      }
    }
  }

  /** How many places there are. */
  public int size() {
    return places.length;
  }

  /** The place at an index from 0. */
  public double place(int index) {
    return places[index];
  }

  /** The weight made there. */
  public double made(int index) {
    return made[index];
  }

  /** The weight missed there. */
  public double missed(int index) {
    return missed[index];
  }

  /** The weight tried there. */
  public double weight(int index) {
    return made[index] + missed[index];
  }
}
