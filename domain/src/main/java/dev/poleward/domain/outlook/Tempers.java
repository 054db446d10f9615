package dev.poleward.domain.outlook;

import dev.poleward.domain.learner.Population;
import dev.poleward.domain.learner.Temper;
import dev.poleward.domain.learner.Temper.Entry;
import dev.poleward.domain.learner.Temper.Handling;
import dev.poleward.domain.learner.Temper.LeadIns;
import dev.poleward.domain.learner.Temper.Side;
import dev.poleward.domain.learner.Temper.Weaving;

/** Makes tempers of traits. */
final class Tempers {

  private static final Temper MIDDLE = Population.CLUB.middle();

  private Tempers() {}

  /** Of those traits, and the ordinary dog's in everything else. */
  static Temper of(double[] traits) {
    return of(traits, MIDDLE);
  }

  /**
   * Of those traits.
   *
   * @param others where everything that is no trait comes from
   */
  static Temper of(double[] traits, Temper others) {
    double strange = Trait.STRANGENESS.factor(traits);
    return new Temper(
            entry(traits, others.entry()),
            others.practice(),
            others.memory(),
            weaving(traits, others.weaving()),
            new Handling(
                within(MIDDLE.handling().strangeness() * strange, 0, 3),
                others.handling().favoursLeft(),
                MIDDLE.handling().rate(),
                others.handling().generalises()),
            new LeadIns(
                within(MIDDLE.leadIns().jump() * strange, 0, 3),
                within(MIDDLE.leadIns().tunnel() * strange, 0, 3),
                MIDDLE.leadIns().rate()),
            others.attention(),
            others.pace())
        .quicker(Trait.QUICKNESS.factor(traits));
  }

  private static Entry entry(double[] traits, Entry others) {
    Entry middle = MIDDLE.entry();
    return new Entry(
        logit(middle.straight() + Trait.START.of(traits)),
        others.ceiling(),
        side(middle.pole(), Trait.POLE_FALL.factor(traits), others.pole()),
        side(middle.gap(), Trait.GAP_FALL.factor(traits), others.gap()),
        others.spreadDegrees(),
        others.towardsStraight(),
        others.acrossSides());
  }

  private static Side side(Side middle, double steeper, Side others) {
    return new Side(
        within(middle.fallPerDegree() * steeper, 0, 0.2),
        others.ceilingFallPerDegree(),
        middle.rate());
  }

  private static Weaving weaving(double[] traits, Weaving others) {
    return new Weaving(
        logit(MIDDLE.weaving().start() + Trait.WEAVING.of(traits)),
        others.ceiling(),
        MIDDLE.weaving().rate(),
        others.laterGap());
  }

  private static double logit(double value) {
    return within(value, -6, 8);
  }

  private static double within(double value, double least, double most) {
    return Math.clamp(value, least, most);
  }
}
