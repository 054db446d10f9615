package dev.poleward.domain.learner;

import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.event.Help;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.layout.LeadIn;
import java.time.Duration;
import java.time.Instant;
import java.util.OptionalDouble;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;

/**
 * An invented dog that learns the weave poles. What it does follows from its temper, from the calls
 * in their order, and from the random numbers that the caller brings; it looks at no clock. For one
 * thread.
 *
 * <p>The chance that a rep's entry is made is logistic in a sum: skill at the angle, ease with the
 * handling, ease with the lead-in, help, and mood. Once in, the dog passes gap after gap with a
 * chance that is logistic too.
 */
public final class SimulatedDog {

  /** Logits that help adds [C]. */
  private static final double HELP = 1.5;

  /** Logits that a wrap round the jump adds against one straight over it: it is slower [C]. */
  private static final double WRAP = 0.3;

  /** Part of the misses that are no attempt, and what each miss running adds to it [C]. */
  private static final double NO_ATTEMPT = 0.06;

  private static final double NO_ATTEMPT_WHEN_FRUSTRATED = 0.15;

  /** Part of the misses in which the dog enters one gap late [C]. */
  private static final double LATE_ENTRY = 0.12;

  /** Parts of the faults after the entry that are pop-outs and that are skipped poles [C]. */
  private static final double POPPED_OUT = 0.65;

  private static final double SKIPPED = 0.30;

  /** Mood, in logits, above which a dog is keen and below which it is flat [C]. */
  private static final double KEEN = -0.1;

  private static final double FLAT = -0.7;

  /** Logits by which drive varies from rep to rep [C]. */
  private static final double DRIVE_SPREAD = 0.35;

  /** The gap up to which later gaps cost nothing more. */
  private static final int EARLY_GAPS = 3;

  /** A timing below this a gap is an error: 5.5 gaps a second [C]. */
  private static final double SECONDS_PER_GAP_MIN = 1 / 5.5;

  private static final double SECONDS_PER_DAY = 86_400;

  private final Temper temper;
  private final EntrySkill entry;
  private final HandlingSkill handling;
  private final Skills leadIns;
  private final Skills weaving;
  private final Mood mood;
  private final HalfLife fading;
  private @Nullable Instant now;

  /** A dog before its first rep. */
  public SimulatedDog(Temper temper) {
    this(
        temper,
        new EntrySkill(temper.entry()),
        new HandlingSkill(temper.handling()),
        startOfLeadIns(temper.leadIns()),
        new Skills(
            new double[] {temper.weaving().start()}, new double[] {temper.weaving().ceiling()}),
        new Mood(temper.attention()),
        null);
  }

  private SimulatedDog(
      Temper temper,
      EntrySkill entry,
      HandlingSkill handling,
      Skills leadIns,
      Skills weaving,
      Mood mood,
      @Nullable Instant now) {
    this.temper = temper;
    this.entry = entry;
    this.handling = handling;
    this.leadIns = leadIns;
    this.weaving = weaving;
    this.mood = mood;
    this.fading = new HalfLife(temper.memory().halfLifeDays());
    this.now = now;
  }

  private static Skills startOfLeadIns(Temper.LeadIns temper) {
    double[] start = new double[LeadIn.values().length];
    for (LeadIn leadIn : LeadIn.values()) {
      start[leadIn.ordinal()] =
          switch (leadIn) {
            case NONE -> 0;
            case JUMP -> -temper.jump();
            case TUNNEL -> -temper.tunnel();
          };
    }
    return new Skills(start, new double[start.length]);
  }

  /** Its twin, as it stands: what happens to one does not touch the other. */
  public SimulatedDog copy() {
    return new SimulatedDog(
        temper, entry.copy(), handling.copy(), leadIns.copy(), weaving.copy(), mood.copy(), now);
  }

  /** Its twin whose skills stay as they stand, whatever it runs and however long it rests. */
  public SimulatedDog frozen() {
    Temper still = temper.frozen();
    return new SimulatedDog(
        still,
        entry.of(still.entry()),
        handling.of(still.handling()),
        leadIns.copy(),
        weaving.copy(),
        new Mood(still.attention()),
        now);
  }

