package dev.poleward.domain.outlook;

/**
 * What is fitted to a dog's record: few, because a record holds little. Each is counted from the
 * ordinary dog, which is 0, in what dogs that nobody knows are expected to differ by. That is up to
 * twice as much as the dogs of {@link dev.poleward.domain.learner.Population#CLUB} do: a record can
 * begin with a dog that was taught elsewhere [C].
 */
public enum Trait {
  /** All rates of learning together; one unit multiplies them by e to the 0.4. */
  QUICKNESS(0.4),
  /** Skill straight on at the first rep on record; one unit is 0.8 logits. */
  START(0.8),
  /** How much lower skill begins by degree on the {@code pole} side; a factor, e to the 0.25. */
  POLE_FALL(0.25),
  /** The same on the {@code gap} side. */
  GAP_FALL(0.25),
  /** Staying in the poles at the first rep on record; one unit is 0.6 logits. */
  WEAVING(0.6),
  /** How much new handlings and lead-ins cost; a factor, e to the 0.3. */
  STRANGENESS(0.3);

  /** How many there are. */
  static final int COUNT = values().length;

  private final double unit;

  Trait(double unit) {
    this.unit = unit;
  }

  /** What a value comes to, in logits or as the logarithm of a factor. */
  double of(double[] values) {
    return unit * values[ordinal()];
  }

  /** The factor that a value is, for those that are factors. */
  double factor(double[] values) {
    return factorOf(values[ordinal()]);
  }

  /** The factor that a value is, for those that are factors. */
  public double factorOf(double value) {
    return StrictMath.exp(unit * value);
  }
}
