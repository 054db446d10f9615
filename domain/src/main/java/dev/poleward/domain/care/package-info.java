/**
 * What a dog may be asked for on a day, and what to mind: rest, age, load in gaps and sharp bends,
 * heat, and signs that something hurts. Advice, never a diagnosis. Knows {@code pace}, {@code
 * record} and {@code event}; looks at no clock.
 */
@NullMarked
package dev.poleward.domain.care;

import org.jspecify.annotations.NullMarked;
