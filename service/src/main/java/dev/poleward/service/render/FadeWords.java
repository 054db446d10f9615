package dev.poleward.service.render;

import dev.poleward.domain.judgement.CleanMonth;
import dev.poleward.domain.judgement.RewardMonth;
import dev.poleward.domain.judgement.StageRewards;
import dev.poleward.domain.mastery.Confidence;
import dev.poleward.domain.mastery.Estimate;
import dev.poleward.domain.programme.RewardStep;
import dev.poleward.domain.programme.Stage;
import java.util.ArrayList;
import java.util.List;

/** What the picture of fading rewards says in words. */
final class FadeWords {

  static final String NOTHING =
      "Nothing to show: no rewards were told yet, or the programme in force cannot be read.";

  private final DogRewards of;

  FadeWords(DogRewards of) {
    this.of = of;
  }

  String title() {
    return of.dog().callName() + ": how rewards fade";
  }

  String about() {
    return "How rewards fade, in "
        + PrintableName.of(of.programme().name(), of.programme().id())
        + ", version "
        + of.programme().version()
        + ".";
  }

  String aged() {
    return "As it stands on "
        + of.dog().agedTo()
        + ". Void reps and reps with help are left out. Aim: "
        + aim()
        + " clean; floor: "
        + floor()
        + ".";
  }

  /** The share that is aimed at: {@code 90%}. */
  String aim() {
    return MasteryWords.percent(of.programme().cleanTarget());
  }

  /** The share below which it is too hard. */
  String floor() {
    return MasteryWords.percent(of.programme().cleanFloor());
  }

  static String name(Stage stage) {
    return PrintableName.of(stage.name(), stage.id());
  }

  /** The step that the dog stands on. */
  static String stands(StageRewards stage) {
    int steps = stage.stage().terms().rewardLadder().steps().size();
    return "On step "
        + (stage.step() + 1)
        + " of "
        + steps
        + ": "
        + step(stage, stage.step())
        + ".";
  }

  /** What to do, and why. */
  String advice(StageRewards stage) {
    return FadeAdviceWords.of(stage.fade(), of.programme());
  }

  /** What to go on with. */
  static String goOn(StageRewards stage) {
    return "Go on with step " + (stage.nextStep() + 1) + ": " + step(stage, stage.nextStep()) + ".";
  }

  private static String step(StageRewards stage, int index) {
    RewardStep step = stage.stage().terms().rewardLadder().steps().get(index);
    int each = step.rewardsEach();
    String counted = each + (each == 1 ? " reward" : " rewards") + " a rep";
    return step.name() == null ? counted : PrintableName.of(step.name(), counted) + ", " + counted;
  }

  static String cut() {
    return "The last " + FadeMonths.MONTHS_MAX + " months are shown.";
  }

  /** All of the picture in sentences. */
  String inWords() {
    List<String> sentences = new ArrayList<>();
    sentences.add("Dog " + of.dog().callName() + ".");
    sentences.add(about());
    sentences.add(aged());
    if (of.stages().isEmpty()) {
      sentences.add(NOTHING);
    }
    for (StageRewards stage : of.stages()) {
      add(sentences, stage);
    }
    return String.join(" ", sentences);
  }

  private void add(List<String> sentences, StageRewards rewards) {
    FadeMonths months = FadeMonths.of(rewards, of.zone());
    sentences.add("Stage " + name(rewards.stage()) + ".");
    sentences.add(stands(rewards));
    sentences.add(advice(rewards));
    sentences.add(goOn(rewards));
    sentences.add(ladder(rewards));
    months.rewards().forEach(month -> sentences.add(month(month)));
    months.clean().forEach(month -> sentences.add(month(month)));
    if (months.isCut()) {
      sentences.add(cut());
    }
  }

  private static String ladder(StageRewards stage) {
    List<String> steps = new ArrayList<>();
    for (int index = 0; index < stage.stage().terms().rewardLadder().steps().size(); index++) {
      steps.add((index + 1) + ", " + step(stage, index));
    }
    return "Steps: " + String.join("; ", steps) + ".";
  }

  private static String month(RewardMonth month) {
    return month.month()
        + ": a clean rep earned "
        + MasteryWords.number((double) month.food() / month.reps())
        + " food and "
        + MasteryWords.number((double) month.toys() / month.reps())
        + " toys, over "
        + Counted.of(month.reps(), "rep")
        + ".";
  }

  private static String month(CleanMonth month) {
    Estimate share = month.clean().wilson(Confidence.OF_95_PERCENT);
    return month.month()
        + ": "
        + Math.round(month.clean().made())
        + " of "
        + Counted.of(Math.round(month.clean().of()), "rep")
        + " clean, "
        + whole(share.value())
        + " ("
        + whole(share.lower())
        + " to "
        + whole(share.upper())
        + ").";
  }

  private static String whole(double share) {
    return Math.round(100 * share) + "%";
  }
}
