/**
 * What happened: sealed, immutable records in the past tense, one for each event type, no
 * behaviour.
 *
 * <p>Names, mail addresses and notes are not here: they are sealed before an event is recorded and
 * opened only where they are shown. Knows {@code domain.layout} for setups and approaches.
 */
@NullMarked
package dev.poleward.domain.event;

import org.jspecify.annotations.NullMarked;
