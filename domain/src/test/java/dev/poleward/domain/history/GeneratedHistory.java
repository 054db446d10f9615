package dev.poleward.domain.history;

import dev.poleward.domain.programme.DefaultProgramme;
import dev.poleward.domain.record.Fact;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * What a small club sent in: a few dozen events about few things, so that duplicates, equal times,
 * late setups, corrections of what is corrected already or not known yet, and all the rest that is
 * rare on a field are common here. In some a dog is drilled enough for a curve, in some much is
 * timed. One seed always gives the same history.
 *
 * <p>Recording times never decrease along the list.
 *
 * @param events in the order in which they were recorded
 */
public record GeneratedHistory(long seed, List<RecordedEvent> events) {

  static final List<String> DOGS = List.of("d-1", "d-2", "d-3", "d-4");
  static final List<String> SESSIONS = List.of("s-1", "s-2");
  static final List<String> REPS =
      IntStream.rangeClosed(1, 14).mapToObj(rep -> "r-" + rep).toList();
  static final List<String> DRILLED_REPS =
      IntStream.rangeClosed(1, 60).mapToObj(rep -> "r-" + rep).toList();
  static final List<String> HANDLERS = List.of("h-1", "h-2");
  static final List<String> GROUNDS = List.of("g-1", "g-2");
  static final List<String> CLASSES = List.of("c-1", "c-2");
  static final List<String> PROGRAMMES = List.of("p-1", "p-2");
  static final List<String> PROGRAMMES_TO_ASSIGN = List.of("p-1", "p-2", DefaultProgramme.ID);
  static final List<String> DEVICES = List.of("t-1", "t-2");
  static final List<String> KEYS = List.of("k-1", "k-2");
  static final List<String> PLANS = List.of("l-1", "l-2");
  static final List<String> POLE_SETS = List.of("main", "second");

  /** The history of that seed, of events that may come through the event doors. */
  public static GeneratedHistory of(long seed) {
    return new GeneratedHistory(seed, new HistoryGenerator(seed, false).events());
  }

  /** The history of that seed, with events among it that only the service writes. */
  public static GeneratedHistory withInternalEvents(long seed) {
    return new GeneratedHistory(seed, new HistoryGenerator(seed, true).events());
  }

  /** The same, and what somebody taught two of its dogs over weeks. */
  public static GeneratedHistory withTeaching(long seed) {
    List<RecordedEvent> events = new ArrayList<>(new GeneratedTeaching(seed).events());
    events.addAll(withInternalEvents(seed).events());
    events.sort(Comparator.comparing(RecordedEvent::recorded));
    return new GeneratedHistory(seed, events);
  }

  /** A time at which something may have happened, in any of these histories. */
  public static Instant anyTime(Random random) {
    return HistoryGenerator.START.plusMinutes(random.nextInt(HistoryGenerator.MINUTES)).toInstant();
  }

  /** A time at which something may have been recorded, an early one rather than a late one. */
  public static Instant anyRecordingTime(Random random) {
    int events = 1 + random.nextInt(HistoryGenerator.EVENTS_MAX);
    return HistoryGenerator.FIRST_RECORDED.plusSeconds(60L * random.nextInt(events));
  }

  /** Its events as the domain sees them. */
  public List<Fact<?>> facts() {
    return events.stream().<Fact<?>>map(RecordedEvent::fact).toList();
  }
}
