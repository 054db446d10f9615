package dev.poleward.domain.judgement;

import dev.poleward.domain.mastery.Confidence;
import dev.poleward.domain.mastery.Estimate;
import dev.poleward.domain.mastery.Proportion;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How rewards faded, whether success held after each step, and what to do next.
 *
 * @param stages stays on a step of the ladder, in their order
 */
public record RewardFade(List<FadeStage> stages, FadeAdvice advice, FadeReason reason) {

  /** Reps on a step before it is judged [C]. */
  public static final int REPS_MIN = 8;

  /** So many of the last reps on a step are looked at: it may have held at first [C]. */
  public static final int REPS_MAX = 20;

  /** Keeps the stages from changing. */
  public RewardFade {
    stages = List.copyOf(stages);
  }

  /**
   * Reads the reps of one drill, rung or stage.
   *
   * @param reps ascending (time, id), without void and helped ones
   * @param steps of the ladder, from 1
   * @param aim share of clean reps at which the ladder is gone down, above 0 and below 1
   * @param floor share below which it is gone up, below {@code aim}
   */
  public static RewardFade of(List<RewardedRep> reps, int steps, double aim, double floor) {
    List<FadeStage> stages = stages(reps);
    if (stages.isEmpty()) {
      return new RewardFade(stages, FadeAdvice.HOLD, FadeReason.NO_REPS);
    }
    FadeStage now = stages.getLast();
    List<RewardedRep> lately =
        reps.subList(Math.max(now.from(), reps.size() - REPS_MAX), reps.size());
    FadeReason reason = reason(lately, richerBefore(reps, stages), aim, floor);
    return switch (reason) {
      case CLEAN_AS_AIMED ->
          now.step() >= steps - 1
              ? new RewardFade(stages, FadeAdvice.HOLD, FadeReason.LAST_STEP)
              : new RewardFade(stages, FadeAdvice.FADE, reason);
      case FELL_SINCE_FADING, BELOW_FLOOR ->
          now.step() == 0
              ? new RewardFade(stages, FadeAdvice.HOLD, FadeReason.FIRST_STEP)
              : new RewardFade(stages, FadeAdvice.RAISE, reason);
      case NO_REPS, TOO_FEW_REPS, BELOW_AIM, LAST_STEP, FIRST_STEP ->
          new RewardFade(stages, FadeAdvice.HOLD, reason);
    };
  }

  private static FadeReason reason(
      List<RewardedRep> lately, Optional<Proportion> richer, double aim, double floor) {
    Proportion clean = clean(lately);
    if (richer.isPresent()
        && ShareChange.between(richer.get(), clean, Confidence.OF_95_PERCENT).upper() < 0) {
      return FadeReason.FELL_SINCE_FADING;
    }
    // Below it even if it was clean from here to the eighth rep: then there is no need to wait.
    double reps = Math.max(REPS_MIN, lately.size());
    if ((reps - clean.missed()) / reps < floor) {
      return FadeReason.BELOW_FLOOR;
    }
    if (lately.size() < REPS_MIN) {
      return FadeReason.TOO_FEW_REPS;
    }
    return clean.share() >= aim ? FadeReason.CLEAN_AS_AIMED : FadeReason.BELOW_AIM;
  }

  /** The last reps of the stay before this one, where that was on a richer step. */
  private static Optional<Proportion> richerBefore(List<RewardedRep> reps, List<FadeStage> stages) {
    if (stages.size() < 2) {
      return Optional.empty();
    }
    FadeStage now = stages.getLast();
    FadeStage before = stages.get(stages.size() - 2);
    return before.step() < now.step()
        ? Optional.of(
            clean(reps.subList(Math.max(before.from(), now.from() - REPS_MAX), now.from())))
        : Optional.empty();
  }

  private static List<FadeStage> stages(List<RewardedRep> reps) {
    List<FadeStage> stages = new ArrayList<>();
    int from = 0;
    for (int next = 1; next <= reps.size(); next++) {
      if (next == reps.size() || reps.get(next).step() != reps.get(from).step()) {
        Proportion clean = clean(reps.subList(from, next));
        Estimate change =
            stages.isEmpty()
                ? null
                : ShareChange.between(stages.getLast().clean(), clean, Confidence.OF_95_PERCENT);
        stages.add(new FadeStage(reps.get(from).step(), from, clean, change));
        from = next;
      }
    }
    return stages;
  }

  private static Proportion clean(List<RewardedRep> reps) {
    long clean = reps.stream().filter(RewardedRep::clean).count();
    return new Proportion(clean, reps.size() - clean);
  }
}
