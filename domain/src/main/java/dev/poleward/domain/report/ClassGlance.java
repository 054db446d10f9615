package dev.poleward.domain.report;

import dev.poleward.domain.event.ClassEvent.ClassFormed;
import dev.poleward.domain.record.Registered;

/**
 * A class at a glance.
 *
 * @param members dogs that are members on the day
 */
public record ClassGlance(Registered<ClassFormed> formed, int members) {}
