package dev.poleward.domain.judgement;

/**
 * A cumulative sum that rises when values are above what is allowed, and never falls below 0 (Page
 * 1954, Biometrika 41:100).
 *
 * @param allowance what each value may be without raising it
 * @param threshold the sum at which it sounds, above 0
 */
public record Cusum(double allowance, double threshold) {

  /** Before the first value. */
  public CusumScore begun() {
    return new CusumScore(this, 0, 0, 0);
  }
}
