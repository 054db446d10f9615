package dev.poleward.domain.mastery;

import dev.poleward.domain.layout.EntrySide;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Which entry side lags, as far as the thresholds of a curve can tell. Neither side is taken to be
 * the harder one.
 */
public sealed interface SideComparison {

  /**
   * Sides whose thresholds surely lie nearer than that are alike: half an hour of the clock [C].
   */
  double ALIKE_DEGREES = 15;

  /**
   * How far one threshold lies above another, degrees.
   *
   * @param lower its lower limit; null where there is none
   * @param upper its upper limit; null where there is none
   */
  record Apart(double degrees, @Nullable Double lower, @Nullable Double upper) {

    /** The same, seen from the other. */
    public Apart reversed() {
      // Not by a minus sign, which would make a zero negative.
      return new Apart(
          0 - degrees, upper == null ? null : 0 - upper, lower == null ? null : 0 - lower);
    }

    private boolean isSurelyAbove(double least) {
      return lower != null && lower > least;
    }
  }

  /**
   * One side is surely behind.
   *
   * @param side which
   * @param behind by how many degrees; null where only the order of the two can be told
   */
  record Lags(EntrySide side, @Nullable Apart behind) implements SideComparison {}

  /**
   * The two are surely less than {@link #ALIKE_DEGREES} apart.
   *
   * @param difference how far the threshold of the pole side lies above that of the gap side
   */
  record Alike(Apart difference) implements SideComparison {}

  /**
   * It cannot be told.
   *
   * @param difference as for {@link Alike}; null where there are no two thresholds
   */
  record CannotTell(Why why, @Nullable Apart difference) implements SideComparison {}

  /** Why it cannot be told. */
  enum Why {
    /** One side, or both, have not enough reps for a threshold. */
    NOT_ENOUGH_REPS,
    /** The curve of a side does not fall, so that it has no threshold. */
    NO_FALL,
    /** A threshold lies outside the angles tried, and the limits of the two do not decide. */
    OUTSIDE_TRIED,
    /** Both are known, and with these limits the difference may be either way, or large. */
    LIMITS_TOO_WIDE
  }

  /** Where a threshold may lie; infinite where nothing bounds it. */
  record Bounds(double lower, double upper) {

    static Bounds of(Threshold threshold) {
      return switch (threshold) {
        case Threshold.Estimated it -> bounds(it.lower(), it.upper());
        case Threshold.BeyondTried it -> bounds(it.lower(), null);
        case Threshold.BelowTried it -> bounds(null, it.upper());
        case Threshold.NotEnoughReps _, Threshold.NoFall _ -> bounds(null, null);
      };
    }

    private static Bounds bounds(@Nullable Double lower, @Nullable Double upper) {
      return new Bounds(
          lower == null ? Double.NEGATIVE_INFINITY : lower,
          upper == null ? Double.POSITIVE_INFINITY : upper);
    }
  }

  /** Compares the two sides of a curve. */
  static SideComparison of(MasteryCurve curve) {
    return of(threshold(curve, EntrySide.POLE), threshold(curve, EntrySide.GAP));
  }

  private static Threshold threshold(MasteryCurve curve, EntrySide side) {
    return curve.sides().stream()
        .filter(each -> each.side() == side)
        .findFirst()
        .orElseThrow()
        .threshold();
  }

  /** Compares two thresholds. */
  static SideComparison of(Threshold pole, Threshold gap) {
    List<Threshold> both = List.of(pole, gap);
    if (both.stream().anyMatch(Threshold.NotEnoughReps.class::isInstance)) {
      return new CannotTell(Why.NOT_ENOUGH_REPS, null);
    }
    if (both.stream().anyMatch(Threshold.NoFall.class::isInstance)) {
      return new CannotTell(Why.NO_FALL, null);
    }
    return pole instanceof Threshold.Estimated one && gap instanceof Threshold.Estimated other
        ? byDifference(apart(one, other))
        : byOrder(Bounds.of(pole), Bounds.of(gap));
  }

  private static SideComparison byOrder(Bounds pole, Bounds gap) {
    if (pole.upper() < gap.lower()) {
      return new Lags(EntrySide.POLE, null);
    }
    return gap.upper() < pole.lower()
        ? new Lags(EntrySide.GAP, null)
        : new CannotTell(Why.OUTSIDE_TRIED, null);
  }

  private static SideComparison byDifference(Apart difference) {
    if (difference.isSurelyAbove(0)) {
      return new Lags(EntrySide.GAP, difference);
    }
    if (difference.reversed().isSurelyAbove(0)) {
      return new Lags(EntrySide.POLE, difference.reversed());
    }
    return difference.isSurelyAbove(-ALIKE_DEGREES)
            && difference.reversed().isSurelyAbove(-ALIKE_DEGREES)
        ? new Alike(difference)
        : new CannotTell(Why.LIMITS_TOO_WIDE, difference);
  }

  /**
   * How far one threshold lies above another, with limits from those of both (Zou, Donner 2008,
   * Statistics in Medicine 27:1693). Straight-on reps belong to both sides and make the two move
   * together, so that these limits are rather too wide than too narrow.
   */
  private static Apart apart(Threshold.Estimated one, Threshold.Estimated other) {
    double degrees = one.degrees() - other.degrees();
    Double down = both(one.degrees(), one.lower(), other.upper(), other.degrees());
    Double up = both(other.degrees(), other.lower(), one.upper(), one.degrees());
    return new Apart(
        degrees, down == null ? null : degrees - down, up == null ? null : degrees + up);
  }

  private static @Nullable Double both(
      double from, @Nullable Double lower, @Nullable Double upper, double to) {
    return lower == null || upper == null ? null : StrictMath.hypot(from - lower, upper - to);
  }
}
