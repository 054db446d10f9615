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
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/**
 * How many of its next reps of a drill a dog can be expected to run clean: what it did lately, put
 * into a {@link CleanModel} of the angle on either side, the lead-in, the handling, the number of
 * gaps, and how much of each it had {@link Practice practised} by then; a drill may lie a little
 * beside the model, as its own reps show. With no reps at all it is what is expected of any dog.
 * Remembers what it told, which is what it would tell again. Safe for use by many threads.
 *
 * <p>Marks: all constants are common practice [C], set so that simulated dogs do what is expected
 * of them ({@code PlansAgainstFixedOrder}).
 */
public final class CleanForecast implements ExpectedClean {

  /** So many of the latest reps are looked at. */
  static final int REPS_MAX = 1_000;

  /** Days before the dog's last rep after which a rep counts half: it has learned since. */
  static final double HALF_LIFE_DAYS = 30;

  /** So many reps, one after the other, count as of one age. */
  private static final int REPS_ALIKE = 10;

  /** Logits by which single drills lie beside the model. */
  static final double DRILLS_DIFFER = 0.1;

  private static final int STEPS = 12;

  /** Logits lost each time the days since the last rep, and one, grow e-fold, after the first. */
  private static final double FADING = 0.15;

  private static final double DAYS_FRESH = 4;
  private static final double SECONDS_A_DAY = 86_400;

  /** What was told of more drills is computed anew. */
  private static final int DRILLS_HELD_MAX = 5_000;

  /** Beyond these nothing is expected of any dog. */
  private static final double SHARE_MIN = 0.01;

  private record Cell(
      int poles,
      LeadIn leadIn,
      @Nullable BackChainStep step,
      EntryAngle angle,
      Manoeuvre manoeuvre,
      @Nullable DogSide dogSide) {

    double[] traits(Practice practice) {
      return Traits.of(poles, leadIn, step, angle, manoeuvre, dogSide, practice);
    }
  }

  /** Weighted reps that were run at about one time, and what the dog brought to them then. */
  private static final class Seen {

    private final double[] traits;
    private double clean;
    private double missed;

    Seen(double[] traits) {
      this.traits = traits;
    }

    void add(boolean isClean, double weight) {
      clean += isClean ? weight : 0;
      missed += isClean ? 0 : weight;
    }

    double reps() {
      return clean + missed;
    }
  }

  private final CleanModel model;
  private final Map<Cell, Map<Integer, Seen>> seen;
  private final Practice practice;
  private final Reach reach;
  private final double faded;

  /** A planner asks for the same drills again and again. */
  private final Map<Drill, Estimate> told = new ConcurrentHashMap<>();

  private CleanForecast(
      CleanModel model,
      Map<Cell, Map<Integer, Seen>> seen,
      Practice practice,
      Reach reach,
      double faded) {
    this.model = model;
    this.seen = seen;
    this.practice = practice;
    this.reach = reach;
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
    Practice practice = new Practice();
    Reach reach = new Reach();
    telling.subList(0, telling.size() - latest.size()).forEach(rep -> learn(practice, reach, rep));
    if (latest.isEmpty()) {
      return new CleanForecast(CleanModel.OF_ANY_DOG, seen, practice, reach, 0);
    }
    Instant last = latest.getLast().moment().time();
    int since = latest.size();
    for (PlacedRep rep : latest) {
      since--;
      Cell cell = cell(rep);
      if (cell != null) {
        double weight = StrictMath.pow(0.5, days(rep.moment().time(), last) / HALF_LIFE_DAYS);
        int age = since / REPS_ALIKE;
        seen.computeIfAbsent(cell, _ -> new TreeMap<>())
            .computeIfAbsent(age, _ -> new Seen(Traits.aged(cell.traits(practice), repsSince(age))))
            .add(rep.outcome() == Outcome.CLEAN, weight);
        learn(practice, reach, rep);
      }
    }
    List<CleanModel.Group> groups = new ArrayList<>();
    seen.values().forEach(ages -> addGroups(groups, ages.values()));
    return new CleanForecast(
        CleanModel.fitted(groups), seen, practice, reach, faded(days(last, agedTo)));
  }

