/**
 * From facts to placed reps: the one path that every view takes.
 *
 * <p>A {@link dev.poleward.domain.record.Fact} is an event with the moment it happened and the time
 * it was first recorded. {@link dev.poleward.domain.record.Precedence} holds the tie rules; {@link
 * dev.poleward.domain.record.Placement} decides for each rep which amendment wins, which setup was
 * in force and whose rep it is. Everything here is a function of a set of facts: order of arrival
 * and repetition cannot show.
 */
@NullMarked
package dev.poleward.domain.record;

import org.jspecify.annotations.NullMarked;
