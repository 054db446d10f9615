/**
 * How fast a dog weaves: which timing belongs to which rep, and what the times say.
 *
 * <p>{@link dev.poleward.domain.pace.ClubTimings} is the way from timings to timed reps, {@link
 * dev.poleward.domain.pace.Pace} from there to an answer. What it goes by, the clocks of devices
 * among it, is a function of the events with their first recording times. Knows {@code record},
 * {@code layout}, {@code event}, {@code timing} and {@code mastery}.
 */
@NullMarked
package dev.poleward.domain.pace;

import org.jspecify.annotations.NullMarked;
