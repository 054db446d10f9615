package dev.poleward.load.drill;

import com.fasterxml.jackson.databind.JsonNode;
import dev.poleward.load.training.Sending;
import dev.poleward.load.wire.ClubClient;
import dev.poleward.load.wire.Reply;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Two handlers of a club, with names and notes that are found nowhere else; one is forgotten, the
 * other is there to show that a search finds what is there. For one thread.
 */
public final class ForgottenPerson {

  public static final String CLUB = "saltmarsh";

  private static final String FORGOTTEN = "handler-1";
  private static final String OTHER = "handler-2";
  private static final Instant BEGIN = Instant.parse("2026-05-04T17:00:00Z");

  private final ClubClient client;
  private final String word;

  /**
   * @param word letters that stand nowhere else
   */
  public ForgottenPerson(ClubClient client, String word) {
    this.client = client;
    this.word = word;
  }

  private String name() {
    return "Zdenková " + word;
  }

  private String email() {
    return word + "@saltmarsh.example";
  }

  private String note() {
    return "Seen by " + name() + ", who clapped.";
  }

  private String lateName() {
    return word + " under another name";
  }

  /** What must be in no file: names, address, note. */
  public Traces traces() {
    return new Traces().text(name()).text(email()).text(note()).text(word).text(lateName());
  }

  /** Registers both, with a rep that has a note. */
  public void register() throws IOException {
    client.sendAll(
        List.of(
            handler("h-1", FORGOTTEN, name(), email()),
            handler("h-2", OTHER, "Example Handler", "handler-2@saltmarsh.example"),
            sending("d-1", "dog.registered.v1", "{\"callName\":\"Juniper\",\"dog\":\"juniper\"}"),
            sending("s-1", "session.opened.v1", "{\"session\":\"s-1\"}"),
            rep("r-1", note())),
        10);
  }

  /** Handler who comes with a name. */
  private static Sending handler(String id, String handler, String name, String email) {
    return sending(
        id,
        "handler.registered.v1",
        "{\"email\":\"%s\",\"handler\":\"%s\",\"name\":\"%s\"}".formatted(email, handler, name));
  }

  private static Sending rep(String id, String note) {
    return sending(
        id,
        "rep.logged.v1",
        "{\"dog\":\"juniper\",\"handler\":\"%s\",\"manoeuvre\":\"recall\",\"note\":\"%s\",\"outcome\":\"clean\",\"rep\":\"%s\",\"session\":\"s-1\"}"
            .formatted(FORGOTTEN, note, id));
  }

  private static Sending sending(String id, String type, String data) {
    return new Sending(id, type, BEGIN, data);
  }

  /** The wrapped keys of the one who is forgotten, out of all that the topic has. */
  public static List<String> keysOfForgotten(Map<String, String> keys) {
    return keysOf(keys, FORGOTTEN);
  }

  /** The wrapped key of the other. */
  public static String keyOfOther(Map<String, String> keys) {
    return keysOf(keys, OTHER).getFirst();
  }

  private static List<String> keysOf(Map<String, String> keys, String person) {
    return keys.entrySet().stream()
        .filter(key -> key.getKey().startsWith(CLUB + "/" + person + "/"))
        .map(Map.Entry::getValue)
        .toList();
  }

  /** Where a reader sees the name: the handler, the rep and the feed. */
  public List<String> readable() throws IOException {
    return List.of(
            "/handlers/" + FORGOTTEN, "/handlers", "/dogs/juniper/reps", "/events?limit=1000")
        .stream()
        .filter(path -> shows(path))
        .collect(Collectors.toList());
  }

  private boolean shows(String path) {
    try {
      return client.get(path).orThrow().text().contains(word);
    } catch (IOException e) {
      throw new UncheckedIOException(path + " did not answer", e);
    }
  }

  /**
   * Forgets.
   *
   * @return by when the last copy of the key is gone, as the service says
   */
  public Instant forget() throws IOException {
    JsonNode answer = client.delete("/handlers/" + FORGOTTEN + "/personal-data").orThrow().json();
    return Instant.parse(answer.get("lastCopyGoneBy").asText());
  }

  /** Sends again what was sent, and something new: the one is known, the other is dropped. */
  public void sendLate(Faults faults) throws IOException {
    Reply again = client.send(handler("h-1", FORGOTTEN, name(), email()).body());
    faults.unless(again.status() == 200, "the same handler again: %s", again);
    Reply late = client.send(handler("h-3", FORGOTTEN, lateName(), email()).body());
    faults.unless(late.status() == 201, "a late handler: %s", late);
    Reply note = client.send(rep("r-2", note()).body());
    faults.unless(note.status() == 201, "a late note: %s", note);
  }

  /** Waits until a moment has passed. */
  public static void sleepUntil(Instant moment) throws InterruptedException {
    Duration left = Duration.between(Instant.now(), moment);
    if (left.isPositive()) {
      Thread.sleep(left.plusSeconds(1));
    }
  }
}
