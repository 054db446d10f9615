package dev.poleward.domain.judgement;

/**
 * Wald's sequential test of "mastered" against "not yet" (Wald 1945, Annals of Mathematical
 * Statistics 16:117). Every rep moves the balance, the log of the likelihood ratio of the two; at
 * the upper boundary the dog moves on, at the lower one it is held, and the evidence starts anew
 * with the next rep. A test that goes on at the upper boundary stays there until a miss, as {@link
 * SequentialEvidence} says.
 *
 * @param mastered the share of clean reps that is mastered, below 1
 * @param notYet the share that is not, above 0 and below {@code mastered}
 * @param wrongMoveOn how often a dog at {@code notYet} may be moved on by one test, above 0 and
 *     below 0.5
 * @param wrongHold how often one at {@code mastered} may be held, above 0 and below 0.5
 */
public record SequentialTest(double mastered, double notYet, double wrongMoveOn, double wrongHold)
    implements MovingOnTest {

  /**
   * A balance that misses a boundary by less has reached it: with 0.9 against 0.7 at 10% two misses
   * weigh exactly as much as the lower boundary, and rounding shall not decide.
   */
  private static final double ROUNDING = 1e-9;

  /** Refuses what is no test. */
  public SequentialTest {
    if (!(0 < notYet && notYet < mastered && mastered < 1)) {
      throw new IllegalArgumentException("no two shares: " + notYet + " and " + mastered);
    }
    if (!(0 < wrongMoveOn && wrongMoveOn < 0.5 && 0 < wrongHold && wrongHold < 0.5)) {
      throw new IllegalArgumentException("no error rates: " + wrongMoveOn + " and " + wrongHold);
    }
  }

  @Override
  public SequentialEvidence begun() {
    return new SequentialEvidence(this, 0, 0, 0);
  }

  /** What a clean rep adds to the balance, above 0. */
  double cleanStep() {
    return StrictMath.log(mastered / notYet);
  }

  /** What a miss adds to the balance, below 0. */
  double missStep() {
    return StrictMath.log((1 - mastered) / (1 - notYet));
  }

  /** The balance at which the dog moves on, above 0. */
  double upperBoundary() {
    return StrictMath.log((1 - wrongHold) / wrongMoveOn);
  }

  /** The balance at which it is held, below 0. */
  double lowerBoundary() {
    return StrictMath.log(wrongHold / (1 - wrongMoveOn));
  }

  /** The balance of so many reps, in whatever order. */
  double balance(int clean, int missed) {
    return clean * cleanStep() + missed * missStep();
  }

  /** What is decided at a balance. */
  Decision at(double balance) {
    if (balance >= upperBoundary() - ROUNDING) {
      return Decision.MOVE_ON;
    }
    return balance <= lowerBoundary() + ROUNDING ? Decision.HOLD : Decision.UNDECIDED;
  }

  /** How many clean reps in a row lead from a balance to the upper boundary. */
  int cleanRepsFrom(double balance) {
    double way = upperBoundary() - ROUNDING - balance;
    return way <= 0 ? 0 : (int) Math.ceil(way / cleanStep());
  }
}
