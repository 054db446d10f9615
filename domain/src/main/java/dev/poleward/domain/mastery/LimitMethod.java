package dev.poleward.domain.mastery;

/** How the limits of a threshold are found. */
public enum LimitMethod {
  /** By the penalised likelihood of each angle as the threshold. */
  PROFILE,
  /** By Fieller's theorem on the ratio of two normal variables (1954). */
  FIELLER,
  /** By the slope of the threshold in the two coefficients: symmetric, never without a limit. */
  DELTA
}
