package dev.poleward.domain.judgement;

import dev.poleward.domain.mastery.Confidence;
import dev.poleward.domain.mastery.Estimate;
import dev.poleward.domain.mastery.Proportion;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How rewards faded, whether success held after each step, and what to do next.
 *
 * @param stages stays on a step of the ladder, in their order
 * @param lately the reps that the advice is judged by, the last of the present stay; of none before
 *     the first
 * @param richer those that they are compared with, the last of a stay on a richer step just before;
 *     null without one
 */
public record RewardFade(
    List<FadeStage> stages,
    FadeAdvice advice,
    FadeReason reason,
    Proportion lately,
    @Nullable Proportion richer) {

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
    List<FadeStage> stages = stages(reps, aim - floor);
    if (stages.isEmpty()) {
      return new RewardFade(
          stages, FadeAdvice.HOLD, FadeReason.NO_REPS, new Proportion(0, 0), null);
    }
    FadeStage now = stages.getLast();
    Proportion lately =
        clean(reps.subList(Math.max(now.from(), reps.size() - REPS_MAX), reps.size()));
    Optional<Proportion> richer = richerBefore(reps, stages);
    FadeReason reason = atTheEnds(reason(lately, richer, aim, floor), now.step(), steps);
    return new RewardFade(stages, advice(reason), reason, lately, richer.orElse(null));
  }

  private static FadeReason atTheEnds(FadeReason reason, int step, int steps) {
    return switch (reason) {
      case CLEAN_AS_AIMED -> step >= steps - 1 ? FadeReason.LAST_STEP : reason;
      case FELL_SINCE_FADING, BELOW_FLOOR -> step == 0 ? FadeReason.FIRST_STEP : reason;
      case NO_REPS, TOO_FEW_REPS, BELOW_AIM, LAST_STEP, FIRST_STEP -> reason;
    };
  }

  private static FadeAdvice advice(FadeReason reason) {
    return switch (reason) {
      case CLEAN_AS_AIMED -> FadeAdvice.FADE;
      case FELL_SINCE_FADING, BELOW_FLOOR -> FadeAdvice.RAISE;
      case NO_REPS, TOO_FEW_REPS, BELOW_AIM, LAST_STEP, FIRST_STEP -> FadeAdvice.HOLD;
    };
  }

  private static FadeReason reason(
      Proportion clean, Optional<Proportion> richer, double aim, double floor) {
    if (richer.isPresent()
        && ShareChange.between(richer.get(), clean, Confidence.OF_95_PERCENT).upper() < 0) {
      return FadeReason.FELL_SINCE_FADING;
    }
    // Below it even if it was clean from here to the eighth rep: then there is no need to wait.
    double reps = Math.max(REPS_MIN, clean.of());
    if ((reps - clean.missed()) / reps < floor) {
      return FadeReason.BELOW_FLOOR;
    }
    if (clean.of() < REPS_MIN) {
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

  /** Success held where a dog at the aim would still be above the floor, as far as can be told. */
  private static List<FadeStage> stages(List<RewardedRep> reps, double small) {
    List<FadeStage> stages = new ArrayList<>();
    int from = 0;
    for (int next = 1; next <= reps.size(); next++) {
      if (next == reps.size() || reps.get(next).step() != reps.get(from).step()) {
        Proportion clean = clean(reps.subList(from, next));
        Estimate change =
            stages.isEmpty()
                ? null
                : ShareChange.between(stages.getLast().clean(), clean, Confidence.OF_95_PERCENT);
        stages.add(
            new FadeStage(
                reps.get(from).step(),
                from,
                clean,
                change,
                change == null ? null : Held.of(change, small)));
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
