package dev.poleward.domain.history;

import dev.poleward.domain.event.Envelope;
import dev.poleward.domain.event.EventWithdrawn;
import dev.poleward.domain.event.RegistryEvent.HandlerRegistered;
import dev.poleward.domain.event.RepEvent.RepAmended;
import dev.poleward.domain.event.RepEvent.RepLogged;
import dev.poleward.domain.event.TimingEvent.TimingPaired;
import dev.poleward.domain.event.TimingEvent.TimingUnpaired;
import dev.poleward.domain.event.TrainingEvent;
import dev.poleward.domain.record.Sealed;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Makes up one history. For one thread, used once. */
final class HistoryGenerator {

  static final OffsetDateTime START = OffsetDateTime.parse("2026-03-02T17:00:00Z");
  static final Instant FIRST_RECORDED = Instant.parse("2026-03-04T06:00:00Z");
  static final int MINUTES = 16;
  private static final int EVENTS_MIN = 5;
  static final int EVENTS_MAX = 80;

  private final Pick pick;
  private final GeneratedRep reps;
  private final GeneratedTalk talk;
  private final List<String> ids;
  private final List<Supplier<TrainingEvent>> kinds = new ArrayList<>();

  HistoryGenerator(long seed, boolean internal) {
    this.pick = new Pick(seed);
    this.reps = new GeneratedRep(pick);
    this.talk = new GeneratedTalk(pick);
    this.ids = ids(EVENTS_MIN + pick.below(EVENTS_MAX - EVENTS_MIN + 1));
    weigh();
    if (internal) {
      weighInternal();
    }
  }

  /** Ids in an order that has nothing to do with the one in which they are recorded. */
  private List<String> ids(int events) {
    List<String> made = new ArrayList<>(events);
    for (int i = 0; i < events; i++) {
      made.add("e-" + (char) ('a' + pick.below(26)) + (char) ('a' + pick.below(26)) + i);
    }
    return made;
  }

  private void weigh() {
    announcements().forEach(kind -> often(1, kind));
    often(40, reps::logged);
    often(18, reps::amended);
    often(22, reps::setupChanged);
    often(16, this::withdrawn);
    often(5, talk::dogMerged);
    often(5, talk::dogAmended);
    often(5, talk::classJoined);
    often(4, talk::classLeft);
    often(5, talk::attended);
    often(4, talk::timing);
    often(3, talk::deviceAssigned);
    often(3, talk::assigned);
    often(2, talk::dogRested);
    often(2, talk::dogCleared);
    often(2, talk::closed);
    often(3, talk::settingsChanged);
    often(2, () -> new TimingPaired(anEvent(), pick.of(GeneratedHistory.REPS)));
    often(1, () -> new TimingUnpaired(anEvent(), pick.of(GeneratedHistory.REPS)));
    often(1, talk::homework);
    often(1, talk::goal);
    often(1, talk::trial);
    often(1, talk::load);
    if (pick.onceIn(4)) {
      often(160, reps::drilled);
    }
    if (pick.onceIn(4)) {
      often(80, talk::timing);
      often(12, () -> new TimingPaired(anEvent(), pick.of(GeneratedHistory.REPS)));
      often(8, () -> new TimingUnpaired(anEvent(), pick.of(GeneratedHistory.REPS)));
    }
  }

  /** Of everything that there is, what most is said of first. */
  private List<Supplier<TrainingEvent>> announcements() {
    List<Supplier<TrainingEvent>> all = new ArrayList<>();
    GeneratedHistory.SESSIONS.forEach(session -> all.add(() -> talk.opened(session)));
    GeneratedHistory.DOGS.forEach(dog -> all.add(() -> talk.dogRegistered(dog)));
    GeneratedHistory.HANDLERS.forEach(handler -> all.add(() -> talk.handler(handler)));
    GeneratedHistory.CLASSES.forEach(group -> all.add(() -> talk.classFormed(group)));
    GeneratedHistory.PROGRAMMES.forEach(programme -> all.add(() -> talk.published(programme)));
    GeneratedHistory.DEVICES.forEach(device -> all.add(() -> talk.enrolled(device)));
    GeneratedHistory.GROUNDS.forEach(ground -> all.add(() -> talk.ground(ground)));
    return all;
  }

  private void weighInternal() {
    often(3, talk::clubRegistered);
    often(2, talk::keyIssued);
    often(1, talk::keyRevoked);
    often(1, talk::forgotten);
    often(2, talk::planIssued);
  }

  private void often(int weight, Supplier<TrainingEvent> kind) {
    for (int i = 0; i < weight; i++) {
      kinds.add(kind);
    }
  }

  private EventWithdrawn withdrawn() {
    return new EventWithdrawn(anEvent(), "tapped twice");
  }

  /** Any event of this history, before or after, or one that never comes. */
  private String anEvent() {
    return pick.onceIn(12) ? "e-lost" : pick.of(ids);
  }

  List<RecordedEvent> events() {
    List<RecordedEvent> events = new ArrayList<>(ids.size());
    Instant recorded = FIRST_RECORDED;
    for (TrainingEvent event : happenings()) {
      recorded = recorded.plusSeconds(60L * pick.below(3));
      Envelope envelope = envelope(ids.get(events.size()));
      events.add(new RecordedEvent(envelope, recorded, event, sealed(event)));
    }
    return List.copyOf(events);
  }

  /** Most things are announced, somewhere among all that is said of them. */
  private List<TrainingEvent> happenings() {
    List<TrainingEvent> happenings = new ArrayList<>(ids.size());
    for (Supplier<TrainingEvent> announcement : announcements()) {
      if (happenings.size() < ids.size() / 2 && !pick.onceIn(6)) {
        happenings.add(announcement.get());
      }
    }
    while (happenings.size() < ids.size()) {
      happenings.add(pick.of(kinds).get());
    }
    pick.shuffle(happenings);
    return happenings;
  }

  private Envelope envelope(String id) {
    OffsetDateTime time =
        START.plusMinutes(pick.below(MINUTES)).plusNanos(pick.onceIn(8) ? 500_000_000 : 0);
    ZoneOffset offset = pick.onceIn(3) ? ZoneOffset.ofHours(1) : ZoneOffset.UTC;
    return new Envelope(
        id, "/apps/field-notes", time.withOffsetSameInstant(offset), null, null, Map.of());
  }

  private @Nullable Sealed sealed(TrainingEvent event) {
    boolean personal =
        switch (event) {
          case HandlerRegistered _ -> true;
          case RepLogged _, RepAmended _ -> pick.onceIn(4);
          default -> false;
        };
    return personal
        ? new Sealed(pick.of(GeneratedHistory.HANDLERS), "k-1", "box" + pick.below(9))
        : null;
  }
}
