package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.judgement.FadeStage;
import dev.poleward.domain.judgement.RewardFade;
import dev.poleward.domain.judgement.RewardMonth;
import dev.poleward.domain.judgement.StageRewards;
import dev.poleward.domain.mastery.Confidence;
import dev.poleward.domain.mastery.Estimate;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.programme.RewardStep;
import dev.poleward.service.codec.Writing;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** How rewards faded, as it is shown. */
final class RewardFadeShape {

  /** Of each stage so many of the last stays on a step are shown. */
  private static final int STAYS_MAX = 50;

  private RewardFadeShape() {}

  /** Stages that nothing was told of are left out. */
  static ObjectNode of(String dog, LocalDay day, Programme programme, List<StageRewards> stages) {
    return new Writing()
        .put("dog", dog)
        .putPrinted("agedTo", day.date())
        .put("programme", DrillShape.of(programme))
        .putObjects(
            "stages",
            stages.stream().filter(stage -> !stage.rewarded().isEmpty()).toList(),
            stage -> stage(stage, programme, day))
        .done();
  }

  private static ObjectNode stage(StageRewards stage, Programme programme, LocalDay day) {
    List<RewardStep> ladder = stage.stage().terms().rewardLadder().steps();
    List<FadeStage> stays = stage.fade().stages();
    int omitted = Math.max(0, stays.size() - STAYS_MAX);
    return DrillShape.of(stage.stage())
        .putObjects("ladder", ladder, RewardFadeShape::step)
        .put("step", stage.step())
        .put("advice", stage.fade().advice())
        .put("reason", stage.fade().reason())
        .put("text", text(stage.fade(), programme))
        .put("nextStep", stage.nextStep())
        .putObjects("stays", stays.subList(omitted, stays.size()), stay -> stay(stage, stay))
        .put("omitted", omitted)
        .putObjects("months", RewardMonth.of(stage.reps(), day.zone()), RewardFadeShape::month)
        .done();
  }

  private static ObjectNode step(RewardStep step) {
    return new Writing().put("name", step.name()).put("rewardsEach", step.rewardsEach()).done();
  }

  private static ObjectNode stay(StageRewards stage, FadeStage stay) {
    return new Writing()
        .put("step", stay.step())
        .putPrinted("since", stage.rep(stay.from()).moment().time())
        .put("reps", (long) stay.clean().of())
        .put("clean", (long) stay.clean().made())
        .put("cleanShare", ShareShape.of(stay.clean().wilson(Confidence.OF_95_PERCENT)))
        .put("change", ChangeShape.of(stay.change()))
        .put("held", held(stay.change()))
        .done();
  }

  /** Whether success held since the stay before: not when it surely fell. */
  private static @Nullable Boolean held(@Nullable Estimate change) {
    return change == null ? null : change.upper() >= 0;
  }

  private static ObjectNode month(RewardMonth month) {
    return new Writing()
        .putPrinted("month", month.month())
        .put("reps", month.reps())
        .put("foodEach", (double) month.food() / month.reps())
        .put("toysEach", (double) month.toys() / month.reps())
        .done();
  }

  /** The reason for the advice, in a sentence. */
  static String text(RewardFade fade, Programme programme) {
    String aim = Math.round(100 * programme.cleanTarget()) + "%";
    String floor = Math.round(100 * programme.cleanFloor()) + "%";
    return switch (fade.reason()) {
      case NO_REPS -> "Nothing was told of rewards here yet: stay.";
      case TOO_FEW_REPS ->
          "Fewer than %d reps on this step: stay until there are.".formatted(RewardFade.REPS_MIN);
      case CLEAN_AS_AIMED -> "Clean in " + aim + " or more here: go one step down.";
      case BELOW_AIM -> "Clean in less than " + aim + ", yet not below " + floor + ": stay.";
      case FELL_SINCE_FADING ->
          "Surely less often clean than on the richer step before: go one step up again.";
      case BELOW_FLOOR -> "Clean in less than " + floor + " here: go one step up.";
      case LAST_STEP -> "Clean in " + aim + " or more on the last step: nothing is left to fade.";
      case FIRST_STEP -> "Not clean often enough on the richest step: make something else easier.";
    };
  }
}
