package dev.poleward.service.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.service.contract.Contract;
import dev.poleward.service.contract.Fault;
import dev.poleward.service.contract.ParsedBody;
import java.time.Duration;
import java.util.List;
import java.util.function.Function;

/** Reads bodies and has them judged. Safe for use by many threads. */
final class Bodies {

  private final Contract contract;
  private final BodyRoom room;

  Bodies(Contract contract) {
    this.contract = contract;
    this.room = new BodyRoom();
  }

  /** Answers as {@code then} does for a body that is JSON. */
  Answer parsed(Call call, Function<JsonNode, Answer> then) {
    int bytes = call.bodyBytesAtMost();
    if (!room.take(bytes)) {
      return call.refused(
          Problem.later(
              ProblemKind.JOURNAL_UNAVAILABLE,
              "Too many bodies are under way. Nothing of this one was kept; send it again.",
              Duration.ofSeconds(1)));
    }
    try {
      return read(call, then);
    } finally {
      room.giveBack(bytes);
    }
  }

  private Answer read(Call call, Function<JsonNode, Answer> then) {
    return switch (call.body()) {
      case Call.Body.Whole(byte[] bytes) -> parsed(call, bytes, then);
      case Call.Body.TooLarge _ ->
          call.refused(ProblemKind.TOO_LARGE, "A body holds 4 MiB at most.");
      case Call.Body.BrokenOff _ ->
          call.refused(Problem.inBody(List.of(new Fault("", "broke off before its end"))));
    };
  }

  private Answer parsed(Call call, byte[] body, Function<JsonNode, Answer> then) {
    return switch (contract.parse(body)) {
      case ParsedBody.Parsed parsed -> then.apply(parsed.tree());
      case ParsedBody.Unreadable unreadable -> call.refused(Problem.inBody(unreadable.faults()));
    };
  }

  /**
   * Answers as {@code then} does for a JSON body that is in order.
   *
   * @param component name of its schema in the contract
   */
  Answer judged(Call call, String component, Function<ObjectNode, Answer> then) {
    return json(
        call,
        tree -> {
          List<Fault> faults = contract.judge(component, tree);
          return faults.isEmpty() && tree instanceof ObjectNode body
              ? then.apply(body)
              : call.refused(Problem.inBody(faults));
        });
  }

  /** Answers as {@code then} does for a body that is sent as JSON, and is. */
  Answer json(Call call, Function<JsonNode, Answer> then) {
    return call.mediaType().equals(Answer.JSON)
        ? parsed(call, then)
        : call.refused(ProblemKind.UNSUPPORTED_MEDIA_TYPE, "Send " + Answer.JSON + ".");
  }
}
