package dev.poleward.service.demo;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.programme.DefaultProgramme;
import dev.poleward.service.codec.Documents;
import java.util.List;

/**
 * The invented club's own programme: the default one, by the hour and alongside on four poles, and
 * moved on from as its trainer does, after five of six.
 */
final class DemoProgramme {

  static final String ID = "saltmarsh-way";

  /** Stages that are run from every hour. */
  private static final List<String> BY_THE_HOUR = List.of("four-bare", "four-jump");

  private static final List<String> HOURS = List.of("12:00", "1:00", "11:00", "2:00", "10:00");

  private static final List<String> SIDES = List.of("left", "right");

  private DemoProgramme() {}

  static ObjectNode document() {
    ObjectNode document = Documents.write(DefaultProgramme.document());
    document.put("programme", ID).put("name", "The Saltmarsh way round the clock");
    document.put(
        "description",
        "From every hour to 2 and 10 o'clock, alongside, five of six to move on. Invented.");
    document
        .putObject("rule")
        .put("method", "k-of-n")
        .put("k", 5)
        .put("n", 6)
        .put("stepBackAfter", 3);
    for (JsonNode stage : document.get("stages")) {
      if (BY_THE_HOUR.contains(stage.get("stage").textValue())) {
        ArrayNode clocks = ((ObjectNode) stage).putObject("entries").putArray("clocks");
        HOURS.forEach(clocks::add);
        ArrayNode handlings = ((ObjectNode) stage).putArray("handlings");
        SIDES.forEach(
            side -> handlings.addObject().put("manoeuvre", "alongside").put("dogSide", side));
      }
    }
    return document;
  }
}
