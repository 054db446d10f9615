package dev.poleward.domain.outlook;

import dev.poleward.domain.event.AimEvent.TrialRun;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.judgement.ShareChange;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.mastery.Confidence;
import dev.poleward.domain.mastery.Estimate;
import dev.poleward.domain.mastery.Proportion;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.PlacedRep;
import dev.poleward.domain.record.Registry;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Trial runs beside training: does it carry over?
 *
 * @param runs the latest first
 * @param carryOver by number of poles, ascending
 */
public record Trials(List<Run> runs, List<CarryOver> carryOver) {

  /** Days of training before a trial that it is compared with. */
  public static final int DAYS_BEFORE = 90;

  /** Degrees by which a rep in training may differ from a trial's entry. */
  public static final double WITHIN_DEGREES = 15;

  /** Trials below which nothing is said. */
  public static final int RUNS_MIN = 5;

  /** Reps in training below which nothing is said. */
  public static final int REPS_MIN = 10;

  /** By how much a share may be lower in trials and still carry over [C]. */
  public static final double LOSS_MAX = 0.2;

  /** Keeps the lists from changing. */
  public Trials {
    runs = List.copyOf(runs);
    carryOver = List.copyOf(carryOver);
  }

  /**
   * A trial run.
   *
   * @param reps in training that it is compared with
   * @param clean how many of them were clean
   */
  public record Run(Fact<TrialRun> run, int reps, int clean) {}

  /**
   * All trials on one number of poles; void ones are left out.
   *
   * @param reps in training that any of them is compared with, each once
   * @param change the share in trials less the share in training; null when either is of none
   */
  public record CarryOver(
      int poles,
      int runs,
      int cleanRuns,
      int reps,
      int cleanReps,
      @Nullable Estimate change,
      Verdict verdict) {}

  /** Whether it carries over. */
  public enum Verdict {
    /** Too few trials, or too few reps in training like them. */
    NOT_ENOUGH_YET,
    /** Surely less clean in trials. */
    FALLS_SHORT,
    /** Surely not much less clean in trials. */
    CARRIES_OVER,
    /** Enough of both, and it may be either. */
    UNDECIDED
  }

  /**
   * The trials of a dog.
   *
   * @param reps of the dog, ascending by (time, id)
   */
  public static Trials of(String dog, Registry registry, List<PlacedRep> reps) {
    List<Run> runs = new ArrayList<>();
    Map<Integer, Group> groups = new TreeMap<>();
    for (Fact<TrialRun> trial : registry.aims(dog, TrialRun.class)) {
      List<PlacedRep> like = reps.stream().filter(rep -> isLike(trial, rep)).toList();
      runs.add(new Run(trial, like.size(), (int) like.stream().filter(Trials::isClean).count()));
      if (trial.event().outcome() != Outcome.VOID) {
        groups.computeIfAbsent(trial.event().poles(), _ -> new Group()).add(trial, like);
      }
    }
    List<CarryOver> carryOver = new ArrayList<>();
    groups.forEach((poles, group) -> carryOver.add(group.carryOver(poles)));
    return new Trials(runs.reversed(), carryOver);
  }

  private static boolean isLike(Fact<TrialRun> trial, PlacedRep rep) {
    Instant time = rep.moment().time();
    return rep.outcome() != Outcome.VOID
        && !rep.isHelped()
        && rep.setup() != null
        && rep.setup().poles() == trial.event().poles()
        && time.isBefore(trial.time())
        && !time.isBefore(trial.time().minus(Duration.ofDays(DAYS_BEFORE)))
        && isNear(trial.event().angle(), rep.angle());
  }

  private static boolean isNear(@Nullable Double inTrial, @Nullable EntryAngle inTraining) {
    if (inTrial == null) {
      return true;
    }
    if (inTraining == null) {
      return false;
    }
    boolean acrossSides = inTrial * inTraining.degrees() < 0;
    return !acrossSides && Math.abs(inTrial - inTraining.degrees()) <= WITHIN_DEGREES;
  }

  private static boolean isClean(PlacedRep rep) {
    return rep.outcome() == Outcome.CLEAN;
  }

  /** Trials on one number of poles. For one thread. */
  private static final class Group {

    private int runs;
    private int cleanRuns;
    private final Set<PlacedRep> like = new LinkedHashSet<>();

    void add(Fact<TrialRun> trial, List<PlacedRep> reps) {
      runs++;
      cleanRuns += trial.event().outcome() == Outcome.CLEAN ? 1 : 0;
      like.addAll(reps);
    }

    CarryOver carryOver(int poles) {
      int clean = (int) like.stream().filter(Trials::isClean).count();
      Estimate change =
          like.isEmpty()
              ? null
              : ShareChange.between(
                  new Proportion(clean, like.size() - clean),
                  new Proportion(cleanRuns, runs - cleanRuns),
                  Confidence.OF_95_PERCENT);
      return new CarryOver(poles, runs, cleanRuns, like.size(), clean, change, verdict(change));
    }

    private Verdict verdict(@Nullable Estimate change) {
      if (change == null || runs < RUNS_MIN || like.size() < REPS_MIN) {
        return Verdict.NOT_ENOUGH_YET;
      }
      if (change.upper() < 0) {
        return Verdict.FALLS_SHORT;
      }
      return change.lower() > -LOSS_MAX ? Verdict.CARRIES_OVER : Verdict.UNDECIDED;
    }
  }
}
