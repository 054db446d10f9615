package dev.poleward.service.http;

import dev.poleward.domain.event.TrainingEvent;
import dev.poleward.domain.record.EntityRef;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Moment;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.Sealed;
import dev.poleward.domain.record.View;
import dev.poleward.service.access.PersonalFields;
import dev.poleward.service.access.PersonalFields.Enveloped;
import dev.poleward.service.codec.CanonicalJson;
import dev.poleward.service.codec.EventCodec;
import dev.poleward.service.contract.SentEvent;
import dev.poleward.service.journal.AppendOutcome;
import dev.poleward.service.journal.AppendOutcome.Appended;
import dev.poleward.service.journal.AppendOutcome.DiskNearlyFull;
import dev.poleward.service.journal.AppendOutcome.QueueFull;
import dev.poleward.service.journal.AppendOutcome.Unavailable;
import dev.poleward.service.journal.Entry;
import dev.poleward.service.journal.Journal;
import dev.poleward.service.journal.JournalException;
import dev.poleward.service.journal.Place;
import dev.poleward.service.projection.Applied;
import dev.poleward.service.projection.ClubReader;
import dev.poleward.service.projection.ContentHash;
import dev.poleward.service.projection.Reading;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The one way of events into the journal: sealed, appended, awaited, and told apart by what they
 * did. Safe for use by many threads.
 */
final class Intake {

  /** Longest that a write waits until it is durable. */
  static final Duration APPEND_MAX = Duration.ofSeconds(12);

  /** Longest that a write waits until it is applied; after that it is answered 202. */
  static final Duration APPLY_MAX = Duration.ofSeconds(5);

  private static final Duration RETRY_AFTER = Duration.ofSeconds(2);

  /** What became of an event. */
  sealed interface Taken {

    /** New; and what it waits for. */
    record Recorded(List<EntityRef> waitsFor) implements Taken {}

    /** The same was there already. */
    record Repeated() implements Taken {}

    /** Other content was there already under its id. */
    record Contradicted() implements Taken {}

    /** Durable, but not applied in time. */
    record Pending() implements Taken {}
  }

  /** What became of all of them. */
  sealed interface Outcome {

    /** One for each event, in their order. */
    record Done(List<Taken> taken) implements Outcome {}

    /** Not kept, or not known to be. */
    record NotKept(Problem problem) implements Outcome {}
  }

  private final Journal journal;
  private final Applied applied;
  private final ClubReader clubs;
  private final PersonalFields personal;
  private final EventCodec codec;
  private final Clock clock;
  private final PendingEvents pending;

  Intake(
      Journal journal,
      Applied applied,
      ClubReader clubs,
      PersonalFields personal,
      EventCodec codec,
      Clock clock,
      PendingEvents pending) {
    this.journal = journal;
    this.applied = applied;
    this.clubs = clubs;
    this.personal = personal;
    this.codec = codec;
    this.clock = clock;
    this.pending = pending;
  }

  /** The time to record with, to the microsecond. */
  Instant now() {
    return clock.instant().truncatedTo(ChronoUnit.MICROS);
  }

  /**
   * Records events of one club.
   *
   * @param events 1 to 1,000, in order by the contract; a given recording time is kept
   */
  Outcome take(String club, List<SentEvent> events) {
    List<Entry> entries;
    try {
      Instant now = now();
      entries = events.stream().map(event -> entry(club, event, now)).toList();
    } catch (JournalException e) {
      return new Outcome.NotKept(
          Problem.later(
              ProblemKind.JOURNAL_UNAVAILABLE,
              "Personal members could not be sealed now. Nothing of this was kept.",
              RETRY_AFTER));
    }
    AppendOutcome outcome = journal.append(entries, APPEND_MAX);
    return switch (outcome) {
      case Appended appended -> new Outcome.Done(taken(club, events, entries, appended.places()));
      case QueueFull full -> new Outcome.NotKept(Problem.queueFull(full));
      case Unavailable unavailable -> new Outcome.NotKept(Problem.unavailable(unavailable));
      case DiskNearlyFull full -> new Outcome.NotKept(Problem.diskNearlyFull(full));
    };
  }

  private Entry entry(String club, SentEvent event, Instant now) {
    Instant given = event.recordedTime();
    Enveloped enveloped =
        personal.enveloped(club, event.envelope().id(), event.type(), event.data());
    return new Entry(
        club,
        event.envelope(),
        event.type(),
        CanonicalJson.of(enveloped.data()),
        sealed(event, enveloped),
        given == null ? now : given,
        given != null);
  }

  /** Members that were forgotten elsewhere are dropped here too. */
  private static @Nullable Sealed sealed(SentEvent event, Enveloped enveloped) {
    return event.forgotten() && enveloped.sealed() == null
        ? Sealed.dropped("elsewhere")
        : enveloped.sealed();
  }

  private List<Taken> taken(
      String club, List<SentEvent> events, List<Entry> entries, List<Place> places) {
    boolean all = applied.await(places, APPLY_MAX);
    List<Taken> taken = new ArrayList<>(events.size());
    try (Reading reading = clubs.open(club)) {
      Placement placement = new Placement(reading.facts(), View.EVERYTHING);
      for (int i = 0; i < events.size(); i++) {
        Place place = places.get(i);
        if (all || applied.await(List.of(place), Duration.ZERO)) {
          taken.add(effect(entries.get(i), place, placement));
        } else {
          pending.add(club, entries.get(i).envelope().id());
          taken.add(new Taken.Pending());
        }
      }
    }
    return taken;
  }

  private Taken effect(Entry entry, Place place, Placement placement) {
    byte[] hash = ContentHash.of(entry);
    return switch (applied.effect(entry.club(), entry.envelope().id(), place, hash)) {
      case RECORDED -> new Taken.Recorded(placement.waitsFor(fact(entry)));
      case REPEATED -> new Taken.Repeated();
      case CONTRADICTED -> new Taken.Contradicted();
    };
  }

  private Fact<?> fact(Entry entry) {
    TrainingEvent event =
        Objects.requireNonNull(codec.decode(entry.type(), JsonText.object(entry.data())));
    Moment moment = new Moment(entry.envelope().time().toInstant(), entry.envelope().id());
    return new Fact<>(moment, entry.recorded(), event, entry.sealed());
  }
}
