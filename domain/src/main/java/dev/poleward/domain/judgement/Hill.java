package dev.poleward.domain.judgement;

/** A height over two coordinates, with its slopes and bends. */
interface Hill {

  /** What there is at a place. */
  Place at(double x, double y);

  /**
   * A place on a hill.
   *
   * @param height not NaN
   * @param byX slope
   * @param byY slope
   * @param byXX bend
   * @param byXY bend
   * @param byYY bend
   */
  record Place(
      double x,
      double y,
      double height,
      double byX,
      double byY,
      double byXX,
      double byXY,
      double byYY) {}
}
