package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.judgement.FadeStage;
import dev.poleward.domain.judgement.RewardFade;
import dev.poleward.domain.judgement.RewardMonth;
import dev.poleward.domain.judgement.ShareChange;
import dev.poleward.domain.judgement.StageRewards;
import dev.poleward.domain.mastery.Confidence;
import dev.poleward.domain.mastery.Proportion;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.programme.RewardStep;
import dev.poleward.service.codec.Writing;
import dev.poleward.service.render.FadeAdviceWords;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** How rewards faded, as it is shown. */
final class RewardFadeShape {

  /** Of each stage so many of the last stays on a step are shown. */
  private static final int STAYS_MAX = 50;

  private RewardFadeShape() {}

  static ObjectNode of(String dog, LocalDay day, Programme programme, List<StageRewards> stages) {
    return new Writing()
        .put("dog", dog)
        .putPrinted("agedTo", day.date())
        .put("programme", DrillShape.of(programme))
        .putObjects("stages", stages, stage -> stage(stage, programme, day))
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
        .put("text", FadeAdviceWords.of(stage.fade(), programme))
        .put("judgedBy", judgedBy(stage.fade()))
        .put("nextStep", stage.nextStep())
        .putObjects("stays", stays.subList(omitted, stays.size()), stay -> stay(stage, stay))
        .put("omitted", omitted)
        .putObjects("shared", List.copyOf(stage.shared().entrySet()), RewardFadeShape::shared)
        .putObjects("months", RewardMonth.of(stage.reps(), day.zone()), RewardFadeShape::month)
        .done();
  }

  private static ObjectNode step(RewardStep step) {
    return new Writing().put("name", step.name()).put("rewardsEach", step.rewardsEach()).done();
  }

  private static ObjectNode stay(StageRewards stage, FadeStage stay) {
    return share(stay.clean())
        .put("step", stay.step())
        .putPrinted("since", stage.rep(stay.from()).moment().time())
        .put("change", ChangeShape.of(stay.change()))
        .put("held", stay.held())
        .done();
  }

  /** The reps that the advice rests on; null before the first. */
  private static @Nullable ObjectNode judgedBy(RewardFade fade) {
    Proportion lately = fade.lately();
    if (lately.of() == 0) {
      return null;
    }
    Writing shape = share(lately);
    Proportion richer = fade.richer();
    if (richer != null) {
      shape
          .put("richer", share(richer).done())
          .put(
              "change",
              ChangeShape.of(ShareChange.between(richer, lately, Confidence.OF_95_PERCENT)));
    }
    return shape.done();
  }

  private static Writing share(Proportion clean) {
    return new Writing()
        .put("reps", (long) clean.of())
        .put("clean", (long) clean.made())
        .put("cleanShare", ShareShape.of(clean.wilson(Confidence.OF_95_PERCENT)));
  }

  private static ObjectNode shared(Map.Entry<String, Integer> with) {
    return new Writing().put("stage", with.getKey()).put("reps", with.getValue()).done();
  }

  private static ObjectNode month(RewardMonth month) {
    return new Writing()
        .putPrinted("month", month.month())
        .put("reps", month.reps())
        .put("foodEach", (double) month.food() / month.reps())
        .put("toysEach", (double) month.toys() / month.reps())
        .done();
  }
}
