package dev.poleward.load.drill;

import com.fasterxml.jackson.databind.JsonNode;
import dev.poleward.load.training.Sending;
import dev.poleward.load.wire.ClubClient;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/**
 * The events of a feed sent to another club in any order, some of them several times, in requests
 * of any size: what is known must come out the same.
 */
public final class ShuffledCopy {

  private static final int REPEATED_OF = 5;
  private static final int BATCH_MAX = 300;

  private ShuffledCopy() {}

  /** Whether events of a type can be copied: not what only the service writes. */
  public static boolean isCopied(String type) {
    return !type.startsWith("club.")
        && !type.startsWith("access-key.")
        && !type.startsWith("person.");
  }

  /** Sends the copy. */
  public static void send(List<JsonNode> feed, ClubClient to, long seed) throws IOException {
    Random random = new Random(seed);
    List<Sending> events = new ArrayList<>();
    for (JsonNode event : feed) {
      if (isCopied(event.get("type").asText())) {
        Sending sending = Sending.ofFeed(event);
        events.add(sending);
        if (random.nextInt(REPEATED_OF) == 0) {
          events.add(sending);
        }
      }
    }
    Collections.shuffle(events, random);
    int sent = 0;
    while (sent < events.size()) {
      int end = Math.min(events.size(), sent + 1 + random.nextInt(BATCH_MAX));
      to.sendAll(events.subList(sent, end), BATCH_MAX);
      sent = end;
    }
  }
}
