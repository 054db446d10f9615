/**
 * Estimates from a dog's reps: how likely the entry is made, against the size of the entry angle.
 *
 * <p>{@link dev.poleward.domain.mastery.MasteryCurve} is the way in. Below it, each method stands
 * alone and knows nothing of dogs: proportions, the logistic fit and the limits of its threshold,
 * the isotonic fit. Nothing in here throws for want of reps; what cannot be said is a value.
 *
 * <p>Knows {@code record}, {@code layout}, {@code event} and a library of distributions.
 * Exponentials and logarithms are {@link java.lang.StrictMath}'s, so that every machine gives the
 * same bits.
 */
@NullMarked
package dev.poleward.domain.mastery;

import org.jspecify.annotations.NullMarked;
