package dev.poleward.load.drill;

import com.fasterxml.jackson.databind.JsonNode;
import dev.poleward.load.figures.Report;
import dev.poleward.load.training.Sending;
import dev.poleward.load.wire.ClubClient;
import java.io.IOException;
import java.time.Instant;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Holds what a club's record says against what its writers know: all that was answered is there
 * once and as it was sent, and nothing is there that nobody sent. For one thread.
 */
final class RecordCheck {

  private final ClubClient reader;
  private final List<Writer> writers;
  private final Faults faults;

  RecordCheck(ClubClient reader, List<Writer> writers, Faults faults) {
    this.reader = reader;
    this.writers = writers;
    this.faults = faults;
  }

  /** Looks at everything; returns the feed. */
  List<JsonNode> look() throws IOException {
    List<JsonNode> feed = reader.feed();
    Map<String, JsonNode> byId = new HashMap<>();
    for (JsonNode event : feed) {
      String id = event.get("id").asText();
      faults.unless(byId.put(id, event) == null, "event %s is in the feed twice", id);
    }
    long position = reader.get("").orThrow().json().get("position").asLong();
    faults.unless(
        position == feed.size(), "the position is %d of %d events", position, feed.size());
    checkRecordingTimes(feed);
    for (Writer writer : writers) {
      checkKept(writer, byId);
      checkReps(writer);
    }
    checkNothingElse(feed);
    return feed;
  }

  private void checkRecordingTimes(List<JsonNode> feed) {
    Instant last = Instant.MIN;
    for (JsonNode event : feed) {
      Instant recorded = Instant.parse(event.get("recordedtime").asText());
      faults.unless(
          !recorded.isBefore(last),
          "event %s was recorded before the one before it",
          event.get("id"));
      last = recorded;
    }
  }

  private void checkKept(Writer writer, Map<String, JsonNode> byId) {
    long missing = 0;
    for (Sending sent : writer.kept()) {
      JsonNode there = byId.get(sent.id());
      if (there == null) {
        missing++;
      } else {
        Sending found = Sending.ofFeed(there);
        faults.unless(found.equals(sent), "sent was %s, there is %s", sent, found);
      }
    }
    faults.unless(
        missing == 0, "%d events of %s were answered and are missing", missing, writer.dog());
    long there = writer.unanswered().stream().filter(event -> byId.containsKey(event.id())).count();
    if (there > 0 && there < writer.unanswered().size()) {
      Report.note(
          "%s: %d of %d events without an answer are there",
          writer.dog(), there, writer.unanswered().size());
    }
  }

  private void checkReps(Writer writer) throws IOException {
    if (writer.kept().isEmpty()) {
      return;
    }
    Map<String, Long> reps =
        reader.all("/dogs/" + writer.dog() + "/reps?limit=1000", "reps").stream()
            .collect(Collectors.groupingBy(rep -> rep.get("rep").asText(), Collectors.counting()));
    reps.forEach(
        (rep, times) -> faults.unless(times == 1, "rep %s is listed %d times", rep, times));
    long missing =
        writer.kept().stream()
            .filter(event -> event.type().equals("rep.logged.v1"))
            .filter(event -> !reps.containsKey(event.id()))
            .count();
    faults.unless(
        missing == 0, "%d reps of %s were answered and are not listed", missing, writer.dog());
  }

  private void checkNothingElse(List<JsonNode> feed) {
    Set<String> sent = new HashSet<>();
    for (Writer writer : writers) {
      writer.kept().forEach(event -> sent.add(event.id()));
      writer.unanswered().forEach(event -> sent.add(event.id()));
    }
    long others =
        feed.stream()
            .filter(event -> ShuffledCopy.isCopied(event.get("type").asText()))
            .filter(event -> !sent.contains(event.get("id").asText()))
            .count();
    faults.unless(others == 0, "%d events are there that nobody sent", others);
  }
}
