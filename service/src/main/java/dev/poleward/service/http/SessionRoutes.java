package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.event.SessionEvent.SessionAttended;
import dev.poleward.domain.event.SessionEvent.SessionOpened;
import dev.poleward.domain.event.SessionEvent.SetupChanged;
import dev.poleward.domain.record.DogIdentity;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Moment;
import dev.poleward.domain.record.PlacedRep;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.Registry;
import dev.poleward.domain.record.SessionRecord;
import dev.poleward.domain.record.View;
import dev.poleward.service.http.Asked.ById;
import dev.poleward.service.http.Asked.ByMoment;
import dev.poleward.service.http.ClubReads.Reader;
import java.util.List;
import java.util.function.Function;

/** Sessions, whole and in parts. Safe for use by many threads. */
final class SessionRoutes {

  private final ClubReads reads;
  private final SessionShape shape;
  private final RepList repList;

  SessionRoutes(ClubReads reads, SessionShape shape, RepList repList) {
    this.reads = reads;
    this.shape = shape;
    this.repList = repList;
  }

  /** A session in a view, and what places its reps there. */
  private record InView(SessionRecord session, Placement placement) {

    DogIdentity dogs() {
      return placement.identity();
    }
  }

  /** {@code GET …/sessions}. */
  Answer sessions(Call call) {
    return reads.read(
        call, (same, reader) -> Asked.byMoment(same, asked -> sessions(same, reader, asked)));
  }

  private Answer sessions(Call call, Reader reader, ByMoment asked) {
    View view = asked.view();
    int limit = asked.limit();
    Registry registry = new Registry(new Placement(reader.reading().facts(), view), view);
    ObjectNode body = JsonNodeFactory.instance.objectNode();
    ArrayNode items = body.putArray("sessions");
    Moment last = asked.after();
    while (true) {
      List<Fact<SessionOpened>> openings = reader.reading().facts().sessionsOpened(last, limit);
      for (Fact<SessionOpened> opening : openings) {
        if (items.size() == limit && last != null) {
          return new Page<>(List.of(), Cursors.written(last)).linked(call, Answer.json(200, body));
        }
        registry.sessionOpenedBy(opening).ifPresent(session -> items.add(shape.inList(session)));
        last = opening.moment();
      }
      if (openings.size() < limit) {
        return Answer.json(200, body);
      }
    }
  }

  /** {@code GET …/sessions/{session}}. */
  Answer session(Call call) {
    return reads.read(
        call,
        (same, reader) ->
            Asked.inView(
                same,
                view ->
                    found(
                        same,
                        reader,
                        view,
                        known ->
                            Answer.json(
                                200,
                                shape.asItStands(
                                    reader, known.session(), reps(reader, known), known.dogs())))));
  }

  /** {@code GET …/sessions/{session}/reps}. */
  Answer reps(Call call) {
    return reads.read(
        call,
        (same, reader) ->
            Asked.byMoment(
                same,
                asked ->
                    found(
                        same,
                        reader,
                        asked.view(),
                        known -> repList.page(same, reader, reps(reader, known), asked))));
  }

  /** {@code GET …/sessions/{session}/setups}. */
  Answer setups(Call call) {
    return reads.read(
        call,
        (same, reader) ->
            Asked.byMoment(
                same,
                asked -> found(same, reader, asked.view(), known -> setups(same, known, asked))));
  }

  private Answer setups(Call call, InView known, ByMoment asked) {
    Page<Fact<SetupChanged>> page = Page.of(known.session().setups(), Fact::moment, asked);
    return page.listed(call, "setups", shape::setup);
  }

  /** {@code GET …/sessions/{session}/attendance}. */
  Answer attendance(Call call) {
    return reads.read(
        call,
        (same, reader) ->
            Asked.byId(
                same,
                asked ->
                    found(
                        same,
                        reader,
                        asked.view(),
                        known -> attendance(same, reader, known, asked))));
  }

  private Answer attendance(Call call, Reader reader, InView known, ById asked) {
    Function<Fact<SessionAttended>, String> dog = fact -> known.dogs().of(fact.event().dog());
    List<Fact<SessionAttended>> visible =
        known.session().attendance().stream()
            .filter(fact -> reader.maySee(known.dogs(), dog.apply(fact)))
            .toList();
    return Page.of(visible, dog, asked)
        .listed(call, "attendance", fact -> shape.attendance(fact, dog.apply(fact)));
  }

  private static List<PlacedRep> reps(Reader reader, InView known) {
    List<PlacedRep> all =
        known.placement().inSession(known.session().opened().standing().event().session());
    return reader.mayTouchEveryDog()
        ? all
        : all.stream().filter(rep -> reader.maySee(known.dogs(), rep.dog())).toList();
  }

  private static Answer found(Call call, Reader reader, View view, Function<InView, Answer> then) {
    Placement placement = new Placement(reader.reading().facts(), view);
    return new Registry(placement, view)
        .session(call.inPath("session"))
        .filter(session -> view.happened(session.opened().standing()))
        .map(session -> then.apply(new InView(session, placement)))
        .orElseGet(() -> call.refused(ProblemKind.NOT_FOUND, "There is no such session."));
  }
}
