package dev.poleward.service.http;

import static dev.poleward.service.http.Said.at;
import static dev.poleward.service.http.Said.event;
import static dev.poleward.service.http.Said.rep;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasKey;
import static org.hamcrest.Matchers.not;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.poleward.service.Club;
import dev.poleward.service.SharedService;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Recording times, and moving a club by its feed. */
@ExtendWith(SharedService.class)
class ImportTest {

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String EARLIER = ",'recordedtime':'2026-05-06T07:08:09.123456789+02:00'";

  private final Club club;

  ImportTest(Club club) {
    this.club = club;
  }

  private static String recordedTime(Club club, String event) {
    return club.get("/events/" + event).path("recordedtime");
  }

  @Test
  void whoManagesTheClubSaysWhenSomethingWasRecorded() {
    club.send(event("e-1", "session.opened.v1", at("18:00:00"), "{'session':'s-1'}", EARLIER))
        .then()
        .statusCode(201);

    assertThat(recordedTime(club, "e-1")).isEqualTo("2026-05-06T05:08:09.123456789Z");
  }

  /** Those that an import brings are kept as they are, whatever was recorded before. */
  @Test
  void recordingTimesOfTheServiceNeverDecrease() {
    for (int i = 0; i < 5; i++) {
      club.send(Said.dog("dog-" + i));
      club.send(event("e-" + i, "session.opened.v1", at("18:00:00"), "{'session':'s-1'}", EARLIER));
    }

    List<String> times =
        club.get("/events?after=2").path("events.findAll{it.id.startsWith('dog')}.recordedtime");
    assertThat(times).hasSize(5);
    assertThat(times.stream().map(Instant::parse).toList()).isSorted();
  }

  @Test
  void nobodyElseDoes() {
    Instant before = club.service().now().minusSeconds(1);
    club.withKey("writer", "'records:write'")
        .send(event("e-1", "session.opened.v1", at("18:00:00"), "{'session':'s-1'}", EARLIER))
        .then()
        .statusCode(201);

    assertThat(Instant.parse(recordedTime(club, "e-1"))).isAfter(before);
  }

  @Test
  void theFutureIsNotRecordedYet() {
    String future = club.service().now().plus(Duration.ofHours(1)).toString();
    String event =
        event(
            "e-1",
            "session.opened.v1",
            at("18:00:00"),
            "{'session':'s-1'}",
            ",'recordedtime':'" + future + "'");

    club.send(event)
        .then()
        .statusCode(400)
        .body("errors.pointer", contains("/recordedtime"))
        .body("errors[0].detail", containsString("future"));
    club.sendAll(List.of(event))
        .then()
        .body("refused[0].problem.errors.pointer", contains("/0/recordedtime"));
    club.withKey("writer", "'records:write'").send(event).then().statusCode(201);
  }

  @Test
  void onlyWhoManagesTheClubSaysThatMembersAreGone() {
    String gone =
        event("e-1", "rep.amended.v1", at("18:00:00"), "{'rep':'r-1'}", ",'forgotten':true");

    club.withKey("writer", "'records:write'").send(gone).then().statusCode(403);
    club.send(gone).then().statusCode(201);
    club.get("/events?after=3").then().body("events[0].forgotten", equalTo(true));
  }

  /** Another service would have pages of another size. */
  private static List<JsonNode> exported(Club from) throws IOException {
    List<JsonNode> events = new ArrayList<>();
    String path = from.path("/events?limit=3");
    while (true) {
      var page = from.given().get(path);
      JsonNode items = JSON.readTree(page.asString()).path("events");
      if (items.isEmpty()) {
        return events;
      }
      items.forEach(events::add);
      String link = page.header("Link");
      assertThat(link).endsWith(">; rel=\"next\"");
      path = link.substring(1, link.indexOf('>'));
    }
  }

  private static void moved(Club from, Club to, int ofTheService) throws IOException {
    List<String> events = exported(from).stream().map(JsonNode::toString).toList();
    to.sendAll(events)
        .then()
        .statusCode(200)
        .body("accepted", equalTo(events.size() - ofTheService))
        .body("refused.size()", equalTo(ofTheService));
    to.sendAll(events).then().body("repeated", equalTo(events.size() - ofTheService));
  }

