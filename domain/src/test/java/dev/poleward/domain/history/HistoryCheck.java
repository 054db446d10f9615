package dev.poleward.domain.history;

import dev.poleward.domain.record.Fact;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.LongFunction;
import org.jspecify.annotations.Nullable;

/**
 * Tries a property on many generated histories. When one breaks it, the history is made as small as
 * it can be while it still does, and printed with its seed.
 *
 * <p>{@code -Dhistories=100000} tries that many, {@code -DhistorySeed=77} begins with that one.
 */
public final class HistoryCheck {

  /** What must hold of any recorded events, whichever they are. */
  @FunctionalInterface
  public interface Property {

    /**
     * Throws when it does not hold.
     *
     * @param facts in the order in which they were recorded
     * @param random for choices of its own, the same for the same history
     */
    void check(List<Fact<?>> facts, Random random);
  }

  /** The same, for those who need to know what is said around the events too. */
  @FunctionalInterface
  public interface RecordingProperty {

    /**
     * Throws when it does not hold.
     *
     * @param events in the order in which they were recorded
     * @param random for choices of its own, the same for the same history
     */
    void check(List<RecordedEvent> events, Random random);
  }

  private HistoryCheck() {}

  /** Tries {@code property} on that many histories, unless another number is asked for. */
  public static void forHistories(int histories, Property property) {
    forRecordings(histories, GeneratedHistory::withInternalEvents, onFacts(property));
  }

  /** The same, on histories in which dogs are taught over weeks. */
  public static void forTaughtDogs(int histories, Property property) {
    forRecordings(histories, GeneratedHistory::withTeaching, onFacts(property));
  }

  private static RecordingProperty onFacts(Property property) {
    return (events, random) ->
        property.check(events.stream().<Fact<?>>map(RecordedEvent::fact).toList(), random);
  }

  /** Tries {@code property} on that many histories, unless another number is asked for. */
  public static void forRecordings(int histories, RecordingProperty property) {
    forRecordings(histories, GeneratedHistory::withInternalEvents, property);
  }

  private static void forRecordings(
      int histories, LongFunction<GeneratedHistory> generated, RecordingProperty property) {
    int count = Integer.getInteger("histories", histories);
    long first = Long.getLong("historySeed", 1);
    for (long seed = first; seed < first + count; seed++) {
      List<RecordedEvent> events = generated.apply(seed).events();
      if (broken(property, events, seed) != null) {
        throw smallest(property, events, seed);
      }
    }
  }

  private static AssertionError smallest(
      RecordingProperty property, List<RecordedEvent> events, long seed) {
    List<RecordedEvent> small = shrunk(property, events, seed);
    Throwable broken = broken(property, small, seed);
    StringBuilder told = new StringBuilder();
    told.append("history %d, %d of %d events:%n".formatted(seed, small.size(), events.size()));
    small.forEach(event -> told.append("  ").append(event).append(System.lineSeparator()));
    return new AssertionError(told.append(broken).toString(), broken);
  }

  /** Leaves out halves, quarters, … and single events for as long as the rest still breaks it. */
  static List<RecordedEvent> shrunk(
      RecordingProperty property, List<RecordedEvent> events, long seed) {
    List<RecordedEvent> small = events;
    int chunk = Math.max(1, events.size() / 2);
    while (true) {
      List<RecordedEvent> smaller = withoutAChunk(property, small, seed, chunk);
      if (smaller != null) {
        small = smaller;
      } else if (chunk == 1) {
        return small;
      } else {
        chunk /= 2;
      }
    }
  }

  private static @Nullable List<RecordedEvent> withoutAChunk(
      RecordingProperty property, List<RecordedEvent> events, long seed, int chunk) {
    for (int from = 0; from < events.size(); from += chunk) {
      List<RecordedEvent> rest = new ArrayList<>(events);
      rest.subList(from, Math.min(from + chunk, events.size())).clear();
      if (broken(property, rest, seed) != null) {
        return rest;
      }
    }
    return null;
  }

  private static @Nullable Throwable broken(
      RecordingProperty property, List<RecordedEvent> events, long seed) {
    try {
      property.check(events, new Random(seed));
      return null;
    } catch (AssertionError | RuntimeException e) {
      return e;
    }
  }
}
