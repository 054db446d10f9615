package dev.poleward.domain.judgement;

/** Why rewards are to be faded, held or raised. */
public enum FadeReason {
  /** Not a rep yet. */
  NO_REPS,
  /** Fewer than {@link RewardFade#REPS_MIN} on this step. */
  TOO_FEW_REPS,
  /** Clean at least as often as is aimed at. */
  CLEAN_AS_AIMED,
  /** Between floor and aim. */
  BELOW_AIM,
  /** Surely less often clean than on the richer step before. */
  FELL_SINCE_FADING,
  /** Clean less often than the floor, or sure to be so up to the eighth rep. */
  BELOW_FLOOR,
  /** As little as the ladder knows: nothing is left to fade. */
  LAST_STEP,
  /** As much as the ladder knows: something else must be made easier. */
  FIRST_STEP
}
