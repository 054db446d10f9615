package dev.poleward.service.http;

import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.PoolStanding;
import dev.poleward.domain.judgement.RungJudgement;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.planning.Limits;
import dev.poleward.domain.planning.PlanBlock;
import dev.poleward.domain.planning.Planner;
import dev.poleward.domain.planning.SessionPlan;
import dev.poleward.domain.programme.DrillOfStage;
import dev.poleward.domain.programme.Rung;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Why a plan is as it is, in sentences. */
final class PlanWords {

  private static final double ROUNDING = 1e-9;

  private final DogStanding dog;

  PlanWords(DogStanding dog) {
    this.dog = dog;
  }

  /**
   * Why there is less in a plan than was asked for, and that it is below the programme's floor
   * where it is; empty where there is nothing to tell.
   */
  Optional<String> ofWhole(SessionPlan plan, Limits limits, boolean mayTrain) {
    if (!mayTrain) {
      return Optional.of("The dog is not to train now: the notes say why.");
    }
    if (plan.blocks().isEmpty()) {
      return Optional.of(
          "Nothing that the dog can be asked for can be laid out with what is at hand, or the day"
              + " allows none of it.");
    }
    String text =
        Stream.of(less(plan, limits), belowFloor(plan))
            .flatMap(Optional::stream)
            .collect(Collectors.joining(" "));
    return text.isEmpty() ? Optional.empty() : Optional.of(text);
  }

  private Optional<String> less(SessionPlan plan, Limits limits) {
    String reps = reps(plan.reps(), limits.reps());
    if (plan.blocks().stream().anyMatch(block -> block.purpose() == PlanBlock.Purpose.KEEP)) {
      return Optional.of(
          "Nothing new has its turn with what is at hand today: what is solid is kept so, in "
              + reps
              + ".");
    }
    return plan.reps() < limits.reps()
        ? Optional.of("In all %s: %s.".formatted(reps, whyNoMore(plan, limits)))
        : Optional.empty();
  }

  private String whyNoMore(SessionPlan plan, Limits limits) {
    if (limits.gaps() - plan.gaps() < plan.poles() - 1) {
      return "the day allows no more gaps";
    }
    if (plan.reps(PlanBlock.Purpose.WORK) >= Planner.LESSON_REPS_MAX) {
      return "more of what is to be learned would teach little in one session";
    }
    return isBelowFloor(plan)
        ? "more of it would mostly fail"
        : "nothing else has its turn until this is through";
  }

  /** Nobody keeps a floor with a dog that knows nothing yet; but it is said. */
  private Optional<String> belowFloor(SessionPlan plan) {
    return isBelowFloor(plan)
        ? Optional.of(
            "About %s can be expected clean, less than the programme's floor of %s, for nothing that goes better is known yet: help the dog, and stop after two misses running."
                .formatted(percent(plan.expectedClean()), percent(dog.programme().cleanFloor())))
        : Optional.empty();
  }

  private boolean isBelowFloor(SessionPlan plan) {
    return plan.expectedClean() < dog.programme().cleanFloor() - ROUNDING;
  }

  private static String reps(int planned, int asked) {
    return planned < asked
        ? "%d of the %d reps asked for".formatted(planned, asked)
        : planned + (planned == 1 ? " rep" : " reps");
  }

  /** A sentence for each block. */
  List<String> reasons(SessionPlan plan) {
    List<String> reasons = new ArrayList<>();
    for (int i = 0; i < plan.blocks().size(); i++) {
      reasons.add(reason(plan.blocks().get(i), plan.blocks().subList(0, i)));
    }
    return reasons;
  }

  private String reason(PlanBlock block, List<PlanBlock> before) {
    Optional<PoolStanding> rung = rungOf(block.drill());
    return switch (block.purpose()) {
      case WARM_UP -> "Something that goes well, to begin with.";
      case MEND ->
          "Was solid and slips: mend it before anything new"
              + (rung.isEmpty() ? ", from a smaller angle first; " + expected(block) + "." : ".");
      case REFRESH ->
          "Solid, but not practised for long: refresh it"
              + (rung.isEmpty() ? ", from a smaller angle first; " + expected(block) + "." : ".");
      case WORK ->
          rung.filter(pool -> !pool.isBehind())
              .map(pool -> test(pool, block, before))
              .orElseGet(() -> onTheWay(block));
      case PROBE -> "A look ahead, %s; failing it costs nothing.".formatted(expected(block));
      case KEEP -> "Solid: a few reps, so that it stays so.";
      case FINISH -> "Something that goes well, to end with.";
    };
  }

  private String test(PoolStanding rung, PlanBlock block, List<PlanBlock> before) {
    RungJudgement judgement = rung.judgement();
    boolean again =
        before.stream().anyMatch(each -> rungOf(each.drill()).equals(Optional.of(rung)));
    boolean isMissing = judgement.missing().contains(block.drill().drill().handling());
    if (isMissing && before.stream().noneMatch(each -> each.drill().equals(block.drill()))) {
      return "Was not clean here with this handling yet; " + expected(block) + ".";
    }
    return again
        ? "The same rung; " + expected(block) + "."
        : "To pass this rung, %s; %s."
            .formatted(VerdictWords.cleanReps(judgement), expected(block));
  }

  private String onTheWay(PlanBlock block) {
    Optional<PoolStanding> aim = aim(block.drill());
    String to = aim.map(pool -> TrainersWords.entry(pool.pool().rung())).orElse("a larger angle");
    String counts =
        aim.filter(pool -> countsFor(pool, block.drill())).isPresent()
            ? ", so near that it counts there"
            : "";
    return "On the way to %s%s: from here %s.".formatted(to, counts, expected(block));
  }

  private static boolean countsFor(PoolStanding pool, DrillOfStage stone) {
    double missing = pool.pool().rung().size() - stone.drill().rung().size();
    return missing <= pool.stage().terms().toleranceDegrees()
        && pool.pool().drills().stream()
            .anyMatch(drill -> drill.handling().equals(stone.drill().handling()));
  }

  /** The next larger angle of the stage that is left to learn there. */
  private Optional<PoolStanding> aim(DrillOfStage stone) {
    Rung from = stone.drill().rung();
    return dog.pools().stream()
        .filter(pool -> pool.stage().id().equals(stone.stage()) && !pool.isBehind())
        .filter(pool -> Objects.equals(pool.pool().step(), stone.drill().runUp().step()))
        .filter(pool -> isBeyond(pool.pool().rung(), from))
        .min(Comparator.comparing(pool -> pool.pool().rung()));
  }

  private static boolean isBeyond(Rung rung, Rung from) {
    return rung.size() > from.size()
        && (from.side() == EntrySide.BOTH || from.side() == rung.side());
  }

  private static String expected(PlanBlock block) {
    return "about " + percent(block.expected().value()) + " can be expected clean";
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.0f%%", 100 * share);
  }

  /** Empty for what is no drill of the programme. */
  private Optional<PoolStanding> rungOf(DrillOfStage drill) {
    return dog.pools().stream()
        .filter(pool -> pool.stage().id().equals(drill.stage()))
        .filter(pool -> pool.pool().drills().contains(drill.drill()))
        .findFirst();
  }
}
