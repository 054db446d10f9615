package dev.poleward.domain.judgement;

import dev.poleward.domain.programme.DrillOfStage;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A drill of the programme as it stands with a dog.
 *
 * @param reps those without help
 * @param clean how many of them had no fault
 * @param recent the last of them
 * @param helped those with help
 * @param lastRun when it was last run, with help or without; null when never
 */
public record DrillStanding(
    DrillOfStage drill,
    DrillState state,
    int reps,
    int clean,
    DrillCount.Recent recent,
    int helped,
    @Nullable Instant lastRun) {}
