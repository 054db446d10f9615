/**
 * What the record says of the drills and of the programme: how often each drill was run, and how
 * well; whether to move on, whether what was solid slips, what is forgotten, whether rewards may
 * fade, where poles are missed.
 *
 * <p>{@link dev.poleward.domain.judgement.DrillCounts} counts what was run, whatever any programme
 * asks for. {@link dev.poleward.domain.judgement.RungJudgement} is the way in for a rung. Below it,
 * each method stands alone and knows nothing of dogs. Nothing in here throws for want of reps.
 *
 * <p>Knows {@code record}, {@code programme}, {@code mastery}, {@code layout}, {@code event} and a
 * library of distributions. Exponentials and logarithms are {@link java.lang.StrictMath}'s, so that
 * every machine gives the same bits.
 */
@NullMarked
package dev.poleward.domain.judgement;

import org.jspecify.annotations.NullMarked;
