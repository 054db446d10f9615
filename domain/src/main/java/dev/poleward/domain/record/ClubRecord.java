package dev.poleward.domain.record;

import dev.poleward.domain.event.ClubEvent.ClubRegistered;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A club and its settings as they stand in a view: each setting as the latest change that names it
 * left it.
 */
public record ClubRecord(
    Registered<ClubRegistered> registered,
    String club,
    String name,
    String timeZone,
    @Nullable Map<String, Object> careLimits,
    @Nullable Map<String, Object> defaults) {}