  /** What kind of learner it is. */
  public Temper temper() {
    return temper;
  }

  /**
   * Time passes without a rep.
   *
   * @throws IllegalArgumentException when the dog has lived further than that already
   */
  public void restUntil(Instant time) {
    if (now != null) {
      if (time.isBefore(now)) {
        throw new IllegalArgumentException("the dog has lived until " + now + ": " + time);
      }
      double seconds = Duration.between(now, time).toMillis() / 1_000.0;
      double left = fading.left(seconds / SECONDS_PER_DAY);
      entry.fade(left, temper.memory());
      handling.fade(left, temper.memory());
      leadIns.fade(left, temper.memory());
      weaving.fade(left, temper.memory());
      mood.pass(seconds);
    }
    now = time;
  }

  /**
   * The dog runs a rep, and learns by it. Draws six numbers, whatever comes of it, so that dogs
   * that run different plans can be given the same luck.
   *
   * @param time not before any time that it was given earlier
   */
  public Attempt attempt(Task task, Instant time, RandomGenerator random) {
    restUntil(time);
    double luckOfEntry = random.nextDouble();
    double kindOfMiss = random.nextDouble();
    double luckOfGaps = random.nextDouble();
    double kindOfFault = random.nextDouble();
    double keenness = random.nextGaussian();
    double speed = random.nextGaussian();

    double ease = ease(task) + mood.logit();
    double chance = Logit.chance(entry.at(task.angle()) + ease);
    int drive = drive(mood.logit() + DRIVE_SPREAD * keenness);
    if (luckOfEntry >= chance) {
      return missed(task, chance, kindOfMiss, drive);
    }
    double through = chanceThrough(task);
    int fault = luckOfGaps < through ? 0 : firstFault(task, luckOfGaps);
    learnEntry(task, chance, 1);
    learnWeaving(task, through, fault == 0);
    mood.ran(fault == 0);
    if (fault == 0) {
      return new Attempt(Outcome.CLEAN, null, drive, seconds(task, speed));
    }
    return new Attempt(faultOf(kindOfFault), fault, drive, null);
  }

  /**
   * The dog runs a rep whose outcome is known, and learns by it as if it had come to that itself.
   * Draws nothing. Pay it afterwards like any other rep.
   *
   * @param outcome not void, which says nothing of a dog
   * @param entryMade whether the entry was made
   * @param time not before any time that it was given earlier
   * @return what was to be expected of it, in the mood it was in
   */
  public Expected observed(Task task, Outcome outcome, boolean entryMade, Instant time) {
    if (outcome == Outcome.VOID) {
      throw new IllegalArgumentException("a void rep says nothing of a dog");
    }
    restUntil(time);
    double ease = ease(task) + mood.logit();
    double chance = Logit.chance(entry.at(task.angle()) + ease);
    double through = chanceThrough(task);
    boolean clean = outcome == Outcome.CLEAN;
    if (entryMade) {
      learnEntry(task, chance, 1);
      learnWeaving(task, through, clean);
    } else if (outcome != Outcome.NO_ATTEMPT) {
      learnEntry(task, chance, temper.practice().missTeaches());
    }
    mood.ran(clean);
    return new Expected(chance, through);
  }

  /**
   * What the last rep was paid with, pieces of food and throws of a toy taken together; call it at
   * most once a rep, after the rep.
   *
   * @param pieces 0 or more
   */
  public void rewarded(int pieces) {
    mood.rewarded(pieces);
  }

  /** The chance that the entry is made, for a dog that is fresh, as its skills stand. */
  public double chanceOfEntry(Task task) {
    return Logit.chance(entry.at(task.angle()) + ease(task));
  }

  /** The chance of a rep without fault, for a dog that is fresh, as its skills stand. */
  public double chanceOfClean(Task task) {
    return chanceOfEntry(task) * chanceThrough(task);
  }

