package dev.poleward.load.node;

import dev.poleward.load.figures.Report;
import dev.poleward.load.training.JournalFilling;
import dev.poleward.load.wire.ClubClient;
import java.io.IOException;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A service that knows many events of many clubs, none of which came through its HTTP. For one
 * thread.
 *
 * @param node runs, and has applied all of them
 * @param accessKeys access key of each club, by its id
 */
public record FilledNode(Node node, Map<String, String> accessKeys) {

  private static final Duration APPLIED_MAX = Duration.ofMinutes(5);

  /**
   * Fills a node that is ready.
   *
   * @param events of all clubs together; rounded down to a multiple of {@code clubs}
   */
  public static FilledNode fill(Node node, int events, int clubs) throws IOException {
    Map<String, String> accessKeys = new LinkedHashMap<>();
    for (int i = 0; i < clubs; i++) {
      String club = "saltmarsh-" + i;
      accessKeys.put(club, ClubClient.register(node.port(), node.hostKey(), club));
    }
    long begun = System.nanoTime();
    JournalFilling.fill(node.kafka(), List.copyOf(accessKeys.keySet()), events / clubs);
    double seconds = (System.nanoTime() - begun) / 1e9;
    Report.note("%d events in the journal after %.1f s", events, seconds);
    FilledNode filled = new FilledNode(node, accessKeys);
    filled.awaitApplied(events / clubs);
    Report.note("applied after %.1f s", (System.nanoTime() - begun) / 1e9);
    return filled;
  }

  private void awaitApplied(int eventsOfClub) throws IOException {
    long giveUpAt = System.nanoTime() + APPLIED_MAX.toNanos();
    for (String club : accessKeys.keySet()) {
      try (ClubClient client = client(club)) {
        while (position(client) < eventsOfClub) {
          if (System.nanoTime() > giveUpAt) {
            throw new IllegalStateException(club + " is not applied in " + APPLIED_MAX);
          }
          Thread.onSpinWait();
        }
      }
    }
  }

  private static long position(ClubClient client) throws IOException {
    return client.get("").orThrow().json().get("position").asLong();
  }

  /** A client of one of the clubs. */
  public ClubClient client(String club) throws IOException {
    String accessKey = accessKeys.get(club);
    if (accessKey == null) {
      throw new IllegalArgumentException("no club " + club);
    }
    return new ClubClient(node.port(), club, accessKey);
  }
}
