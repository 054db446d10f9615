package dev.poleward.service.demo;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * The order in which events arrive. Two phones are out of reach for some weeks in the middle of the
 * season; what they logged then comes late, all mixed up and some of it twice. All else arrives as
 * it happens.
 */
final class OfflinePhones {

  private static final long SEED = 77;

  /** When a phone is out of reach, as parts of the season. */
  private record Gap(double from, double to) {}

  private static final Map<String, Gap> GAPS =
      Map.of(Source.ODAS_PHONE, new Gap(0.42, 0.55), Source.RUBENS_PHONE, new Gap(0.45, 0.58));

  /** Both are back by then. */
  private static final double BACK = 0.6;

  private static final int TWICE_ONE_IN = 12;

  private OfflinePhones() {}

  /** When an event happened. */
  static OffsetDateTime time(ObjectNode event) {
    return OffsetDateTime.parse(event.get("time").textValue());
  }

  /** All of them as they happened. */
  static List<ObjectNode> inOrder(List<ObjectNode> season) {
    return season.stream().sorted(Comparator.comparing(OfflinePhones::time)).toList();
  }

  /** All of them as they arrive. */
  static List<ObjectNode> asDelivered(List<ObjectNode> season) {
    List<ObjectNode> inOrder = inOrder(season);
    OffsetDateTime begin = time(inOrder.getFirst());
    Duration length = Duration.between(begin, time(inOrder.getLast()));
    List<ObjectNode> held = new ArrayList<>();
    List<ObjectNode> delivered = new ArrayList<>();
    int back = -1;
    for (ObjectNode event : inOrder) {
      double when = (double) Duration.between(begin, time(event)).toSeconds() / length.toSeconds();
      Gap gap = GAPS.get(event.get("source").textValue());
      if (gap != null && when >= gap.from() && when < gap.to()) {
        held.add(event);
        continue;
      }
      if (back < 0 && when >= BACK) {
        back = delivered.size();
      }
      delivered.add(event);
    }
    delivered.addAll(back, mixedUp(held));
    return List.copyOf(delivered);
  }

  private static List<ObjectNode> mixedUp(List<ObjectNode> held) {
    List<ObjectNode> sent = new ArrayList<>(held);
    for (int i = 0; i < held.size(); i += TWICE_ONE_IN) {
      sent.add(held.get(i));
    }
    Collections.shuffle(sent, new Random(SEED));
    return sent;
  }
}
