package dev.poleward.domain.planning;

import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.judgement.ExpectedClean;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.layout.Setup;
import dev.poleward.domain.mastery.Confidence;
import dev.poleward.domain.mastery.Estimate;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.RunUp;
import dev.poleward.domain.record.PlacedRep;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * How many of its next reps of a drill a dog can be expected to run clean: what it did lately, put
 * into a {@link CleanModel} of the angle on either side, the lead-in, the handling, the number of
 * gaps, and how far the dog has come since; a drill may lie a little beside the model, as its own
 * reps show. With no reps at all it is what is expected of any dog. Immutable.
 *
 * <p>Marks: all constants are common practice [C], set so that simulated dogs do what is expected
 * of them ({@code PlansAgainstFixedOrder}).
 */
public final class CleanForecast implements ExpectedClean {

  /** So many of the latest reps are looked at. */
  static final int REPS_MAX = 1_000;

  /** Days before the dog's last rep after which a rep counts half: it has learned since. */
  static final double HALF_LIFE_DAYS = 10;

  /** So many reps, one after the other, count as of one age. */
  private static final int REPS_ALIKE = 10;

  /** Logits by which single drills lie beside the model. */
  static final double DRILLS_DIFFER = 0.1;

  private static final int STEPS = 12;

  /** Logits lost each time the days since the last rep, and one, grow e-fold, after the first. */
  private static final double FADING = 0.15;

  private static final double DAYS_FRESH = 4;
  private static final double SECONDS_A_DAY = 86_400;

  /** Beyond these nothing is expected of any dog. */
  private static final double SHARE_MIN = 0.01;

  private record Cell(
      int poles,
      LeadIn leadIn,
      @Nullable BackChainStep step,
      EntryAngle angle,
      Manoeuvre manoeuvre,
      @Nullable DogSide dogSide) {

    double[] traits() {
      return Traits.of(poles, leadIn, step, angle.side(), angle.size(), manoeuvre, dogSide);
    }
  }

  /** Weighted reps. */
  private record Seen(double clean, double missed) {

    Seen with(boolean isClean, double weight) {
      return isClean ? new Seen(clean + weight, missed) : new Seen(clean, missed + weight);
    }

    Seen with(Seen other) {
      return new Seen(clean + other.clean, missed + other.missed);
    }

    double reps() {
      return clean + missed;
    }
  }

  private final CleanModel model;
  private final Map<Cell, Map<Integer, Seen>> seen;
  private final double faded;

  private CleanForecast(CleanModel model, Map<Cell, Map<Integer, Seen>> seen, double faded) {
    this.model = model;
    this.seen = seen;
    this.faded = faded;
  }

  /**
   * Looks at a dog's reps; void, helped and unplaced ones say nothing.
   *
   * @param reps ascending by (time, id)
   * @param agedTo until when days without a rep are counted
   */
  public static CleanForecast of(List<PlacedRep> reps, Instant agedTo) {
    List<PlacedRep> telling = reps.stream().filter(CleanForecast::isTelling).toList();
    List<PlacedRep> latest =
        telling.subList(Math.max(0, telling.size() - REPS_MAX), telling.size());
    Map<Cell, Map<Integer, Seen>> seen = new LinkedHashMap<>();
    if (latest.isEmpty()) {
      return new CleanForecast(CleanModel.OF_ANY_DOG, seen, 0);
    }
    Instant last = latest.getLast().moment().time();
    int since = latest.size();
    for (PlacedRep rep : latest) {
      since--;
      Cell cell = cell(rep);
      if (cell != null) {
        double weight = StrictMath.pow(0.5, days(rep.moment().time(), last) / HALF_LIFE_DAYS);
        seen.computeIfAbsent(cell, _ -> new TreeMap<>())
            .merge(
                since / REPS_ALIKE,
                new Seen(0, 0).with(rep.outcome() == Outcome.CLEAN, weight),
                Seen::with);
      }
    }
    List<CleanModel.Group> groups = new ArrayList<>();
    seen.forEach((cell, ages) -> addGroups(groups, cell, ages));
    return new CleanForecast(CleanModel.fitted(groups), seen, faded(days(last, agedTo)));
  }

