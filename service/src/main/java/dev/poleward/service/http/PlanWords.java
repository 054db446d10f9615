package dev.poleward.service.http;

import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.PoolStanding;
import dev.poleward.domain.judgement.RungJudgement;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.planning.PlanBlock;
import dev.poleward.domain.planning.SessionPlan;
import dev.poleward.domain.programme.DrillOfStage;
import dev.poleward.domain.programme.Rung;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/** Why a plan is as it is, in sentences. */
final class PlanWords {

  private final DogStanding dog;

  PlanWords(DogStanding dog) {
    this.dog = dog;
  }

  /** Why there is less in a plan than was asked for; empty where all of it is there. */
  static Optional<String> ofWhole(SessionPlan plan, PlanAsked asked, boolean mayTrain) {
    if (!mayTrain) {
      return Optional.of("The dog is not to train now: the notes say why.");
    }
    if (plan.blocks().isEmpty()) {
      return Optional.of(
          "Nothing that the dog can be asked for can be laid out with what is at hand, or the day"
              + " allows none of it.");
    }
    String reps = reps(plan.reps(), asked.reps());
    if (plan.blocks().stream().anyMatch(block -> block.purpose() == PlanBlock.Purpose.KEEP)) {
      return Optional.of(
          "Nothing new has its turn with what is at hand today: what is solid is kept so, in "
              + reps
              + ".");
    }
    return plan.reps() < asked.reps()
        ? Optional.of(
            "In all "
                + reps
                + ": nothing else has its turn, more lessons would teach little, or the day allows no more.")
        : Optional.empty();
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
    String to = aim(block.drill()).map(TrainersWords::entry).orElse("a larger angle");
    return "On the way to %s: from here %s.".formatted(to, expected(block));
  }

  /** The next larger angle of the stage that is left to learn there. */
  private Optional<Rung> aim(DrillOfStage stone) {
    Rung from = stone.drill().rung();
    return dog.pools().stream()
        .filter(pool -> pool.stage().id().equals(stone.stage()) && !pool.isBehind())
        .filter(pool -> Objects.equals(pool.pool().step(), stone.drill().runUp().step()))
        .map(pool -> pool.pool().rung())
        .filter(rung -> from.side() == EntrySide.BOTH || from.side() == rung.side())
        .filter(rung -> rung.size() > from.size())
        .min(Comparator.naturalOrder());
  }

  private static String expected(PlanBlock block) {
    String share = String.format(Locale.ROOT, "%.0f%%", 100 * block.expected().value());
    return "about " + share + " can be expected clean";
  }

  /** Empty for what is no drill of the programme. */
  private Optional<PoolStanding> rungOf(DrillOfStage drill) {
    return dog.pools().stream()
        .filter(pool -> pool.stage().id().equals(drill.stage()))
        .filter(pool -> pool.pool().drills().contains(drill.drill()))
        .findFirst();
  }
}
