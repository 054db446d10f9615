package dev.poleward.domain.learner;

import dev.poleward.domain.learner.Temper.Attention;
import dev.poleward.domain.learner.Temper.Entry;
import dev.poleward.domain.learner.Temper.Handling;
import dev.poleward.domain.learner.Temper.LeadIns;
import dev.poleward.domain.learner.Temper.Memory;
import dev.poleward.domain.learner.Temper.Pace;
import dev.poleward.domain.learner.Temper.Practice;
import dev.poleward.domain.learner.Temper.Side;
import dev.poleward.domain.learner.Temper.Weaving;
import java.util.random.RandomGenerator;

/**
 * Dogs around a middle one. Each parameter is spread by itself, and one quickness moves all rates
 * of learning of a dog together. The spreads are invented, like the tempers [C].
 *
 * @param middle the dog around which they lie
 * @param quickness standard deviation of the logarithm of the common quickness, 0 to 2
 * @param spread standard deviation of the logarithm of every other factor, 0 to 2
 */
public record Population(Temper middle, double quickness, double spread) {

  private static final Range SPREAD = new Range(0, 2);

  /** Dogs as a club might have them. */
  public static final Population CLUB = new Population(Temper.ORDINARY, 0.35, 0.2);

  /** Logits that what is a logit is spread by, for each unit of {@code spread} [C]. */
  private static final double LOGITS = 2;

  /** Refuses what lies out of range. */
  public Population {
    SPREAD.check("quickness", quickness);
    SPREAD.check("spread", spread);
  }

  /** A dog of this population; the same random numbers give the same dog. */
  public Temper draw(RandomGenerator random) {
    double quick = StrictMath.exp(quickness * random.nextGaussian());
    return new Draw(random, spread).around(middle).quicker(quick);
  }

  /** One dog being drawn. */
  private record Draw(RandomGenerator random, double spread) {

    Temper around(Temper middle) {
      return new Temper(
          around(middle.entry()),
          around(middle.practice()),
          around(middle.memory()),
          around(middle.weaving()),
          around(middle.handling()),
          around(middle.leadIns()),
          around(middle.attention()),
          around(middle.pace()));
    }

    private Entry around(Entry middle) {
      return new Entry(
          logit(middle.straight()),
          middle.ceiling(),
          around(middle.pole()),
          around(middle.gap()),
          factor(middle.spreadDegrees(), Temper.SPREAD),
          factor(middle.towardsStraight(), Temper.WIDER),
          factor(middle.acrossSides(), Temper.PART));
    }

    private Side around(Side middle) {
      return new Side(
          factor(middle.fallPerDegree(), Temper.FALL),
          factor(middle.ceilingFallPerDegree(), Temper.FALL),
          factor(middle.rate(), Temper.RATE));
    }

    private Practice around(Practice middle) {
      return new Practice(
          factor(middle.missTeaches(), Temper.PART),
          factor(middle.helpedTeaches(), Temper.PART),
          factor(middle.leastTeaches(), Temper.PART));
    }

    private Memory around(Memory middle) {
      return new Memory(
          factor(middle.halfLifeDays(), Temper.DAYS),
          factor(middle.kept(), Temper.PART),
          factor(middle.savings(), Temper.SAVINGS));
    }

    private Weaving around(Weaving middle) {
      return new Weaving(
          logit(middle.start()),
          middle.ceiling(),
          factor(middle.rate(), Temper.RATE),
          factor(middle.laterGap(), Temper.COST));
    }

    private Handling around(Handling middle) {
      return new Handling(
          factor(middle.strangeness(), Temper.COST),
          Temper.FAVOUR.nearest(middle.favoursLeft() + spread * random.nextGaussian()),
          factor(middle.rate(), Temper.RATE),
          factor(middle.generalises(), Temper.PART));
    }

    private LeadIns around(LeadIns middle) {
      return new LeadIns(
          factor(middle.jump(), Temper.COST),
          factor(middle.tunnel(), Temper.COST),
          factor(middle.rate(), Temper.RATE));
    }

    private Attention around(Attention middle) {
      return new Attention(
          factor(middle.freshReps(), Temper.REPS),
          factor(middle.sagPerRep(), Temper.COST),
          factor(middle.recoveryMinutes(), Temper.MINUTES),
          factor(middle.missHurts(), Temper.COST),
          factor(middle.forgivesMinutes(), Temper.MINUTES),
          factor(middle.rewardPull(), Temper.COST));
    }

    private Pace around(Pace middle) {
      return new Pace(
          factor(middle.secondsPerGap(), Temper.SECONDS_PER_GAP),
          factor(middle.noviceSlower(), Temper.COST),
          factor(middle.spread(), Temper.PART));
    }

    private double factor(double middle, Range range) {
      return range.nearest(middle * StrictMath.exp(spread * random.nextGaussian()));
    }

    private double logit(double middle) {
      return Temper.LOGIT.nearest(middle + LOGITS * spread * random.nextGaussian());
    }
  }
}
