package dev.poleward.service.projection;

import dev.poleward.domain.event.DogEvent.DogMerged;
import dev.poleward.domain.event.EventWithdrawn;
import dev.poleward.domain.event.RepEvent.RepAmended;
import dev.poleward.domain.event.RepEvent.RepLogged;
import dev.poleward.domain.event.SessionEvent.SessionOpened;
import dev.poleward.domain.event.TimingEvent;
import dev.poleward.domain.event.TimingEvent.TimingPaired;
import dev.poleward.domain.event.TimingEvent.TimingRecorded;
import dev.poleward.domain.event.TimingEvent.TimingUnpaired;
import dev.poleward.domain.event.TrainingEvent;
import dev.poleward.domain.record.Announcement;
import dev.poleward.domain.record.EntityKind;
import dev.poleward.domain.record.EntityRef;
import dev.poleward.domain.record.Filing;
import dev.poleward.domain.record.Moment;
import dev.poleward.domain.record.References;
import dev.poleward.service.journal.Entry;
import dev.poleward.service.journal.Place;
import dev.poleward.service.projection.EventRow.EntityRow;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * What one event of the journal does to the rows. For one thread, over one batch of rows that is
 * written whole.
 */
final class Fold {

  /** Other contents that are kept as rows for each event id; all of them stay in the journal. */
  static final int CONTRADICTIONS_KEPT = 100;

  private final PendingRows rows;

  Fold(PendingRows rows) {
    this.rows = rows;
  }

  /** Whether all that an event names can be part of a key. */
  static boolean canFile(TrainingEvent event) {
    for (EntityRef reference : References.of(event)) {
      if (!RowKeys.canHold(reference)) {
        return false;
      }
    }
    return RowKeys.canHold(Announcement.of(event)) && RowKeys.canHold(Filing.of(event));
  }

  /** Applies an event that this version understands. */
  void apply(Entry entry, TrainingEvent event, Place place) {
    byte[] hash = ContentHash.of(entry);
    EventRow before = rows.event(entry.club(), entry.envelope().id());
    if (before == null) {
      record(entry, event, place, hash);
    } else if (ContentHash.same(before.hash(), hash)) {
      rows.put(entry.club(), entry.envelope().id(), before.repeatedOnceMore());
    } else {
      contradict(entry, before);
    }
  }

  private void contradict(Entry entry, EventRow before) {
    EventRow after = before.contradictedOnceMore();
    rows.put(entry.club(), entry.envelope().id(), after);
    if (after.contradicted() <= CONTRADICTIONS_KEPT) {
      rows.put(
          RowKeys.contradiction(entry.club(), entry.envelope().id(), after.contradicted()),
          Rows.asItCame(entry, entry.recorded()));
    }
  }

  private void record(Entry entry, TrainingEvent event, Place place, byte[] hash) {
    String club = entry.club();
    ClubRow before = rows.club(club);
    Instant recorded = recorded(entry, before);
    long position = before.position() + 1;
    rows.put(club, entry.envelope().id(), new EventRow(position, place.offset(), hash, 0, 0));
    byte[] whole = Rows.whole(entry, event, recorded);
    feed(entry, event, position, whole);
    byte[] fact = Rows.factOf(whole);
    boolean secondLogging = announce(club, event, position, recorded);
    boolean correction = secondLogging || isCorrection(event);
    if (correction) {
      rows.put(RowKeys.correction(club, position), fact);
    }
    file(entry, event, fact);
    if (refersToUnknown(club, event, recorded)) {
      rows.put(RowKeys.unmet(club, position), new byte[0]);
    }
    rows.put(
        club,
        new ClubRow(
            position,
            recorded.isAfter(before.latestRecorded()) ? recorded : before.latestRecorded(),
            before.corrections() + (correction ? 1 : 0)));
  }

  /** Recording times never decrease, whichever node's clock they came from; given ones hold. */
  private static Instant recorded(Entry entry, ClubRow club) {
    if (entry.recordedGiven() || entry.recorded().isAfter(club.latestRecorded())) {
      return entry.recorded();
    }
    return club.latestRecorded();
  }

  /** Reps are read most, by dog: they stand there, and the feed only says where. */
  private void feed(Entry entry, TrainingEvent event, long position, byte[] whole) {
    String club = entry.club();
    if (event instanceof RepLogged rep) {
      Moment moment = new Moment(entry.envelope().time().toInstant(), entry.envelope().id());
      byte[] key = RowKeys.repOfDog(club, rep.dog(), moment);
      rows.put(key, whole);
      rows.put(RowKeys.feed(club, position), Rows.pointer(key));
    } else {
      rows.put(RowKeys.feed(club, position), whole);
    }
  }

  private static boolean isCorrection(TrainingEvent event) {
    return event instanceof EventWithdrawn
        || event instanceof RepAmended
        || event instanceof DogMerged
        || event instanceof TimingPaired
        || event instanceof TimingUnpaired;
  }

  /** Notes an announcement; true when it is a further logging of a rep. */
  private boolean announce(String club, TrainingEvent event, long position, Instant recorded) {
    EntityRef announced = Announcement.of(event);
    if (announced == null) {
      return false;
    }
    if (rows.entity(club, announced) != null) {
      return announced.kind() == EntityKind.REP;
    }
    rows.put(club, announced, new EntityRow(position, recorded));
    return false;
  }

  private void file(Entry entry, TrainingEvent event, byte[] fact) {
    String club = entry.club();
    Moment moment = new Moment(entry.envelope().time().toInstant(), entry.envelope().id());
    EntityRef filed = Filing.of(event);
    if (filed != null) {
      rows.put(RowKeys.about(club, filed, moment), fact);
    }
    if (event instanceof SessionOpened) {
      rows.put(RowKeys.opening(club, moment), fact);
    }
    if (event instanceof TimingRecorded timing) {
      rows.put(RowKeys.timingOf(club, timing.device(), moment), fact);
    }
    if (event instanceof RepLogged rep) {
      rows.putOnce(RowKeys.dayInSession(club, rep.session(), rep.dog(), moment.time()));
    }
  }

  /**
   * Whether something referred to was not recorded by then. Where it was applied before but
   * recorded later, as an import in another order may bring it, a look back in time finds it
   * missing too.
   */
  private boolean refersToUnknown(String club, TrainingEvent event, Instant recorded) {
    for (EntityRef reference : References.of(event)) {
      if (reference.kind() == EntityKind.REP && event instanceof TimingEvent) {
        // So that a rep's withdrawal finds its timings; its amendments are among the corrections.
        return true;
      }
      Instant known = knownSince(club, reference);
      if (known == null || known.isAfter(recorded)) {
        return true;
      }
    }
    return false;
  }

  private @Nullable Instant knownSince(String club, EntityRef reference) {
    if (reference.kind() == EntityKind.EVENT) {
      // An event id's recording time is in its feed row; a look there is not worth it for so few.
      return rows.event(club, reference.id()) == null ? null : Instant.MAX;
    }
    EntityRow entity = rows.entity(club, reference);
    return entity == null ? null : entity.recorded();
  }
}
