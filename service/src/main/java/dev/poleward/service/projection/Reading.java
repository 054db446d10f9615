package dev.poleward.service.projection;

import dev.poleward.domain.event.Envelope;
import dev.poleward.domain.event.TrainingEvent;
import dev.poleward.domain.record.Facts;
import dev.poleward.domain.record.Sealed;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One club as it was when the reading was opened: what is applied meanwhile does not show. For one
 * thread; to be closed.
 */
public interface Reading extends AutoCloseable {

  /**
   * An event as it was first recorded.
   *
   * @param position 1 for the club's first recorded event
   * @param type today's type, in which its data is told, whatever it was recorded as
   */
  record FeedEvent(
      long position,
      Envelope envelope,
      String type,
      TrainingEvent event,
      Instant recorded,
      @Nullable Sealed sealed) {}

  /** Other content that came under a recorded event's id; kept, without effect. */
  record Contradiction(Envelope envelope, String type, String data, Instant recorded) {}

  /**
   * What became of an event.
   *
   * @param repeated how often the same came again
   * @param contradictions the first 100 of what else came under its id
   * @param contradicted how often other content came under its id
   */
  record Fate(
      FeedEvent event, long repeated, long contradicted, List<Contradiction> contradictions) {}

  /** The club's id. */
  String club();

  /** Number of the club's recorded events: what ETags are made of, and the feed's cursor. */
  long position();

  /** What is recorded of the club. */
  Facts facts();

  /** Recorded events in the order of recording, those after {@code after}. */
  List<FeedEvent> feed(long after, int limit);

  /** What became of an event; empty when none of that id is applied. */
  Optional<Fate> fate(String eventId);

  /** Fingerprint of the record. */
  DigestAnswer digest();

  /** A fingerprint and how many events it covers. */
  record DigestAnswer(long events, String digest) {}

  @Override
  void close();
}
