package dev.poleward.domain.judgement;

import dev.poleward.domain.mastery.Estimate;
import dev.poleward.domain.mastery.Proportion;
import org.jspecify.annotations.Nullable;

/**
 * Reps on one step of the ladder, without another between them.
 *
 * @param step index on the ladder
 * @param from index of its first rep
 * @param clean how many were clean and missed
 * @param change of the share against the stay on a step before, with 95% limits; null for the first
 * @param held whether success held since then; null for the first
 */
public record FadeStage(
    int step, int from, Proportion clean, @Nullable Estimate change, @Nullable Held held) {}
