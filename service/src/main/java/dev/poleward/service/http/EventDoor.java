package dev.poleward.service.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.service.access.Authentication.Identity;
import dev.poleward.service.access.Permission;
import dev.poleward.service.access.Scope;
import dev.poleward.service.contract.Contract;
import dev.poleward.service.contract.Fault;
import dev.poleward.service.contract.Judgement;
import dev.poleward.service.contract.SentEvent;
import dev.poleward.service.http.Intake.Outcome;
import dev.poleward.service.http.Intake.Taken;
import dev.poleward.service.projection.ClubReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Where events come in, one or a batch: structured, binary or batched CloudEvents. Safe for use by
 * many threads.
 */
final class EventDoor {

  /** Most events of a batch. */
  static final int BATCH_MAX = 1_000;

  private static final Set<Scope> ANY_WRITE =
      Set.of(Scope.RECORDS_WRITE, Scope.TIMING_PUSH, Scope.CLUB_MANAGE);
  private static final String STRUCTURED = "application/cloudevents+json";
  private static final String BATCHED = "application/cloudevents-batch+json";

  private final Gate gate;
  private final Contract contract;
  private final Bodies bodies;
  private final Admission admission;
  private final Intake intake;
  private final ClubReader clubs;

  EventDoor(
      Gate gate,
      Contract contract,
      Bodies bodies,
      Admission admission,
      Intake intake,
      ClubReader clubs) {
    this.gate = gate;
    this.contract = contract;
    this.bodies = bodies;
    this.admission = admission;
    this.intake = intake;
    this.clubs = clubs;
  }

  /** {@code POST /v1/clubs/{club}/events}. */
  Answer post(Call call) {
    String club = call.inPath("club");
    return gate.inClub(call, club, ANY_WRITE, identity -> admitted(call, club, identity));
  }

  private Answer admitted(Call call, String club, Identity identity) {
    if (Permission.asHost(identity) && !ClubReads.isRegistered(clubs, club)) {
      return call.refused(ProblemKind.NOT_FOUND, "There is no such club.");
    }
    return switch (call.mediaType()) {
      case STRUCTURED ->
          bodies.parsed(call, tree -> one(call, club, identity, contract.judgeEvent("", tree)));
      case BATCHED -> bodies.parsed(call, tree -> batch(call, club, identity, tree));
      case Answer.JSON ->
          call.header("ce-specversion").isPresent()
              ? bodies.parsed(
                  call,
                  data ->
                      one(call, club, identity, contract.judgeBinaryEvent(call.headers(), data)))
              : call.refused(
                  ProblemKind.UNSUPPORTED_MEDIA_TYPE,
                  "As "
                      + Answer.JSON
                      + " the body is the data of one event and the ce- headers"
                      + " its attributes. Without those, send "
                      + STRUCTURED
                      + " or "
                      + BATCHED
                      + ".");
      default ->
          call.refused(
              ProblemKind.UNSUPPORTED_MEDIA_TYPE,
              "Send " + STRUCTURED + ", " + BATCHED + ", or " + Answer.JSON + " with ce- headers.");
    };
  }

  private Answer one(Call call, String club, Identity identity, Judgement judgement) {
    return switch (judgement) {
      case Judgement.Refused refused -> call.refused(Problem.inBody(refused.faults()));
      case Judgement.Accepted accepted ->
          switch (admission.of(club, identity, "", accepted.event())) {
            case Admission.Admitted admitted -> taken(call, club, admitted.event());
            case Admission.Turned turned -> call.refused(turned.problem());
          };
    };
  }

  private Answer taken(Call call, String club, SentEvent event) {
    return switch (intake.take(club, List.of(event))) {
      case Outcome.NotKept notKept -> call.refused(notKept.problem());
      case Outcome.Done done -> answer(call, club, event, done.taken().getFirst());
    };
  }

  private static Answer answer(Call call, String club, SentEvent event, Taken taken) {
    String id = event.envelope().id();
    return switch (taken) {
      case Taken.Recorded recorded ->
          Answer.json(201, EventAnswers.recorded(id, recorded.waitsFor()))
              .with("Location", EventAnswers.fateOf(club, id));
      case Taken.Repeated _ -> Answer.json(200, EventAnswers.repeated(id));
      case Taken.Pending _ ->
          Answer.json(202, EventAnswers.pending(id))
              .with("Location", EventAnswers.fateOf(club, id));
      case Taken.Contradicted _ ->
          call.refused(
              ProblemKind.CONTRADICTED,
              "Event "
                  + id
                  + " was recorded before with other content; that stands, and this is"
                  + " kept beside it. See "
                  + EventAnswers.fateOf(club, id)
                  + ".");
    };
  }

  private Answer batch(Call call, String club, Identity identity, JsonNode tree) {
    if (!(tree instanceof ArrayNode items)) {
      return call.refused(Problem.inBody(List.of(new Fault("", "must be an array of events"))));
    }
    if (items.size() > BATCH_MAX) {
      return call.refused(ProblemKind.TOO_LARGE, "A batch holds 1,000 events at most.");
    }
    Batch batch = new Batch();
    for (int index = 0; index < items.size(); index++) {
      judge(batch, index, club, identity, items.get(index));
    }
    if (batch.events.isEmpty()) {
      return Answer.json(200, batch.document());
    }
    return switch (intake.take(club, batch.events)) {
      case Outcome.NotKept notKept -> call.refused(notKept.problem());
      case Outcome.Done done -> {
        done.taken().forEach(batch::count);
        yield Answer.json(batch.pending > 0 ? 202 : 200, batch.document());
      }
    };
  }

  private void judge(Batch batch, int index, String club, Identity identity, JsonNode item) {
    String prefix = "/" + index;
    switch (contract.judgeEvent(prefix, item)) {
      case Judgement.Refused refused -> batch.refuse(index, Problem.inBody(refused.faults()));
      case Judgement.Accepted accepted -> {
        switch (admission.of(club, identity, prefix, accepted.event())) {
          case Admission.Admitted admitted -> batch.add(index, admitted.event());
          case Admission.Turned turned -> batch.refuse(index, turned.problem());
        }
      }
    }
  }

  /** A batch on its way. */
  private static final class Batch {
    private final List<SentEvent> events = new ArrayList<>();
    private final List<Integer> indexes = new ArrayList<>();
    private final ArrayNode contradicted = JsonNodeFactory.instance.arrayNode();
    private final ArrayNode refused = JsonNodeFactory.instance.arrayNode();
    private int counted;
    private int accepted;
    private int repeated;
    private int waiting;
    private int pending;

    void add(int index, SentEvent event) {
      events.add(event);
      indexes.add(index);
    }

    void refuse(int index, Problem problem) {
      refused.addObject().put("index", index).set("problem", problem.document(null));
    }

    void count(Taken taken) {
      int at = counted++;
      switch (taken) {
        case Taken.Recorded recorded -> {
          accepted++;
          waiting += recorded.waitsFor().isEmpty() ? 0 : 1;
        }
        case Taken.Repeated _ -> repeated++;
        case Taken.Pending _ -> pending++;
        case Taken.Contradicted _ ->
            contradicted
                .addObject()
                .put("index", indexes.get(at))
                .put("id", events.get(at).envelope().id());
      }
    }

    ObjectNode document() {
      ObjectNode document =
          JsonNodeFactory.instance
              .objectNode()
              .put("accepted", accepted)
              .put("repeated", repeated)
              .put("waiting", waiting)
              .put("pending", pending);
      document.set("contradicted", contradicted);
      document.set("refused", refused);
      return document;
    }
  }
}
