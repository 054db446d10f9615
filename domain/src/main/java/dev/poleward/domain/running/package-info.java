/**
 * Who of a class runs when, on which pole set, and which setup stands when: least is carried first,
 * then least is waited. What is meant by that, and how it is found, is in {@code
 * docs/running-order.md}.
 *
 * <p>Knows what stands on the ground ({@code layout}) and nothing of the record; looks at no clock
 * and draws nothing but from a fixed seed. Units: metres, and seconds from the beginning.
 */
@NullMarked
package dev.poleward.domain.running;

import org.jspecify.annotations.NullMarked;