  /**
   * Many reps of one drill say less of the others than as many of several: drills differ. (The
   * weight of a share with a variance between drills, in logits, at a share of 0.8.)
   */
  private static void addGroups(List<CleanModel.Group> groups, Cell cell, Map<Integer, Seen> ages) {
    double reps = ages.values().stream().mapToDouble(Seen::reps).sum();
    double weight = 1 / (1 + reps * 0.8 * 0.2 * DRILLS_DIFFER * DRILLS_DIFFER);
    ages.forEach(
        (age, of) ->
            groups.add(
                new CleanModel.Group(
                    Traits.aged(cell.traits(), repsSince(age)),
                    weight * of.clean,
                    weight * of.missed)));
  }

  private static int repsSince(int age) {
    return age * REPS_ALIKE + REPS_ALIKE / 2;
  }

  private static double days(Instant from, Instant to) {
    return Math.max(0, Duration.between(from, to).toSeconds() / SECONDS_A_DAY);
  }

  private static double faded(double daysAway) {
    return daysAway <= DAYS_FRESH ? 0 : FADING * StrictMath.log1p(daysAway - DAYS_FRESH);
  }

  private static boolean isTelling(PlacedRep rep) {
    return rep.outcome() != Outcome.VOID && !rep.isHelped() && rep.setup() != null;
  }

  private static @Nullable Cell cell(PlacedRep rep) {
    Setup setup = rep.setup();
    EntryAngle angle = rep.angle();
    if (setup == null || angle == null) {
      return null;
    }
    RunUp runUp = RunUp.asRun(setup.leadIn(), rep.details());
    return new Cell(
        setup.poles(),
        runUp == null ? LeadIn.JUMP : runUp.leadIn(),
        runUp == null ? BackChainStep.WRAP : runUp.step(),
        angle,
        rep.manoeuvre(),
        rep.details().dogSide());
  }

  private static Cell cell(Drill drill, @Nullable DogSide dogSide) {
    boolean bare = drill.runUp().step() == BackChainStep.POLES_ONLY;
    return new Cell(
        drill.poles(),
        bare ? LeadIn.NONE : drill.runUp().leadIn(),
        bare ? null : drill.runUp().step(),
        drill.rung().angle(),
        drill.handling().manoeuvre(),
        dogSide);
  }

  @Override
  public double share(Drill drill) {
    return expected(drill).value();
  }

  /** Expected share of clean reps with 95% limits. */
  public Estimate expected(Drill drill) {
    Cell cell = cell(drill, drill.handling().dogSide());
    double[] traits = cell.traits();
    double expected = model.logit(traits) - faded;
    double variance = model.variance(traits) + DRILLS_DIFFER * DRILLS_DIFFER;
    Map<Integer, Seen> own = seen.getOrDefault(cell, Map.of());
    double logit = expected;
    double precision = 1 / variance;
    for (int step = 0; step < STEPS; step++) {
      double slope = (expected - logit) / variance;
      precision = 1 / variance;
      for (Map.Entry<Integer, Seen> each : own.entrySet()) {
        double then = logit + model.sinceThen(Traits.age(repsSince(each.getKey())));
        double share = CleanModel.chance(then);
        slope += each.getValue().clean - each.getValue().reps() * share;
        precision += each.getValue().reps() * share * (1 - share);
      }
      logit += Math.max(-1, Math.min(1, slope / precision));
    }
    double half = Confidence.OF_95_PERCENT.z() / Math.sqrt(precision);
    return new Estimate(
        bounded(CleanModel.chance(logit)),
        CleanModel.chance(logit - half),
        CleanModel.chance(logit + half));
  }

  private static double bounded(double share) {
    return Math.max(SHARE_MIN, Math.min(1 - SHARE_MIN, share));
  }
}
