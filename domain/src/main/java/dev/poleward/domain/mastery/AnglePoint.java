package dev.poleward.domain.mastery;

import dev.poleward.domain.layout.EntryAngle;
import org.jspecify.annotations.Nullable;

/**
 * What is known of one entry angle.
 *
 * @param angle the entry angle, with its sign
 * @param reps how many there were
 * @param made how many of them were made
 * @param weight what the reps weigh together
 * @param fitted the chance on the curve, with its pointwise band; null where there is no curve
 * @param observed the weighted share made, with Wilson's limits over the weights
 * @param isotonic the chance by the isotonic fit
 */
public record AnglePoint(
    EntryAngle angle,
    int reps,
    int made,
    double weight,
    @Nullable Estimate fitted,
    Estimate observed,
    double isotonic) {}
