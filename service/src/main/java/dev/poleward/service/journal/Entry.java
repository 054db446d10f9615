package dev.poleward.service.journal;

import dev.poleward.domain.event.Envelope;
import dev.poleward.domain.record.Sealed;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * An event of a club as it stands in the journal.
 *
 * @param club whose record it is in
 * @param type the event's type with its version, such as {@code rep.logged.v1}
 * @param data RFC 8785 form of its data without personal members
 * @param sealed its personal members, if it has any
 * @param recorded when it was recorded, as its recorder said
 * @param recordedGiven whether that time came with an import and holds as it is; otherwise it never
 *     lies before one that the club already has
 */
public record Entry(
    String club,
    Envelope envelope,
    String type,
    String data,
    @Nullable Sealed sealed,
    Instant recorded,
    boolean recordedGiven) {}
