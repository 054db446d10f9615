package dev.poleward.domain.judgement;

/**
 * Reps since the sequential test began or began anew.
 *
 * <p>Where the test is through and goes on, because something else keeps the dog here, the balance
 * stays at the upper boundary: clean reps lift it no further, and a miss takes it down by its whole
 * weight. So what was saved up before is no leave to fail at what is left. It says to move on only
 * where Wald's test has said so before, so that its rate of wrong moves holds.
 *
 * @param clean since then
 * @param missed since then
 * @param beyond those of the clean ones that came while the test was through, and lift nothing
 */
public record SequentialEvidence(SequentialTest test, int clean, int missed, int beyond)
    implements Evidence {

  @Override
  public SequentialEvidence with(boolean isClean) {
    return switch (decision()) {
      case MOVE_ON ->
          isClean ? new SequentialEvidence(test, clean + 1, missed, beyond + 1) : counting(false);
      case HOLD -> test.begun().counting(isClean);
      case UNDECIDED -> counting(isClean);
    };
  }

  private SequentialEvidence counting(boolean isClean) {
    return isClean
        ? new SequentialEvidence(test, clean + 1, missed, beyond)
        : new SequentialEvidence(test, clean, missed + 1, beyond);
  }

  /** The log of how much likelier the reps are when mastered than when not yet, held at the top. */
  public double balance() {
    return test.balance(clean - beyond, missed);
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
