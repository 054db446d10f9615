package dev.poleward.service.render;

import dev.poleward.domain.judgement.RewardFade;
import dev.poleward.domain.programme.Programme;

/** What to do about rewards, and why. */
public final class FadeAdviceWords {

  private FadeAdviceWords() {}

  /** The reason for the advice, in a sentence. */
  public static String of(RewardFade fade, Programme programme) {
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
