package dev.poleward.domain.record;

import dev.poleward.domain.event.TrainingEvent;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * An event of a club as it was first recorded.
 *
 * @param moment when it happened, and its id
 * @param recorded when it was first recorded
 * @param event what happened
 * @param sealed its personal members, if it has any
 */
public record Fact<E extends TrainingEvent>(
    Moment moment, Instant recorded, E event, @Nullable Sealed sealed) {

  /** The event's id, unique within the club. */
  public String id() {
    return moment.id();
  }

  /** When it happened. */
  public Instant time() {
    return moment.time();
  }

  /** The same fact, when its event is of that type. */
  @SuppressWarnings("unchecked")
  public <T extends TrainingEvent> @Nullable Fact<T> as(Class<T> type) {
    return type.isInstance(event) ? (Fact<T>) this : null;
  }
}
