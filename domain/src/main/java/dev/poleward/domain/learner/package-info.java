/**
 * A simulated dog that learns the weave poles: skill that grows with practice, spreads to
 * neighbouring angles and fades, and a mood that sags and recovers.
 *
 * <p>Invented for plausibility, not measured on dogs; see {@link
 * dev.poleward.domain.learner.Temper}. It makes invented records, and later forecasts and tries
 * plans. Everything follows from the temper, the calls in their order, and the random numbers that
 * the caller brings. May know events and layout, nothing else.
 */
@NullMarked
package dev.poleward.domain.learner;

import org.jspecify.annotations.NullMarked;
