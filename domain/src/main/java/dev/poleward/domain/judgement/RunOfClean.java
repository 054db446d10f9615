package dev.poleward.domain.judgement;

/**
 * So many clean in a row. Holds at a miss, which begins the count anew.
 *
 * @param length how many, from 1
 */
public record RunOfClean(int length) implements MovingOnTest {

  /** Refuses what is no test. */
  public RunOfClean {
    if (length < 1) {
      throw new IllegalArgumentException("no run: " + length);
    }
  }

  @Override
  public RunEvidence begun() {
    return new RunEvidence(this, 0, 0);
  }
}
