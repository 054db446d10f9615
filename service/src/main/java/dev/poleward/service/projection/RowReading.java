package dev.poleward.service.projection;

import dev.poleward.domain.event.TrainingEvent;
import dev.poleward.domain.record.Digest;
import dev.poleward.domain.record.Facts;
import dev.poleward.service.codec.CanonicalJson;
import dev.poleward.service.codec.EventCodec;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A reading from rows. For one thread. */
final class RowReading implements Reading {

  private final String club;
  private final long position;
  private final RowSnapshot snapshot;
  private final Rows rows;
  private final RowFacts facts;
  private final EventCodec codec;

  RowReading(
      String club,
      long position,
      RowSnapshot snapshot,
      Rows rows,
      RowFacts facts,
      EventCodec codec) {
    this.club = club;
    this.position = position;
    this.snapshot = snapshot;
    this.rows = rows;
    this.facts = facts;
    this.codec = codec;
  }

  @Override
  public String club() {
    return club;
  }

  @Override
  public long position() {
    return position;
  }

  @Override
  public Facts facts() {
    return facts;
  }

  @Override
  public List<FeedEvent> feed(long after, int limit) {
    List<FeedEvent> found = new ArrayList<>();
    long last = Math.min(position, after + limit);
    for (long at = after + 1; at <= last; at++) {
      found.add(rows.readWhole(at, facts.atPosition(at)));
    }
    return found;
  }

  @Override
  public Optional<Fate> fate(String eventId) {
    byte @Nullable [] row = snapshot.get(RowKeys.event(club, eventId));
    if (row == null) {
      return Optional.empty();
    }
    EventRow event = EventRow.read(row);
    return Optional.of(
        new Fate(
            rows.readWhole(event.position(), facts.atPosition(event.position())),
            event.repeated(),
            event.contradicted(),
            contradictions(eventId)));
  }

  private List<Contradiction> contradictions(String eventId) {
    List<Contradiction> found = new ArrayList<>();
    byte[] prefix = RowKeys.contradictions(club, eventId).done();
    snapshot.scan(prefix, prefix, (_, row) -> found.add(rows.readContradiction(row)));
    return found;
  }

  @Override
  public DigestAnswer digest() {
    Digest digest = new Digest();
    byte[] prefix = RowKeys.events(club).done();
    snapshot.scan(
        prefix,
        prefix,
        (_, row) -> {
          add(digest, EventRow.read(row).position());
          return true;
        });
    return new DigestAnswer(digest.events(), digest.value());
  }

  private void add(Digest digest, long at) {
    FeedEvent recorded = rows.readWhole(at, facts.atPosition(at));
    TrainingEvent event = recorded.event();
    if (Digest.covers(event)) {
      digest.add(
          recorded.envelope().id(),
          recorded.type(),
          recorded.envelope().time().toInstant(),
          CanonicalJson.of(codec.encode(event)));
    }
  }

  @Override
  public void close() {
    snapshot.close();
  }
}
