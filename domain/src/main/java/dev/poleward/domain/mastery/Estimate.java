package dev.poleward.domain.mastery;

/**
 * A value with its limits.
 *
 * @param value the estimate
 * @param lower its lower limit
 * @param upper its upper limit
 */
public record Estimate(double value, double lower, double upper) {}
