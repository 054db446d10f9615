package dev.poleward.domain.layout;

/**
 * A place on the ground. Pole 1 is the origin, y runs along the poles the way the dog runs, x to
 * the right of it.
 *
 * @param x metres
 * @param y metres
 */
public record Spot(double x, double y) {

  /** Where pole 1 stands. */
  public static final Spot POLE_1 = new Spot(0, 0);

  /** {@code -0.0} becomes {@code 0.0}, so that equal places are equal records. */
  public Spot {
    x = x + 0.0;
    y = y + 0.0;
  }

  /** Metres to another place. */
  public double distanceTo(Spot other) {
    return Math.hypot(other.x - x, other.y - y);
  }

  /**
   * The place so far off.
   *
   * @param metres may be negative, which is backwards
   */
  public Spot ahead(Heading heading, double metres) {
    return new Spot(x + metres * heading.x(), y + metres * heading.y());
  }

  /** The way from here to another place. */
  public Heading towards(Spot other) {
    return new Heading(Math.toDegrees(Math.atan2(other.x - x, other.y - y)));
  }

  /** Where the place comes to lie when the ground turns about pole 1, in degrees clockwise. */
  public Spot turned(double degrees) {
    double sin = Math.sin(Math.toRadians(degrees));
    double cos = Math.cos(Math.toRadians(degrees));
    return new Spot(x * cos + y * sin, y * cos - x * sin);
  }
}
