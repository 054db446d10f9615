package dev.poleward.domain.judgement;

/**
 * Reps since the sequential test began or began anew. Their order does not show.
 *
 * @param clean since then
 * @param missed since then
 */
public record SequentialEvidence(SequentialTest test, int clean, int missed) implements Evidence {

  @Override
  public SequentialEvidence with(boolean isClean) {
    return switch (decision()) {
      case MOVE_ON -> this;
      case HOLD -> test.begun().counting(isClean);
      case UNDECIDED -> counting(isClean);
    };
  }

  private SequentialEvidence counting(boolean isClean) {
    return isClean
        ? new SequentialEvidence(test, clean + 1, missed)
        : new SequentialEvidence(test, clean, missed + 1);
  }

  /** The log of how much likelier the reps are when mastered than when not yet. */
  public double balance() {
    return test.balance(clean, missed);
  }

  @Override
  public Decision decision() {
    return test.at(balance());
  }

  @Override
  public int cleanRepsToDecide() {
    // After a hold the next rep starts from nothing.
    return test.cleanRepsFrom(decision() == Decision.HOLD ? 0 : balance());
  }
}
