package dev.poleward.domain.layout;

/**
 * A length as it is read on a tape of feet and inches, to the nearest half inch. For display: what
 * is laid out from it may be 7 mm off.
 *
 * @param halfInches how many, 0 or more
 */
public record FeetAndInches(long halfInches) {

  /** Metres in an inch, exactly (international yard and pound agreement, 1959). */
  public static final double INCH = 0.0254;

  private static final int HALF_INCHES_IN_FOOT = 24;

  /** The nearest to a length in metres, 0 or more. */
  public static FeetAndInches ofMetres(double metres) {
    return new FeetAndInches(Math.round(metres / INCH * 2));
  }

  /** As {@code 6 ft 11 in} or {@code 15 ft 0½ in}. */
  @Override
  public String toString() {
    long feet = halfInches / HALF_INCHES_IN_FOOT;
    long inches = halfInches % HALF_INCHES_IN_FOOT / 2;
    return feet + " ft " + inches + (halfInches % 2 == 1 ? "½ in" : " in");
  }
}
