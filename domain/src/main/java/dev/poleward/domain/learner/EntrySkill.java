package dev.poleward.domain.learner;

import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.learner.Temper.Entry;
import dev.poleward.domain.learner.Temper.Memory;
import java.util.OptionalDouble;

/**
 * Skill of finding the entry, by signed entry angle: one row of knots from -180 to 180 degrees,
 * straight between them. The two entry sides begin, rise and end by numbers of their own and meet
 * at straight on. For one thread.
 */
final class EntrySkill {

  /** Degrees between knots. */
  static final double STEP = 7.5;

  static final int STRAIGHT_ON = (int) (180 / STEP);

  static final int KNOTS = 2 * STRAIGHT_ON + 1;

  private final Entry temper;
  private final Spreading spreading;
  private final Skills knots;

  EntrySkill(Entry temper) {
    this.temper = temper;
    this.spreading = new Spreading(temper);
    double[] start = new double[KNOTS];
    double[] ceiling = new double[KNOTS];
    for (int knot = 0; knot < KNOTS; knot++) {
      double angle = angleOf(knot);
      double size = Math.abs(angle);
      Temper.Side side = angle >= 0 ? temper.pole() : temper.gap();
      start[knot] = temper.straight() - side.fallPerDegree() * size;
      ceiling[knot] = temper.ceiling() - side.ceilingFallPerDegree() * size;
    }
    this.knots = new Skills(start, ceiling);
  }

  private EntrySkill(Entry temper, Spreading spreading, Skills knots) {
    this.temper = temper;
    this.spreading = spreading;
    this.knots = knots;
  }

  EntrySkill copy() {
    return new EntrySkill(temper, spreading, knots.copy());
  }

  /** The same skill in a dog of other temper. */
  EntrySkill of(Entry other) {
    return new EntrySkill(other, new Spreading(other), knots.copy());
  }

  static double angleOf(int knot) {
    return (knot - STRAIGHT_ON) * STEP;
  }

  /** Logits at an angle. */
  double at(EntryAngle angle) {
    double place = STRAIGHT_ON + angle.degrees() / STEP;
    int below = Math.min((int) place, KNOTS - 2);
    double part = place - below;
    return knots.at(below) * (1 - part) + knots.at(below + 1) * part;
  }

  /**
   * A rep at an angle. What it teaches there arrives at other angles in a lesser part, by a bell
   * over the degrees between; across straight on hardly any of it arrives.
   *
   * @param strength how much this rep teaches, 0 to 1
   */
  void practise(EntryAngle angle, double strength, Memory memory) {
    double degrees = angle.degrees();
    int nearest = (int) Math.rint(degrees / STEP) + STRAIGHT_ON;
    double share = rate(degrees) * strength;
    double discovered = knots.discovery(nearest, share);
    Spreading.Parts parts = spreading.from(degrees);
    for (int knot = parts.first(); knot <= parts.last(); knot++) {
      double part = parts.at(knot);
      knots.practise(knot, part * share, part * discovered, memory);
    }
  }

  private double rate(double degrees) {
    if (degrees == 0) {
      return (temper.pole().rate() + temper.gap().rate()) / 2;
    }
    return degrees > 0 ? temper.pole().rate() : temper.gap().rate();
  }

  void fade(double left, Memory memory) {
    knots.fade(left, memory);
  }

  /**
   * The least size of angle on a side at which skill has fallen to a logit: 0 where it is that low
   * straight on, nothing where it never falls so low.
   */
  OptionalDouble fallsTo(double logit, EntrySide side) {
    int step =
        switch (side) {
          case POLE -> 1;
          case GAP -> -1;
          case BOTH -> throw new IllegalArgumentException("a threshold is of one entry side");
        };
    if (knots.at(STRAIGHT_ON) <= logit) {
      return OptionalDouble.of(0);
    }
    for (int i = 1; i <= STRAIGHT_ON; i++) {
      double before = knots.at(STRAIGHT_ON + (i - 1) * step);
      double here = knots.at(STRAIGHT_ON + i * step);
      if (here <= logit) {
        return OptionalDouble.of(STEP * (i - 1 + (before - logit) / (before - here)));
      }
    }
    return OptionalDouble.empty();
  }
}
