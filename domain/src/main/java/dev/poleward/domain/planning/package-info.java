/**
 * What a dog does next: how well it can be expected to do what, and a session made of that. Knows
 * where the dog stands ({@code judgement}), what it may do ({@code care}) and the programme; looks
 * at no clock and draws nothing.
 */
@NullMarked
package dev.poleward.domain.planning;

import org.jspecify.annotations.NullMarked;
