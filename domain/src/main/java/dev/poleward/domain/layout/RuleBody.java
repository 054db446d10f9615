package dev.poleward.domain.layout;

/**
 * What rule bodies ask of the spacing of poles. From memory: the body's current rule book decides,
 * and bodies differ.
 */
public enum RuleBody {
  /** 60 cm [M]. */
  FCI(0.60),
  /** 24 inches [M]. */
  AKC(0.6096);

  /** Metres within which a spacing is what is asked for. */
  public static final double TOLERANCE = 0.005;

  private static final double ROUNDING = 1e-9;

  private final double spacing;

  RuleBody(double spacing) {
    this.spacing = spacing;
  }

  /** Metres from pole to pole. */
  public double spacing() {
    return spacing;
  }

  /** Whether poles that far apart are as the body asks. */
  public boolean allows(double metres) {
    return Math.abs(metres - spacing) <= TOLERANCE + ROUNDING;
  }
}
