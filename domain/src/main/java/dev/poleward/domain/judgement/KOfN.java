package dev.poleward.domain.judgement;

import java.util.List;

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
}
