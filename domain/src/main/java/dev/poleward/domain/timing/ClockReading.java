package dev.poleward.domain.timing;

/**
 * What a device's clock showed when something was sent, and when that arrived.
 *
 * @param shown milliseconds on the device's clock
 * @param arrived milliseconds since 1970
 */
public record ClockReading(double shown, double arrived) {}
