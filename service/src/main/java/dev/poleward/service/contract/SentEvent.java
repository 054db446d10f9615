package dev.poleward.service.contract;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.event.Envelope;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * An event that came in and is in order.
 *
 * @param envelope its attributes but for those named here
 * @param type one of the types that clients may send
 * @param data as it came, personal members included
 * @param recordedTime when it says that it was first recorded; whether that is believed, and lies
 *     in the future, is for those to judge who know the sender and the time
 * @param forgotten whether it says that its personal members are gone
 */
public record SentEvent(
    Envelope envelope,
    String type,
    ObjectNode data,
    @Nullable Instant recordedTime,
    boolean forgotten) {}
