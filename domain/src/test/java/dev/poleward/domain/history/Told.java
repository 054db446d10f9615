package dev.poleward.domain.history;

import dev.poleward.domain.event.DogEvent.DogRegistered;
import dev.poleward.domain.event.TrainingEvent;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.MemoryFacts;
import dev.poleward.domain.record.Moment;
import dev.poleward.domain.record.View;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * What a club is told in a test: {@code given(sessionOpened("s-1"), setupAt(45), rep(CLEAN))}. Ask
 * it with {@link #whenAsked()}.
 */
public final class Told {

  /** Minute 0. */
  public static final Instant START = Instant.parse("2026-05-04T17:00:00Z");

  /** From this minute on things are recorded, unless they say when. */
  public static final int RECORDED_FROM = 1_000;

  private final List<Fact<?>> facts;

  private Told(List<Fact<?>> facts) {
    this.facts = facts;
  }

  /** A club that knows nothing but this. */
  public static Told given(Happening... happenings) {
    return new Told(facts(List.of(happenings)));
  }

  /**
   * A club that was told before minute 0 of the dogs juniper and bramble and of the sessions s-1
   * and s-2, and then this.
   */
  public static Told givenTraining(Happening... happenings) {
    List<Fact<?>> facts = new ArrayList<>();
    facts.add(before(new DogRegistered("bramble", "Bramble", Tell.NO_TRAITS), "before-1"));
    facts.add(before(new DogRegistered("juniper", "Juniper", Tell.NO_TRAITS), "before-2"));
    facts.add(before(Tell.opening("s-1"), "before-3"));
    facts.add(before(Tell.opening("s-2"), "before-4"));
    facts.addAll(facts(List.of(happenings)));
    return new Told(facts);
  }

  private static Fact<?> before(TrainingEvent event, String id) {
    return new Fact<>(new Moment(minute(-60), id), minute(-60), event, null);
  }

  private static List<Fact<?>> facts(List<Happening> happenings) {
    List<Fact<?>> facts = new ArrayList<>();
    for (int i = 0; i < happenings.size(); i++) {
      facts.add(fact(happenings.get(i), i));
    }
    return facts;
  }

  private static Fact<?> fact(Happening told, int place) {
    Integer minute = told.minute();
    Integer recorded = told.recordedMinute();
    String id = told.id();
    return new Fact<>(
        new Moment(
            minute(minute == null ? place : minute), id == null ? "e-%02d".formatted(place) : id),
        minute(recorded == null ? RECORDED_FROM + place : recorded),
        told.event(),
        told.sealed());
  }

  /** That many minutes after the start. */
  public static Instant minute(int minute) {
    return START.plus(Duration.ofMinutes(minute));
  }

  /** All that was told. */
  public List<Fact<?>> facts() {
    return facts;
  }

  /** What is known of everything. */
  public Asked whenAsked() {
    return new Asked(MemoryFacts.of(facts), View.EVERYTHING);
  }

  /** What is known of all that had happened by that minute. */
  public Asked whenAskedAsOf(int happened) {
    return new Asked(MemoryFacts.of(facts), new View(minute(happened), null));
  }

  /** What was known at that minute. */
  public Asked whenAskedKnownAt(int recorded) {
    return new Asked(MemoryFacts.of(facts), new View(null, minute(recorded)));
  }

  /** What was known at one minute of all that had happened by another. */
  public Asked whenAsked(int happened, int recorded) {
    return new Asked(MemoryFacts.of(facts), new View(minute(happened), minute(recorded)));
  }
}
