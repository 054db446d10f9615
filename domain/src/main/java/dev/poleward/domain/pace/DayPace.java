package dev.poleward.domain.pace;

import java.time.LocalDate;

/**
 * How fast a dog was on a day of the club's.
 *
 * @param seconds median of the day's runs of one kind
 */
public record DayPace(LocalDate day, double seconds) {}
