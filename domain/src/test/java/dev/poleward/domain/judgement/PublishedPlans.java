package dev.poleward.domain.judgement;

/**
 * Sequential plans that others printed. They count defectives: what they accept at a share of p0 is
 * what we move on at a share of 1 − p0 clean.
 */
final class PublishedPlans {

  /** NIST/SEMATECH e-Handbook 6.2.6: p0 .01, p1 .10, alpha .05, beta .10. */
  static final SequentialTest NIST = accepting(.01, .10, .05, .10);

  /** The same with beta .20. */
  static final SequentialTest NIST_AT_20_PERCENT = accepting(.01, .10, .05, .20);

  /** Montgomery, Introduction to Statistical Quality Control: p0 .01, p1 .06, .05, .10. */
  static final SequentialTest MONTGOMERY = accepting(.01, .06, .05, .10);

  private PublishedPlans() {}

  private static SequentialTest accepting(double p0, double p1, double alpha, double beta) {
    return new SequentialTest(1 - p0, 1 - p1, beta, alpha);
  }

  static SequentialTest named(String name) {
    return switch (name) {
      case "NIST" -> NIST;
      case "NIST .20" -> NIST_AT_20_PERCENT;
      case "Montgomery" -> MONTGOMERY;
      default -> throw new IllegalArgumentException(name);
    };
  }
}
