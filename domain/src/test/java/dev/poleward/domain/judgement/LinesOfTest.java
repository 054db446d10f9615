package dev.poleward.domain.judgement;

/**
 * The lines of a sequential test as tables print them: misses against reps, the dog moves on below
 * one and is held above the other.
 */
record LinesOfTest(SequentialTest test) {

  /** Misses a rep along both lines: their slope, between the two shares. */
  double slope() {
    return test.cleanStep() / scale();
  }

  /** How far the line of moving on lies below the line through the origin, in misses. */
  double below() {
    return test.upperBoundary() / scale();
  }

  /** How far the line of holding lies above the line through the origin, in misses. */
  double above() {
    return -test.lowerBoundary() / scale();
  }

  private double scale() {
    return test.cleanStep() - test.missStep();
  }
}
