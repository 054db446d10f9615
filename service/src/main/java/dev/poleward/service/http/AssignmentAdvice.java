package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.programme.DocumentFault;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.programme.ProgrammeInForce;
import dev.poleward.service.codec.Writing;
import java.util.List;

/**
 * What of an assignment could not be followed. No event is refused for what is or is not known, so
 * that reads have to say it.
 */
final class AssignmentAdvice {

  private AssignmentAdvice() {}

  /** Empty where all was followed as it was said. */
  static List<ObjectNode> of(ProgrammeInForce inForce) {
    return switch (inForce) {
      case ProgrammeInForce.Unassigned _ -> List.of();
      case ProgrammeInForce.Assigned it -> {
        String start = it.assigned().event().startStage();
        yield start == null || it.startStage().isPresent()
            ? List.of()
            : List.of(advice("start-stage-unknown", startUnknown(start, it.programme())));
      }
      case ProgrammeInForce.Unreadable it ->
          List.of(
              advice("document-faulty", faulty(it.published().event().programme(), it.faults())));
    };
  }

  private static String startUnknown(String start, Programme programme) {
    return "Start stage %s is not in this programme, %s in version %d: nothing is passed over."
        .formatted(start, programme.id(), programme.version());
  }

  private static String faulty(String programme, List<DocumentFault> faults) {
    DocumentFault first = faults.getFirst();
    String more = faults.size() == 1 ? "" : ", and %d more".formatted(faults.size() - 1);
    return "The document of %s has faults and is not followed: %s %s%s."
        .formatted(programme, first.pointer(), first.detail(), more);
  }

  private static ObjectNode advice(String matter, String text) {
    return new Writing().put("matter", matter).put("text", text).done();
  }
}