  /**
   * The size of angle, in degrees, at which a fresh dog's chance of making the entry has fallen to
   * a level: 0 where it is that low straight on, nothing where it is above it at every angle.
   *
   * @param side {@code POLE} or {@code GAP}
   * @param level strictly between 0 and 1
   * @param under what is run; its angle does not matter
   */
  public OptionalDouble trueThreshold(EntrySide side, double level, Task under) {
    return entry.fallsTo(Logit.of(level) - ease(under), side);
  }

  private double ease(Task task) {
    double help = task.help() == Help.NONE ? 0 : HELP;
    double wrap = task.backChainStep() == BackChainStep.WRAP ? WRAP : 0;
    return handling.at(task.manoeuvre(), task.dogSide())
        + leadIns.at(task.leadIn().ordinal())
        + help
        + wrap;
  }

  private Attempt missed(Task task, double chance, double kind, int drive) {
    double refuses = Math.min(0.5, NO_ATTEMPT + NO_ATTEMPT_WHEN_FRUSTRATED * mood.frustration());
    mood.ran(false);
    if (kind < refuses) {
      return new Attempt(Outcome.NO_ATTEMPT, null, 1, null);
    }
    learnEntry(task, chance, temper.practice().missTeaches());
    // What is left of the misses is shared out anew.
    if ((kind - refuses) / (1 - refuses) < LATE_ENTRY) {
      return new Attempt(Outcome.SKIPPED_POLE, 1, drive, null);
    }
    return new Attempt(Outcome.MISSED_ENTRY, null, drive, null);
  }

  private void learnEntry(Task task, double chance, double teaches) {
    double strength = temper.practice().atChance(chance) * teaches * helped(task);
    entry.practise(task.angle(), strength, temper.memory());
    handling.practise(task.manoeuvre(), task.dogSide(), strength, temper.memory());
    practise(leadIns, task.leadIn().ordinal(), temper.leadIns().rate() * strength);
  }

  private void learnWeaving(Task task, double chanceThrough, boolean through) {
    double strength =
        temper.practice().atChance(chanceThrough)
            * (through ? 1 : temper.practice().missTeaches())
            * helped(task);
    practise(weaving, 0, temper.weaving().rate() * strength);
  }

  private void practise(Skills skills, int place, double share) {
    skills.practise(place, share, skills.discovery(place, share), temper.memory());
  }

  private double helped(Task task) {
    return task.help() == Help.NONE ? 1 : temper.practice().helpedTeaches();
  }

  /** The chance of passing every gap behind the entry. */
  private double chanceThrough(Task task) {
    double chance = 1;
    for (int gap = 2; gap < task.poles(); gap++) {
      chance *= chanceOfGap(task, gap);
    }
    return chance;
  }

  /** Gap 1 is the entry's. */
  private double chanceOfGap(Task task, int gap) {
    double help = task.help() == Help.NONE ? 0 : HELP;
    double late = temper.weaving().laterGap() * Math.max(0, gap - EARLY_GAPS);
    return Logit.chance(weaving.at(0) - late + help);
  }

  /** The pole behind the first gap that is not passed; 0 when all are. */
  private int firstFault(Task task, double luck) {
    double still = 1;
    for (int gap = 2; gap < task.poles(); gap++) {
      still *= chanceOfGap(task, gap);
      if (luck >= still) {
        return gap + 1;
      }
    }
    return 0;
  }

  private static Outcome faultOf(double kind) {
    if (kind < POPPED_OUT) {
      return Outcome.POPPED_OUT;
    }
    return kind < POPPED_OUT + SKIPPED ? Outcome.SKIPPED_POLE : Outcome.BACK_WEAVE;
  }

  private static int drive(double logit) {
    if (logit > KEEN) {
      return 3;
    }
    return logit > FLAT ? 2 : 1;
  }

  private double seconds(Task task, double luck) {
    double novice = temper.pace().noviceSlower() * (1 - weaving.shareOfTheWay(0));
    double perGap =
        temper.pace().secondsPerGap()
            * (1 + novice)
            * StrictMath.exp(temper.pace().spread() * luck);
    return Math.max(SECONDS_PER_GAP_MIN, perGap) * (task.poles() - 1);
  }
}
