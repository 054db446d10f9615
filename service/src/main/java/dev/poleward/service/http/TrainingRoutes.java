package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.event.SessionEvent.SessionOpened;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Moment;
import dev.poleward.domain.record.PlacedRep;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.Registry;
import dev.poleward.domain.record.SessionRecord;
import dev.poleward.domain.record.View;
import dev.poleward.service.http.ClubReads.Reader;
import dev.poleward.service.render.CsvTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reps of a dog, and sessions. Safe for use by many threads. */
final class TrainingRoutes {

  private static final Set<String> VIEW = Set.of("asOf", "knownAt");
  private static final Set<String> LIST = Set.of("asOf", "knownAt", "limit", "cursor");

  private final ClubReads reads;
  private final PlacedReps placed;
  private final RepShape repShape;
  private final SessionShape sessionShape;

  TrainingRoutes(ClubReads reads, PlacedReps placed, RepShape repShape, SessionShape sessionShape) {
    this.reads = reads;
    this.placed = placed;
    this.repShape = repShape;
    this.sessionShape = sessionShape;
  }

  /** {@code GET …/dogs/{dog}/reps}. */
  Answer reps(Call call) {
    return reads.read(call, this::reps);
  }

  private Answer reps(Call call, Reader reader) {
    Parameters parameters = new Parameters(call, LIST);
    View view = parameters.view();
    int limit = parameters.limit();
    Moment after = Cursors.moment(parameters);
    Optional<Problem> problem = parameters.problem();
    if (problem.isPresent()) {
      return call.refused(problem.get());
    }
    String dog = call.inPath("dog");
    Placement placement = new Placement(reader.reading().facts(), view);
    if (!reader.maySee(placement.identity(), dog)
        || new Registry(placement, view).dog(dog).isEmpty()) {
      return call.refused(ProblemKind.NOT_FOUND, "There is no such dog.");
    }
    List<PlacedRep> all = placed.ofDog(reader, placement, view, dog);
    Page<ObjectNode> page = page(reader, all, after, limit);
    return page.linked(call, shown(call.form(), page.items()));
  }

  private Page<ObjectNode> page(
      Reader reader, List<PlacedRep> all, @Nullable Moment after, int limit) {
    int first = after == null ? 0 : firstAfter(all, after);
    int end = Math.min(all.size(), first + limit);
    List<ObjectNode> items = new ArrayList<>(end - first);
    for (PlacedRep rep : all.subList(first, end)) {
      items.add(repShape.of(reader.personal(), rep));
    }
    return new Page<>(items, end < all.size() ? Cursors.written(all.get(end - 1).moment()) : null);
  }

  private static int firstAfter(List<PlacedRep> ascending, Moment after) {
    int low = 0;
    int high = ascending.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (ascending.get(middle).moment().compareTo(after) <= 0) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private static Answer shown(String form, List<ObjectNode> reps) {
    if (form.equals(CsvTable.CSV)) {
      return Answer.text(CsvTable.CSV + "; charset=utf-8", RepTable.of(reps));
    }
    ObjectNode body = JsonNodeFactory.instance.objectNode();
    ArrayNode items = body.putArray("reps");
    reps.forEach(items::add);
    return Answer.json(200, body);
  }

  /** {@code GET …/sessions}. */
  Answer sessions(Call call) {
    return reads.read(call, this::sessions);
  }

  private Answer sessions(Call call, Reader reader) {
    Parameters parameters = new Parameters(call, LIST);
    View view = parameters.view();
    int limit = parameters.limit();
    Moment after = Cursors.moment(parameters);
    Optional<Problem> problem = parameters.problem();
    if (problem.isPresent()) {
      return call.refused(problem.get());
    }
    Registry registry = new Registry(new Placement(reader.reading().facts(), view), view);
    ObjectNode body = JsonNodeFactory.instance.objectNode();
    ArrayNode items = body.putArray("sessions");
    Moment last = after;
    while (true) {
      List<Fact<SessionOpened>> openings = reader.reading().facts().sessionsOpened(last, limit);
      for (Fact<SessionOpened> opening : openings) {
        if (items.size() == limit && last != null) {
          return new Page<>(List.of(), Cursors.written(last)).linked(call, Answer.json(200, body));
        }
        standing(registry, opening, view)
            .ifPresent(session -> items.add(sessionShape.inList(session)));
        last = opening.moment();
      }
      if (openings.size() < limit) {
        return Answer.json(200, body);
      }
    }
  }

  /** The session of an opening, when it is that opening which stands. */
  private static Optional<SessionRecord> standing(
      Registry registry, Fact<SessionOpened> opening, View view) {
    return registry
        .session(opening.event().session())
        .filter(session -> session.opened().standing().id().equals(opening.id()))
        .filter(session -> view.happened(session.opened().standing()));
  }

  /** {@code GET …/sessions/{session}}. */
  Answer session(Call call) {
    return reads.read(call, this::session);
  }

  private Answer session(Call call, Reader reader) {
    Parameters parameters = new Parameters(call, VIEW);
    View view = parameters.view();
    Optional<Problem> problem = parameters.problem();
    if (problem.isPresent()) {
      return call.refused(problem.get());
    }
    String id = call.inPath("session");
    Placement placement = new Placement(reader.reading().facts(), view);
    return new Registry(placement, view)
        .session(id)
        .filter(session -> view.happened(session.opened().standing()))
        .map(
            session ->
                Answer.json(
                    200,
                    sessionShape.asItStands(
                        reader, session, placement.inSession(id), placement.identity())))
        .orElseGet(() -> call.refused(ProblemKind.NOT_FOUND, "There is no such session."));
  }
}
