package dev.poleward.service.demo;

import static dev.poleward.service.demo.Telling.data;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * How reps get logged: mostly right, now and then wrong and corrected later, twice, or by two
 * phones at once. For one thread.
 */
final class Mishaps {

  private static final int CORRECTED_ONE_IN = 90;
  private static final int WITHDRAWN_ONE_IN = 400;
  private static final int TWICE_ONE_IN = 300;

  /** Seconds by which two people's thumbs differ. */
  private static final int THUMBS_APART = 3;

  /** What is said once the evening is over. */
  private record Later(String source, String type, ObjectNode data) {}

  private final SplittableRandom chance;
  private final List<Later> later = new ArrayList<>();
  private int reps;

  Mishaps(SplittableRandom chance) {
    this.chance = chance;
  }

  /** Logs a rep that was run. */
  void log(Telling telling, DogInTraining dog, ObjectNode rep, OffsetDateTime time) {
    String source = dog.dog().phone();
    ObjectNode logged = named(rep);
    if (chance.nextInt(CORRECTED_ONE_IN) == 0 && logged.path("outcome").asText().equals("clean")) {
      logged.put("outcome", "popped-out");
      later.add(
          new Later(
              source,
              "rep.amended.v1",
              data().put("rep", logged.get("rep").textValue()).put("outcome", "clean")));
    }
    telling.tell(source, "rep.logged.v1", time, logged);
    if (chance.nextInt(WITHDRAWN_ONE_IN) == 0) {
      String slip = telling.tell(source, "rep.logged.v1", time.plusSeconds(9), named(rep));
      later.add(
          new Later(
              source,
              "event.withdrawn.v1",
              data().put("event", slip).put("reason", "Touched twice; there was one rep.")));
    }
    if (chance.nextInt(TWICE_ONE_IN) == 0) {
      String other = source.equals(Source.ODAS_PHONE) ? Source.RUBENS_PHONE : Source.ODAS_PHONE;
      ObjectNode seen = named(rep);
      seen.remove(List.of("rewards", "drive", "note"));
      seen.put("observer", other.equals(Source.ODAS_PHONE) ? DemoDog.ODA : DemoDog.RUBEN);
      telling.tell(other, "rep.logged.v1", time.plusSeconds(THUMBS_APART), seen);
    }
  }

  private ObjectNode named(ObjectNode rep) {
    return data().put("rep", "r-%04d".formatted(++reps)).setAll(rep);
  }

  /** Says what people corrected when they looked at the evening again. */
  void correct(Telling telling, OffsetDateTime time) {
    for (Later each : later) {
      telling.tell(each.source(), each.type(), time.plusMinutes(70), each.data());
    }
    later.clear();
  }
}
