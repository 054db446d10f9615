package dev.poleward.domain.judgement;

/**
 * How far a cumulative sum has risen.
 *
 * @param sum at least 0
 * @param values seen so far
 * @param lastZero after how many values the sum was 0 for the last time; if there was a change, it
 *     came after that
 */
public record CusumScore(Cusum cusum, double sum, int values, int lastZero) {

  /** With one more value. */
  public CusumScore with(double value) {
    double next = Math.max(0, sum + value - cusum.allowance());
    return new CusumScore(cusum, next, values + 1, next == 0 ? values + 1 : lastZero);
  }

  /** Whether the threshold is reached. */
  public boolean sounds() {
    return sum >= cusum.threshold();
  }
}