  private void furnish() {
    EveryRoute.furnished(club)
        .record(
            event(
                "e-x",
                "trial.run.v1",
                at("18:00:00"),
                "{'dog':'juniper','poles':6,'outcome':'clean'}",
                ",'weather':'wet','subject':'x'"),
            rep("r-9", "s-9", "nobody", "18:30:00", ",'note':'kept','handler':'h-1','rewards':[]"),
            event("a-9", "rep.amended.v1", at("19:00:00"), "{'rep':'r-9','note':'only a note'}"),
            event(
                "w-9",
                "event.withdrawn.v1",
                at("19:00:00"),
                "{'event':'log-r-1','reason':'twice'}"));
  }

  private static List<JsonNode> withoutThoseOfTheService(List<JsonNode> events) {
    return events.stream()
        .filter(
            each -> {
              String type = each.path("type").textValue();
              return !type.equals("club.registered.v1")
                  && !type.startsWith("access-key.")
                  && !type.startsWith("person.");
            })
        .toList();
  }

  @Test
  void aClubMovesByItsFeed(Club other) throws IOException {
    furnish();

    moved(club, other, 3);

    assertThat(other.get("/digest").asString()).isEqualTo(club.get("/digest").asString());
    List<JsonNode> there = withoutThoseOfTheService(exported(other));
    List<JsonNode> here = withoutThoseOfTheService(exported(club));
    assertThat(strippedOfTimes(there)).isEqualTo(strippedOfTimes(here));
    for (String read : List.of("/waiting", "/handlers", "/dogs/juniper/reps", "/sessions/s-1")) {
      assertThat(other.get(read).asString()).isEqualTo(club.get(read).asString());
    }
  }

  /** Into a club that is older than what it is given, all times are kept. */
  @Test
  void recordingTimesMoveAlong(Club other) throws IOException {
    furnish();
    // The other club was registered before any of these was recorded.
    moved(club, other, 3);

    assertThat(withoutThoseOfTheService(exported(other)))
        .extracting(each -> each.path("recordedtime").textValue())
        .containsExactlyElementsOf(
            withoutThoseOfTheService(exported(club)).stream()
                .map(each -> each.path("recordedtime").textValue())
                .toList());
  }

  private static List<JsonNode> strippedOfTimes(List<JsonNode> events) {
    return events.stream()
        .map(
            each -> {
              JsonNode copy = each.deepCopy();
              ((com.fasterxml.jackson.databind.node.ObjectNode) copy).remove("recordedtime");
              return copy;
            })
        .toList();
  }

  @Test
  void whatIsForgottenMovesWithoutItsMembers(Club other) throws IOException {
    furnish();
    club.given().delete(club.path("/handlers/h-1/personal-data")).then().statusCode(200);

    moved(club, other, 4);

    assertThat(other.get("/digest").asString()).isEqualTo(club.get("/digest").asString());
    assertThat(strippedOfTimes(withoutThoseOfTheService(exported(other))))
        .isEqualTo(strippedOfTimes(withoutThoseOfTheService(exported(club))));
    other.get("/handlers/h-1").then().body("$", not(hasKey("name")));
  }

  @Test
  void theFeedAsLinesIsTheFeed() throws IOException {
    furnish();
    String lines =
        club.given()
            .header("Accept", "application/x-ndjson")
            .get(club.path("/events"))
            .then()
            .statusCode(200)
            .contentType(equalTo("application/x-ndjson"))
            .header("Link", containsString("after="))
            .extract()
            .asString();

    assertThat(lines).endsWith("}\n");
    List<JsonNode> read = new ArrayList<>();
    for (String line : lines.strip().split("\n", -1)) {
      read.add(JSON.readTree(line));
    }
    JsonNode events = JSON.readTree(club.get("/events").asString()).path("events");
    assertThat(read).isEqualTo(StreamSupport.stream(events.spliterator(), false).toList());
  }
}
