package dev.poleward.domain.record;

import dev.poleward.domain.event.ClubEvent.PersonForgotten;
import dev.poleward.domain.event.RegistryEvent.HandlerRegistered;
import org.jspecify.annotations.Nullable;

/**
 * A person as announced; the name is sealed in the standing fact.
 *
 * @param forgotten the forgetting, if there was one
 */
public record HandlerRecord(
    Registered<HandlerRegistered> registered, @Nullable Fact<PersonForgotten> forgotten) {}
