package dev.poleward.domain.record;

import dev.poleward.domain.event.ClassEvent.ClassFormed;
import dev.poleward.domain.event.ClassEvent.ClassJoined;
import java.util.Map;

/**
 * A class as it stands in a view.
 *
 * @param members dogs that had joined and not left, ascending by id, each with its joining
 */
public record ClassRecord(Registered<ClassFormed> formed, Map<String, Fact<ClassJoined>> members) {}
