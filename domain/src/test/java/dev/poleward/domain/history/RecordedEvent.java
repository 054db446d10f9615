package dev.poleward.domain.history;

import dev.poleward.domain.event.Envelope;
import dev.poleward.domain.event.TrainingEvent;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Moment;
import dev.poleward.domain.record.Sealed;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * An event of a history with all that is said around it.
 *
 * @param recorded when it was first recorded
 * @param sealed its personal members, if it has any; not really sealed
 */
public record RecordedEvent(
    Envelope envelope, Instant recorded, TrainingEvent event, @Nullable Sealed sealed) {

  /** The event's id. */
  public String id() {
    return envelope.id();
  }

  /** The event as the domain sees it. */
  public Fact<?> fact() {
    return new Fact<>(
        new Moment(envelope.time().toInstant(), envelope.id()), recorded, event, sealed);
  }
}