  private static void learn(Practice practice, Reach reach, PlacedRep rep) {
    Cell cell = cell(rep);
    if (cell != null) {
      boolean isClean = rep.outcome() == Outcome.CLEAN;
      practice.ran(cell.angle, cell.manoeuvre, cell.leadIn, isClean);
      if (isClean) {
        reach.ranClean(cell.poles, cell.leadIn, cell.step, cell.angle);
      }
    }
  }

  /**
   * Many reps of one drill say less of the others than as many of several: drills differ. (The
   * weight of a share with a variance between drills, in logits, at a share of 0.8.)
   */
  private static void addGroups(List<CleanModel.Group> groups, Collection<Seen> ages) {
    double reps = ages.stream().mapToDouble(Seen::reps).sum();
    double weight = 1 / (1 + reps * 0.8 * 0.2 * DRILLS_DIFFER * DRILLS_DIFFER);
    for (Seen of : ages) {
      groups.add(new CleanModel.Group(of.traits, weight * of.clean, weight * of.missed));
    }
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

  /** Degrees up to which the drill may be laid out for a dog that has run what it has. */
  double reach(Drill drill) {
    return reach.of(drill);
  }

  /** Whether a drill lies within them. */
  boolean isWithinReach(Drill drill) {
    return drill.rung().size() <= reach(drill);
  }

  /** Whether it lies no more than so many degrees farther out than the dog was clean there. */
  boolean wasClean(Drill drill, double tolerance) {
    return reach.holds(drill, tolerance);
  }

  /** Whether the dog has ever run anything so handled. */
  boolean hasMet(Manoeuvre manoeuvre) {
    return practice.with(manoeuvre) > 0;
  }

  /** Expected share of clean reps with 95% limits. */
  public Estimate expected(Drill drill) {
    Estimate known = told.get(drill);
    if (known == null) {
      known = computed(drill);
      if (told.size() < DRILLS_HELD_MAX) {
        told.put(drill, known);
      }
    }
    return known;
  }

  private Estimate computed(Drill drill) {
    Cell cell = cell(drill, drill.handling().dogSide());
    double[] traits = cell.traits(practice);
    double fresh = model.logit(traits);
    double expected = fresh - faded;
    double ofModel = model.variance(traits);
    double variance = ofModel + DRILLS_DIFFER * DRILLS_DIFFER;
    List<Seen> own = List.copyOf(seen.getOrDefault(cell, Map.of()).values());
    double[] harder = own.stream().mapToDouble(each -> model.logit(each.traits) - fresh).toArray();
    double logit = expected;
    double precision = 1 / variance;
    for (int step = 0; step < STEPS; step++) {
      double slope = (expected - logit) / variance;
      precision = 1 / variance;
      for (int i = 0; i < harder.length; i++) {
        Seen each = own.get(i);
        double share = CleanModel.chance(logit + harder[i]);
        slope += each.clean - each.reps() * share;
        precision += each.reps() * share * (1 - share);
      }
      logit += Math.max(-1, Math.min(1, slope / precision));
    }
    // The model has seen the drill's own reps already: they only tell how far it lies beside it.
    double beside = 1 / (precision - 1 / variance + 1 / (DRILLS_DIFFER * DRILLS_DIFFER));
    double half = Confidence.OF_95_PERCENT.z() * Math.sqrt(ofModel + beside);
    double share = bounded(CleanModel.chance(logit));
    return new Estimate(
        share,
        Math.min(share, CleanModel.chance(logit - half)),
        Math.max(share, CleanModel.chance(logit + half)));
  }

  private static double bounded(double share) {
    return Math.max(SHARE_MIN, Math.min(1 - SHARE_MIN, share));
  }
}
