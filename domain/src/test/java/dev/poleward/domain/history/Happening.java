package dev.poleward.domain.history;

import dev.poleward.domain.event.TrainingEvent;
import dev.poleward.domain.record.Sealed;
import org.jspecify.annotations.Nullable;

/**
 * Something that is told of a club. What is left open is filled in by the place among the others:
 * the n-th happens at minute n, its id is {@code e-n} with two digits, and it is recorded long
 * after all that happens, in the order of telling.
 *
 * @param minute when it happened, in minutes after {@link Told#START}
 * @param recordedMinute when it was recorded, likewise
 */
public record Happening(
    TrainingEvent event,
    @Nullable Integer minute,
    @Nullable String id,
    @Nullable Integer recordedMinute,
    @Nullable Sealed sealed) {

  /** Tells an event; the rest is left open. */
  public static Happening of(TrainingEvent event) {
    return new Happening(event, null, null, null, null);
  }

  /** The same at that minute. */
  public Happening at(int happened) {
    return new Happening(event, happened, id, recordedMinute, sealed);
  }

  /** The same under that event id. */
  public Happening as(String eventId) {
    return new Happening(event, minute, eventId, recordedMinute, sealed);
  }

  /** The same, recorded at that minute. */
  public Happening recordedAt(int recorded) {
    return new Happening(event, minute, id, recorded, sealed);
  }

  /** The same with personal members in a box. */
  public Happening sealed(String box) {
    return new Happening(event, minute, id, recordedMinute, new Sealed("robin", "k-1", box));
  }
}
