package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.record.DogIdentity;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.View;
import dev.poleward.domain.record.Waiting;
import dev.poleward.domain.record.Waiting.WaitingEvent;
import dev.poleward.service.access.Scope;
import dev.poleward.service.codec.EventCodec;
import dev.poleward.service.codec.Writing;
import dev.poleward.service.http.Asked.ByMoment;
import dev.poleward.service.http.ClubReads.Marking;
import dev.poleward.service.http.ClubReads.Reader;
import dev.poleward.service.projection.Reading.DigestAnswer;
import dev.poleward.service.projection.Reading.Fate;
import dev.poleward.service.projection.Reading.FeedEvent;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** The record itself: feed, fates, digest, what waits. Safe for use by many threads. */
final class RecordRoutes {

  static final String NDJSON = "application/x-ndjson";
  private static final Set<Scope> READ = Set.of(Scope.RECORDS_READ);
  private static final long POSITION_MAX = 9_007_199_254_740_991L;

  private final ClubReads reads;
  private final FeedShape feedShape;
  private final FateShape fateShape;
  private final PendingEvents pending;

  RecordRoutes(ClubReads reads, FeedShape feedShape, FateShape fateShape, PendingEvents pending) {
    this.reads = reads;
    this.feedShape = feedShape;
    this.fateShape = fateShape;
    this.pending = pending;
  }

  /** {@code GET …/events}. */
  Answer feed(Call call) {
    return reads.ofWholeClub(call, this::feed);
  }

  private Answer feed(Call call, Reader reader) {
    long position = reader.reading().position();
    Parameters parameters = new Parameters(call, Set.of("after", "limit"));
    long after = parameters.whole("after", 0, POSITION_MAX, 0);
    int limit = parameters.limit();
    if (after > position) {
      parameters.whole("after", 0, position, 0);
    }
    Optional<Problem> problem = parameters.problem();
    if (problem.isPresent()) {
      return call.refused(problem.get());
    }
    List<FeedEvent> events = reader.reading().feed(after, limit);
    long next = events.isEmpty() ? after : events.getLast().position();
    return Page.link(
        call,
        call.form().equals(NDJSON) ? lines(reader, events) : document(reader, events, next),
        "after",
        Long.toString(next));
  }

  private Answer lines(Reader reader, List<FeedEvent> events) {
    StringBuilder lines = new StringBuilder();
    events.forEach(event -> lines.append(feedShape.of(reader.personal(), event)).append('\n'));
    return new Answer(200, NDJSON, lines.toString().getBytes(StandardCharsets.UTF_8), Map.of());
  }

  private Answer document(Reader reader, List<FeedEvent> events, long next) {
    ObjectNode body = JsonNodeFactory.instance.objectNode();
    ArrayNode items = body.putArray("events");
    events.forEach(event -> items.add(feedShape.of(reader.personal(), event)));
    return Answer.json(200, body.put("position", next));
  }

  /** {@code GET …/events/{event}}. */
  Answer fate(Call call) {
    return reads.read(call, READ, Marking.BY_CONTENT, this::fate);
  }

  private Answer fate(Call call, Reader reader) {
    String id = call.inPath("event");
    Optional<Fate> fate = reader.reading().fate(id);
    if (fate.isEmpty()) {
      return pending.contains(reader.club(), id)
          ? Answer.json(200, FateShape.pending(id))
          : call.refused(ProblemKind.NOT_FOUND, "No event of this id is recorded.");
    }
    if (reader.mayTouchEveryDog()) {
      return Answer.json(200, fateShape.of(reader.reading().facts(), fate.get()));
    }
    DogIdentity dogs = new Placement(reader.reading().facts(), View.EVERYTHING).identity();
    Predicate<String> visible = dog -> reader.maySee(dogs, dog);
    return feedShape.concerns(fate.get().event(), visible)
        ? Answer.json(
            200, fateShape.of(reader.reading().facts(), feedShape.onlyOf(fate.get(), visible)))
        : call.refused(ProblemKind.NOT_FOUND, "No event of this id is recorded.");
  }

  /** {@code GET …/digest}. */
  Answer digest(Call call) {
    return reads.remembered(call, (_, _) -> "", ClubReads.ofWholeClub(this::digest));
  }

  private Answer digest(Call call, Reader reader) {
    Optional<Problem> problem = new Parameters(call, Set.of()).problem();
    if (problem.isPresent()) {
      return call.refused(problem.get());
    }
    DigestAnswer digest = reader.reading().digest();
    return Answer.json(
        200, new Writing().put("events", digest.events()).put("digest", digest.digest()).done());
  }

  /** {@code GET …/waiting}. */
  Answer waiting(Call call) {
    return reads.ofWholeClub(call, this::waiting);
  }

  private Answer waiting(Call call, Reader reader) {
    return Asked.byMoment(call, asked -> waiting(call, reader, asked));
  }

  private static Answer waiting(Call call, Reader reader, ByMoment asked) {
    List<WaitingEvent> all = Waiting.of(reader.reading().facts(), asked.view());
    return Page.of(all, each -> each.fact().moment(), asked)
        .listed(call, "waiting", RecordRoutes::waiting);
  }

  private static ObjectNode waiting(WaitingEvent waiting) {
    return new Writing()
        .put("id", waiting.fact().id())
        .put("type", EventCodec.typeOf(waiting.fact().event()))
        .putPrinted("time", waiting.fact().time())
        .done()
        .set("waitsFor", EventAnswers.waitsFor(waiting.waitsFor()));
  }
}
