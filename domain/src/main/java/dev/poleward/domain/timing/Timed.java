package dev.poleward.domain.timing;

/**
 * A value at a place in time.
 *
 * @param at in any unit, finite
 * @param value finite
 */
public record Timed(double at, double value) {}
