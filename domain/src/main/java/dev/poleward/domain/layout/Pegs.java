package dev.poleward.domain.layout;

import java.util.Optional;

/**
 * Two pegs in the ground that everything is measured from.
 *
 * @param a the first
 * @param b the second, somewhere else
 */
public record Pegs(Spot a, Spot b) {

  /** On which side of the line from peg a to peg b a place lies, looking from a to b. */
  public enum Side {
    LEFT,
    RIGHT
  }

  /** Refuses two pegs in one hole. */
  public Pegs {
    if (a.distanceTo(b) == 0) {
      throw new IllegalArgumentException("two pegs stand in two places");
    }
  }

  /** Metres from peg to peg. */
  public double apart() {
    return a.distanceTo(b);
  }

  /** The two tapes to a place, read to the millimetre. */
  public Tapes tapesTo(Spot spot) {
    double across = (b.x() - a.x()) * (spot.y() - a.y()) - (b.y() - a.y()) * (spot.x() - a.x());
    return new Tapes(
        toMillimetre(a.distanceTo(spot)),
        toMillimetre(b.distanceTo(spot)),
        across > 0 ? Side.LEFT : Side.RIGHT);
  }

  private static double toMillimetre(double metres) {
    return Math.rint(metres * 1_000) / 1_000;
  }

  /** The place where two tapes meet; empty when they do not reach each other. */
  public Optional<Spot> meet(Tapes tapes) {
    double apart = apart();
    double along =
        (tapes.fromA() * tapes.fromA() - tapes.fromB() * tapes.fromB() + apart * apart)
            / (2 * apart);
    double square = tapes.fromA() * tapes.fromA() - along * along;
    if (square < 0) {
      return Optional.empty();
    }
    Heading towardsB = a.towards(b);
    Heading aside =
        switch (tapes.side()) {
          case LEFT -> towardsB.left();
          case RIGHT -> towardsB.right();
        };
    return Optional.of(a.ahead(towardsB, along).ahead(aside, Math.sqrt(square)));
  }

  /**
   * Sine of the angle at which two tapes cross at a place: the smaller it is, the more an error of
   * a tape moves the place. 0 where both run along one line, or the place is a peg's.
   */
  double crossing(Spot spot) {
    double fromA = a.distanceTo(spot);
    double fromB = b.distanceTo(spot);
    if (fromA == 0 || fromB == 0) {
      return 0;
    }
    double across =
        (a.x() - spot.x()) * (b.y() - spot.y()) - (a.y() - spot.y()) * (b.x() - spot.x());
    return Math.abs(across) / (fromA * fromB);
  }

  /**
   * What two tapes read.
   *
   * @param fromA metres from peg a
   * @param fromB metres from peg b
   * @param side which of the two places where they meet
   */
  public record Tapes(double fromA, double fromB, Side side) {}
}
