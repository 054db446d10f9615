package dev.poleward.domain.learner;

import dev.poleward.domain.learner.Temper.Entry;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The part of what is learned at one angle that arrives at others: a bell over the degrees between,
 * of which hardly anything crosses straight on. Remembers the bells of some angles, because the
 * same few are run again and again; what is remembered is what would be computed. Safe for use by
 * many threads.
 */
final class Spreading {

  /** Beyond so many standard deviations practice no longer reaches. */
  private static final double REACH = 3;

  private static final int ANGLES_HELD_MAX = 128;

  /** The parts that arrive at knots. Immutable. */
  static final class Parts {

    private final int first;
    private final double[] parts;

    private Parts(int first, double[] parts) {
      this.first = first;
      this.parts = parts;
    }

    /** The first knot that anything arrives at. */
    int first() {
      return first;
    }

    int last() {
      return first + parts.length - 1;
    }

    double at(int knot) {
      return parts[knot - first];
    }
  }

  private final Entry temper;
  private final ConcurrentHashMap<Double, Parts> held = new ConcurrentHashMap<>();

  Spreading(Entry temper) {
    this.temper = temper;
  }

  Parts from(double degrees) {
    Parts known = held.get(degrees);
    if (known == null) {
      known = computed(degrees);
      if (held.size() < ANGLES_HELD_MAX) {
        held.put(degrees, known);
      }
    }
    return known;
  }

  private Parts computed(double degrees) {
    double reach = REACH * temper.spreadDegrees() * temper.towardsStraight();
    int first =
        Math.max(0, (int) Math.ceil((degrees - reach) / EntrySkill.STEP) + EntrySkill.STRAIGHT_ON);
    int last =
        Math.min(
            EntrySkill.KNOTS - 1,
            (int) Math.floor((degrees + reach) / EntrySkill.STEP) + EntrySkill.STRAIGHT_ON);
    double[] parts = new double[last - first + 1];
    for (int knot = first; knot <= last; knot++) {
      parts[knot - first] = part(degrees, EntrySkill.angleOf(knot));
    }
    return new Parts(first, parts);
  }

  private double part(double from, double to) {
    boolean otherSide = from * to < 0;
    boolean towardsStraight = !otherSide && Math.abs(to) < Math.abs(from);
    double width = temper.spreadDegrees() * (towardsStraight ? temper.towardsStraight() : 1);
    double widths = (to - from) / width;
    double bell = StrictMath.exp(-widths * widths / 2);
    return otherSide ? bell * temper.acrossSides() : bell;
  }
}
