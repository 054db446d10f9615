package dev.poleward.domain.outlook;

import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What an outlook is asked.
 *
 * @param today the club's day
 * @param agedTo the end of that day
 * @param sessionsPerWeek beside the dog's own rhythm; null for once, twice and three times a week
 * @param repsPerSession null for as many as the dog's own sessions have
 */
public record OutlookQuestion(
    LocalDate today,
    Instant agedTo,
    @Nullable Double sessionsPerWeek,
    @Nullable Integer repsPerSession,
    OutlookTerms terms) {}
