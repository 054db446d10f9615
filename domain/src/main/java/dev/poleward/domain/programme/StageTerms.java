package dev.poleward.domain.programme;

/**
 * How a stage is gone through.
 *
 * @param toleranceDegrees degrees by which a rep may lie beside a rung and still belong to it, 0.5
 *     to 15
 */
public record StageTerms(
    StageKind kind,
    StageOrder order,
    double toleranceDegrees,
    MovingOnRule rule,
    RewardLadder rewardLadder) {

  /** Degrees; where a document does not say [C]. */
  public static final double TOLERANCE_DEGREES_USUAL = 5;
}
