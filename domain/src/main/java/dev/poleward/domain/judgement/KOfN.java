package dev.poleward.domain.judgement;

import java.util.List;
import org.apache.commons.statistics.distribution.BinomialDistribution;

/**
 * So many clean among the last. Holds while more than {@code n − k} of the last {@code n} are
 * missed.
 *
 * @param k clean, 1 to {@code n}
 * @param n looked at
 */
public record KOfN(int k, int n) implements MovingOnTest {

  /** Refuses what is no test. */
  public KOfN {
    if (!(1 <= k && k <= n)) {
      throw new IllegalArgumentException("no such rule: %d of %d".formatted(k, n));
    }
  }

  @Override
  public WindowEvidence begun() {
    return new WindowEvidence(this, List.of());
  }

  /**
   * How likely a dog is moved on by its first {@code n} reps, exactly. Trying further makes it
   * likelier.
   *
   * @param share of clean reps, 0 to 1
   */
  public double chanceAtFirst(double share) {
    return BinomialDistribution.of(n, share).survivalProbability(k - 1);
  }
}
