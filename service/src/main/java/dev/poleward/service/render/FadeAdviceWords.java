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
    String lately =
        "%d of the last %d reps on this step were clean"
            .formatted(Math.round(fade.lately().made()), Math.round(fade.lately().of()));
    return switch (fade.reason()) {
      case NO_REPS -> "Nothing was told of rewards here yet: stay.";
      case TOO_FEW_REPS ->
          "Fewer than %d reps on this step: stay until there are.".formatted(RewardFade.REPS_MIN);
      case CLEAN_AS_AIMED -> lately + ", " + aim + " or more: go one step down.";
      case BELOW_AIM -> lately + ", less than " + aim + " but not below " + floor + ": stay.";
      case FELL_SINCE_FADING ->
          lately + ", surely less often than on the richer step before: go one step up again.";
      case BELOW_FLOOR -> lately + ", too few for " + floor + ": go one step up.";
      case LAST_STEP ->
          lately + ", " + aim + " or more, and it is the last: nothing is left to fade.";
      case FIRST_STEP ->
          lately + ", not often enough, and it is the richest: make something else easier.";
    };
  }
}
