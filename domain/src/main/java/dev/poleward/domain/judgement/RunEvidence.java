package dev.poleward.domain.judgement;

/**
 * The run that a {@link RunOfClean} has counted.
 *
 * @param clean in a row, up to the last rep
 * @param missed 1 when the last rep was a miss, else 0
 */
public record RunEvidence(RunOfClean test, int clean, int missed) implements Evidence {

  @Override
  public RunEvidence with(boolean isClean) {
    return isClean ? new RunEvidence(test, clean + 1, 0) : new RunEvidence(test, 0, 1);
  }

  @Override
  public Decision decision() {
    if (clean >= test.length()) {
      return Decision.MOVE_ON;
    }
    return missed > 0 ? Decision.HOLD : Decision.UNDECIDED;
  }

  @Override
  public int cleanRepsToDecide() {
    return Math.max(0, test.length() - clean);
  }
}
