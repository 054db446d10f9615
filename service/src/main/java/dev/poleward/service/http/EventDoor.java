package dev.poleward.service.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.service.access.Scope;
import dev.poleward.service.contract.Contract;
import dev.poleward.service.contract.Fault;
import dev.poleward.service.contract.Judgement;
import dev.poleward.service.contract.SentEvent;
import dev.poleward.service.http.EventReception.Sender;
import dev.poleward.service.http.Intake.Outcome;
import dev.poleward.service.http.Intake.Taken;
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

  private final Contract contract;
  private final Bodies bodies;
  private final EventReception reception;
  private final Admission admission;
  private final Intake intake;

  EventDoor(
      Contract contract,
      Bodies bodies,
      EventReception reception,
      Admission admission,
      Intake intake) {
    this.contract = contract;
    this.bodies = bodies;
    this.reception = reception;
    this.admission = admission;
    this.intake = intake;
  }

  /** {@code POST /v1/clubs/{club}/events}. */
  Answer post(Call call) {
    return reception.letIn(call, ANY_WRITE, sender -> received(call, sender));
  }

  private Answer received(Call call, Sender sender) {
    return switch (call.mediaType()) {
      case STRUCTURED ->
          bodies.parsed(call, tree -> one(call, sender, contract.judgeEvent("", tree)));
      case BATCHED -> bodies.parsed(call, tree -> batch(call, sender, tree));
      case Answer.JSON ->
          call.header("ce-specversion").isPresent()
              ? bodies.parsed(
                  call, data -> one(call, sender, contract.judgeBinaryEvent(call.headers(), data)))
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

  private Answer one(Call call, Sender sender, Judgement judgement) {
    return reception.receive(
        call,
        sender,
        judgement,
        event -> EventAnswers.fateOf(sender.club(), event.envelope().id()));
  }

  private Answer batch(Call call, Sender sender, JsonNode tree) {
    if (!(tree instanceof ArrayNode items)) {
      return call.refused(Problem.inBody(List.of(new Fault("", "must be an array of events"))));
    }
    if (items.size() > BATCH_MAX) {
      return call.refused(ProblemKind.TOO_LARGE, "A batch holds 1,000 events at most.");
    }
    Batch batch = new Batch();
    for (int index = 0; index < items.size(); index++) {
      judge(batch, index, sender, items.get(index));
    }
    if (batch.events.isEmpty()) {
      return Answer.json(200, batch.document());
    }
    return switch (intake.take(sender.club(), batch.events)) {
      case Outcome.NotKept notKept -> call.refused(notKept.problem());
      case Outcome.Done done -> {
        done.taken().forEach(batch::count);
        yield Answer.json(batch.pending > 0 ? 202 : 200, batch.document());
      }
    };
  }

  private void judge(Batch batch, int index, Sender sender, JsonNode item) {
    String prefix = "/" + index;
    switch (contract.judgeEvent(prefix, item)) {
      case Judgement.Refused refused -> batch.refuse(index, Problem.inBody(refused.faults()));
      case Judgement.Accepted accepted -> {
        switch (admission.of(sender.club(), sender.identity(), prefix, accepted.event())) {
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
