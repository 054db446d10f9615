package dev.poleward.domain.layout;

/**
 * A way on the ground, in degrees clockwise seen from above; 0 is the way the dog runs the poles.
 * The entry angle of a dog that makes straight for pole 1 is its heading.
 *
 * @param degrees any number; 360 more is the same way
 */
public record Heading(double degrees) {

  /** Metres to the right for each metre ahead. */
  double x() {
    return Math.sin(Math.toRadians(degrees));
  }

  /** Metres along the poles for each metre ahead. */
  double y() {
    return Math.cos(Math.toRadians(degrees));
  }

  /** The way at a right angle to the right. */
  public Heading right() {
    return new Heading(degrees + 90);
  }

  /** The way at a right angle to the left. */
  public Heading left() {
    return new Heading(degrees - 90);
  }
}
