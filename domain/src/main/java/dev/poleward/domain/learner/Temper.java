package dev.poleward.domain.learner;

/**
 * What kind of learner a dog is: every parameter of {@link SimulatedDog}, with its unit and range.
 *
 * <p>All values are invented so that an ordinary dog behaves as trainers say that dogs do: weeks to
 * months from straight on to 90 degrees at two sessions a week [C]. No study of weaving stands
 * behind any of them. Skills are in logits: 0 is a chance of one half, 1.39 is 0.80, 4 is 0.98.
 *
 * @param entry finding the entry, by angle
 * @param practice how much a rep teaches
 * @param memory what time takes away
 * @param weaving staying in the poles after the entry
 * @param handling ease with what the handler does
 * @param leadIns ease with what the dog comes from
 * @param attention what passes within a session
 * @param pace how fast it runs
 */
public record Temper(
    Entry entry,
    Practice practice,
    Memory memory,
    Weaving weaving,
    Handling handling,
    LeadIns leadIns,
    Attention attention,
    Pace pace) {

  static final Range LOGIT = new Range(-6, 8);
  static final Range FALL = new Range(0, 0.2);
  static final Range RATE = new Range(0, 0.5);
  static final Range PART = new Range(0, 1);
  static final Range SPREAD = new Range(1, 60);
  static final Range WIDER = new Range(1, 5);
  static final Range DAYS = new Range(1, 36_500);
  static final Range SAVINGS = new Range(1, 10);
  static final Range COST = new Range(0, 3);
  static final Range FAVOUR = new Range(-1, 1);
  static final Range REPS = new Range(1, 1_000);
  static final Range MINUTES = new Range(0.5, 1_440);
  static final Range SECONDS_PER_GAP = new Range(0.18, 1);

  /**
   * The entry by angle. The sides share nothing but straight on.
   *
   * @param straight logits at 0 degrees before any practice, -6 to 8
   * @param ceiling logits at 0 degrees that practice leads to, -6 to 8
   * @param pole the side on which the dog meets pole 1 first
   * @param gap the side on which it meets the gap first
   * @param spreadDegrees standard deviation of the bell by which practice at one angle helps at
   *     another, 1 to 60 degrees
   * @param towardsStraight how many times wider the bell is towards straight on: a hard angle
   *     teaches the easier ones more than the other way round, 1 to 5
   * @param acrossSides part of that which arrives on the other entry side, 0 to 1
   */
  public record Entry(
      double straight,
      double ceiling,
      Side pole,
      Side gap,
      double spreadDegrees,
      double towardsStraight,
      double acrossSides) {

    /** Refuses what lies out of range. */
    public Entry {
      LOGIT.check("straight", straight);
      LOGIT.check("ceiling", ceiling);
      SPREAD.check("spreadDegrees", spreadDegrees);
      WIDER.check("towardsStraight", towardsStraight);
      PART.check("acrossSides", acrossSides);
    }
  }

  /**
   * One entry side.
   *
   * @param fallPerDegree logits by which the skill begins lower for each degree, 0 to 0.2
   * @param ceilingFallPerDegree logits by which it ends lower for each degree, 0 to 0.2
   * @param rate part of what is left to the ceiling that one rep teaches at best, 0 to 0.5
   */
  public record Side(double fallPerDegree, double ceilingFallPerDegree, double rate) {

    /** Refuses what lies out of range. */
    public Side {
      FALL.check("fallPerDegree", fallPerDegree);
      FALL.check("ceilingFallPerDegree", ceilingFallPerDegree);
      RATE.check("rate", rate);
    }
  }

  /**
   * How much a rep teaches. Most where the dog succeeds two times in three, little where it always
   * or hardly ever does.
   *
   * @param missTeaches what a miss teaches, as a part of a success, 0 to 1
   * @param helpedTeaches what a helped rep teaches, as a part of one without, 0 to 1
   * @param leastTeaches what a rep teaches that is far too easy or too hard, as a part of the best,
   *     0 to 1
   */
  public record Practice(double missTeaches, double helpedTeaches, double leastTeaches) {

    /** Refuses what lies out of range. */
    public Practice {
      PART.check("missTeaches", missTeaches);
      PART.check("helpedTeaches", helpedTeaches);
      PART.check("leastTeaches", leastTeaches);
    }

    /** How much a rep teaches by its chance of success, leastTeaches to 1: most at two thirds. */
    double atChance(double chance) {
      double hump = chance * chance * (1 - chance) / (4.0 / 27);
      return leastTeaches + (1 - leastTeaches) * hump;
    }
  }

  /**
   * What time takes away, from every skill alike.
   *
   * @param halfLifeDays days without practice after which half of what can fade has faded, 1 to
   *     36,500
   * @param kept part of what was ever learned that does not fade, 0 to 1
   * @param savings how many times quicker what was known comes back, 1 to 10
   */
  public record Memory(double halfLifeDays, double kept, double savings) {

    /** Refuses what lies out of range. */
    public Memory {
      DAYS.check("halfLifeDays", halfLifeDays);
      PART.check("kept", kept);
      SAVINGS.check("savings", savings);
    }
  }

  /**
   * Staying in the poles, gap by gap, once the entry is made.
   *
   * @param start logits of passing a gap before any practice, -6 to 8
   * @param ceiling logits that practice leads to, -6 to 8
   * @param rate part of what is left that one rep teaches at best, 0 to 0.5
   * @param laterGap logits that each gap beyond the third costs more, 0 to 3
   */
  public record Weaving(double start, double ceiling, double rate, double laterGap) {

    /** Refuses what lies out of range. */
    public Weaving {
      LOGIT.check("start", start);
      LOGIT.check("ceiling", ceiling);
      RATE.check("rate", rate);
      COST.check("laterGap", laterGap);
    }
  }

  /**
   * Ease with what the handler does.
   *
   * @param strangeness how much manoeuvres cost that are new, as a multiple of the ordinary dog's,
   *     0 to 3
   * @param favoursLeft logits by which it is better on the handler's left than on the right at the
   *     beginning, -1 to 1
   * @param rate part of what is left that one rep teaches at best, 0 to 0.5
   * @param generalises part of it that reaches every other manoeuvre, 0 to 1
   */
  public record Handling(double strangeness, double favoursLeft, double rate, double generalises) {

    /** Refuses what lies out of range. */
    public Handling {
      COST.check("strangeness", strangeness);
      FAVOUR.check("favoursLeft", favoursLeft);
      RATE.check("rate", rate);
      PART.check("generalises", generalises);
    }
  }

  /**
   * Ease with what the dog comes from; starting where it is put costs nothing.
   *
   * @param jump logits that a jump costs at the beginning, 0 to 3
   * @param tunnel logits that a tunnel costs at the beginning, 0 to 3
   * @param rate part of what is left that one rep teaches at best, 0 to 0.5
   */
  public record LeadIns(double jump, double tunnel, double rate) {

    /** Refuses what lies out of range. */
    public LeadIns {
      COST.check("jump", jump);
      COST.check("tunnel", tunnel);
      RATE.check("rate", rate);
    }
  }

  /**
   * What passes within a session.
   *
   * @param freshReps reps before attention sags, 1 to 1,000
   * @param sagPerRep logits that each rep beyond them costs, 0 to 3
   * @param recoveryMinutes minutes in which half of the reps are rested off, 0.5 to 1,440
   * @param missHurts logits that each miss running beyond the first costs, 0 to 3
   * @param forgivesMinutes minutes in which half of the misses are forgotten, 0.5 to 1,440
   * @param rewardPull logits between no reward and more than it could wish for, 0 to 3
   */
  public record Attention(
      double freshReps,
      double sagPerRep,
      double recoveryMinutes,
      double missHurts,
      double forgivesMinutes,
      double rewardPull) {

    /** Refuses what lies out of range. */
    public Attention {
      REPS.check("freshReps", freshReps);
      COST.check("sagPerRep", sagPerRep);
      MINUTES.check("recoveryMinutes", recoveryMinutes);
      COST.check("missHurts", missHurts);
      MINUTES.check("forgivesMinutes", forgivesMinutes);
      COST.check("rewardPull", rewardPull);
    }
  }

  /**
   * How fast it runs.
   *
   * @param secondsPerGap seconds a gap once it weaves well, 0.18 to 1
   * @param noviceSlower by how much slower it is before, as a part of that, 0 to 3
   * @param spread standard deviation of the logarithm of the time of a run, 0 to 1
   */
  public record Pace(double secondsPerGap, double noviceSlower, double spread) {

    /** Refuses what lies out of range. */
    public Pace {
      SECONDS_PER_GAP.check("secondsPerGap", secondsPerGap);
      COST.check("noviceSlower", noviceSlower);
      PART.check("spread", spread);
    }
  }

  /** An ordinary dog: the middle of {@link Population#CLUB}. */
  public static final Temper ORDINARY =
      new Temper(
          new Entry(
              0.6, 4.4, new Side(0.045, 0.010, 0.060), new Side(0.045, 0.010, 0.060), 22, 2, 0.05),
          new Practice(0.3, 0.4, 0.08),
          new Memory(60, 0.7, 3),
          new Weaving(2.2, 5.5, 0.03, 0.12),
          new Handling(1, 0.2, 0.06, 0.2),
          new LeadIns(0.6, 1.0, 0.06),
          new Attention(8, 0.10, 25, 0.3, 5, 0.5),
          new Pace(0.32, 0.5, 0.06));

  /** Learns fast, and what it learns at one angle helps at many; soon bored. */
  public static final Temper QUICK =
      new Temper(
          new Entry(
              1.2, 4.6, new Side(0.045, 0.008, 0.090), new Side(0.040, 0.008, 0.095), 26, 2, 0.08),
          new Practice(0.4, 0.5, 0.08),
          new Memory(75, 0.75, 3),
          new Weaving(2.6, 5.8, 0.04, 0.10),
          new Handling(0.7, -0.1, 0.09, 0.3),
          new LeadIns(0.4, 0.7, 0.09),
          new Attention(7, 0.16, 20, 0.25, 4, 0.6),
          new Pace(0.26, 0.4, 0.05));

  /** Learns slowly and keeps it; nothing upsets it. */
  public static final Temper STEADY =
      new Temper(
          new Entry(
              0.6, 4.2, new Side(0.045, 0.010, 0.045), new Side(0.050, 0.012, 0.040), 20, 2, 0.03),
          new Practice(0.35, 0.4, 0.08),
          new Memory(90, 0.8, 3),
          new Weaving(2.2, 5.6, 0.03, 0.10),
          new Handling(0.8, 0.1, 0.05, 0.2),
          new LeadIns(0.5, 0.8, 0.05),
          new Attention(12, 0.05, 25, 0.1, 3, 0.3),
          new Pace(0.38, 0.5, 0.05));

  /** Takes misses to heart, tires early, and much of what the handler does is strange to it. */
  public static final Temper SENSITIVE =
      new Temper(
          new Entry(
              0.5, 4.3, new Side(0.050, 0.012, 0.055), new Side(0.042, 0.010, 0.060), 20, 2, 0.03),
          new Practice(0.1, 0.3, 0.08),
          new Memory(45, 0.6, 3),
          new Weaving(2.0, 5.3, 0.03, 0.14),
          new Handling(1.5, 0.5, 0.05, 0.15),
          new LeadIns(0.9, 1.4, 0.05),
          new Attention(6, 0.16, 30, 0.7, 9, 0.9),
          new Pace(0.35, 0.7, 0.08));

  /** Fast and keen: overruns entries and pops out, one side far behind the other. */
  public static final Temper BOLD =
      new Temper(
          new Entry(
              0.8, 4.2, new Side(0.040, 0.010, 0.070), new Side(0.055, 0.014, 0.055), 22, 2, 0.05),
          new Practice(0.3, 0.4, 0.08),
          new Memory(50, 0.65, 3),
          new Weaving(1.6, 5.0, 0.03, 0.18),
          new Handling(0.8, -0.3, 0.07, 0.2),
          new LeadIns(0.9, 1.5, 0.06),
          new Attention(10, 0.06, 20, 0.15, 3, 0.3),
          new Pace(0.24, 0.3, 0.08));

  /**
   * The same learner with all rates of learning multiplied.
   *
   * @param factor 0 or more; rates stay within their range
   */
  public Temper quicker(double factor) {
    return new Temper(
        new Entry(
            entry.straight,
            entry.ceiling,
            quicker(entry.pole, factor),
            quicker(entry.gap, factor),
            entry.spreadDegrees,
            entry.towardsStraight,
            entry.acrossSides),
        practice,
        memory,
        new Weaving(
            weaving.start, weaving.ceiling, RATE.nearest(weaving.rate * factor), weaving.laterGap),
        new Handling(
            handling.strangeness,
            handling.favoursLeft,
            RATE.nearest(handling.rate * factor),
            handling.generalises),
        new LeadIns(leadIns.jump, leadIns.tunnel, RATE.nearest(leadIns.rate * factor)),
        attention,
        pace);
  }

  private static Side quicker(Side side, double factor) {
    return new Side(
        side.fallPerDegree, side.ceilingFallPerDegree, RATE.nearest(side.rate * factor));
  }

  /** The same dog, but nothing moves it any more: it neither learns, forgets, tires nor sulks. */
  public Temper frozen() {
    Temper still = quicker(0);
    return new Temper(
        still.entry,
        practice,
        new Memory(memory.halfLifeDays, 1, memory.savings),
        still.weaving,
        still.handling,
        still.leadIns,
        new Attention(
            attention.freshReps, 0, attention.recoveryMinutes, 0, attention.forgivesMinutes, 0),
        pace);
  }
}
