package dev.poleward.domain.programme;

import dev.poleward.domain.programme.DocumentReading.Faulty;
import dev.poleward.domain.programme.DocumentReading.Sound;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Documents as a test writes them, with single quotes. */
final class Written {

  static final String ALONGSIDE = "[{'manoeuvre':'alongside'}]";
  static final String STRAIGHT = "{'clocks':['12:00']}";

  private Written() {}

  static Map<String, Object> document(String json) {
    return DocumentText.read(json.replace('\'', '"'));
  }

  /** A document of these stages, with further members of the programme. */
  static Map<String, Object> programmeOf(String members, String... stages) {
    return document(
        "{'programme':'grid','name':'Grid'%s,'stages':[%s]}"
            .formatted(members.isEmpty() ? "" : "," + members, String.join(",", stages)));
  }

  /** Four poles and nothing before them, straight on; with further members. */
  static String stage(String id, String... members) {
    return stageWith(id, "none", STRAIGHT, ALONGSIDE, members);
  }

  static String stageWith(
      String id, String leadIn, String entries, String handlings, String... members) {
    return "{'stage':'%s','poles':4,'leadIn':'%s','entries':%s,'handlings':%s%s}"
        .formatted(
            id,
            leadIn,
            entries,
            handlings,
            members.length == 0 ? "" : "," + String.join(",", members));
  }

  static String after(String... ids) {
    return "'prerequisites':['" + String.join("','", ids) + "']";
  }

  static Programme sound(Map<String, Object> document) {
    return switch (ProgrammeDocument.read(document)) {
      case Sound(Programme programme) -> programme;
      case Faulty faulty -> throw new AssertionError(faulty.faults());
    };
  }

  static List<DocumentFault> faults(Map<String, Object> document) {
    return switch (ProgrammeDocument.read(document)) {
      case Sound _ -> List.of();
      case Faulty(List<DocumentFault> faults) -> faults;
    };
  }

  /** The only stage of a programme of one. */
  static Stage onlyStage(String stage) {
    return sound(programmeOf("", stage)).stages().getFirst();
  }

  static Stage stageOf(Programme programme, String id) {
    return Objects.requireNonNull(programme.stage(id).orElse(null), id);
  }
}
