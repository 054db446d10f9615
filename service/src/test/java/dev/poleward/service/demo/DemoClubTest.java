package dev.poleward.service.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.hamcrest.Matchers.equalTo;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.service.Club;
import dev.poleward.service.RunningService;
import dev.poleward.service.SharedService;
import io.restassured.specification.RequestSpecification;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** The demo, over HTTP, against the real service. */
@ExtendWith(SharedService.class)
class DemoClubTest {

  private static final int SHORT = DemoClub.SHORT_SEASON_WEEKS;
  private static final Pattern COMMAND =
      Pattern.compile(
          "curl -sS(?<key> -H \"\\$auth\")?(?: -H 'Accept: (?<form>[^']+)')?.* \"(?<url>[^\"]+)\"");

  @TempDir private Path folder;
  private RunningService service;

  @BeforeEach
  void remember(RunningService running) {
    service = running;
  }

  private Path keyFile(String club) {
    return folder.resolve(club + ".key");
  }

  private Clock clockAfter(Duration passed) {
    return Clock.fixed(service.now().plus(passed), ZoneOffset.UTC);
  }

  private LocalDate firstDay(int weeks) {
    return LocalDate.ofInstant(service.now(), Season.ZONE).minusWeeks(weeks);
  }

  /** Starts the demo, and gives back what it prints. */
  private String shown(String club, int weeks, Clock clock)
      throws IOException, InterruptedException {
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    URI address = URI.create("http://127.0.0.1:" + service.port());
    try (PrintStream out = new PrintStream(printed, true, StandardCharsets.UTF_8);
        DemoClub demo = new DemoClub(address, club, keyFile(club), weeks, out)) {
      demo.show(service.hostKey(), clock);
    }
    return printed.toString(StandardCharsets.UTF_8);
  }

  private Club club(String id) throws IOException {
    return new Club(service, id, Files.readString(keyFile(id)));
  }

  private String digest(String id) throws IOException {
    return club(id).get("/digest").asString();
  }

  /** Registers a club as the demo does, and loses its key. */
  private Club registeredByTheDemo(String id, LocalDate firstDay) {
    String key =
        service
            .as(service.hostKey())
            .contentType("application/json")
            .body(
                """
                {"id": "demo-club", "club": "%s", "name": "Saltmarsh Weavers", \
                "timeZone": "Europe/Lisbon", "time": "%sT09:00:00+00:00"}\
                """
                    .formatted(id, firstDay))
            .post("/v1/clubs")
            .path("accessKey");
    return new Club(service, id, key);
  }

  private static List<String> written(List<ObjectNode> events) {
    return events.stream().map(ObjectNode::toString).toList();
  }

  private static void send(Club club, List<ObjectNode> events) {
    for (int from = 0; from < events.size(); from += 500) {
      club.sendAll(written(events.subList(from, Math.min(events.size(), from + 500))))
          .then()
          .statusCode(200);
    }
  }

  @Test
  void aWholeSeasonIsPostedAndEveryLineThatIsPrintedShowsSomething()
      throws IOException, InterruptedException {
    String printed = shown("whole-season", DemoClub.SEASON_WEEKS, clockAfter(Duration.ZERO));

    List<String> commands =
        printed.lines().map(String::strip).filter(line -> line.startsWith("curl")).toList();
    assertThat(commands).hasSizeGreaterThanOrEqualTo(10);
    for (String command : commands) {
      Matcher read = COMMAND.matcher(command);
      assertThat(read.matches()).as(command).isTrue();
      RequestSpecification asking =
          read.group("key") == null
              ? service.stranger()
              : service.as(Files.readString(keyFile("whole-season")));
      String form = read.group("form");
      String url =
          read.group("url")
              .replace(
                  "$api", "http://127.0.0.1:%d/v1/clubs/whole-season".formatted(service.port()));
      var answer = (form == null ? asking : asking.accept(form)).get(url);
      assertThat(answer.statusCode()).as(command).isEqualTo(200);
      assertThat(answer.asByteArray()).as(command).hasSizeGreaterThan(80);
    }
    club("whole-season")
        .given()
        .get(club("whole-season").path("/dogs/bracken/progress"))
        .then()
        .body("stages.find { it.stage == 'four-bare' }.state", equalTo("done"))
        .body("stages.find { it.stage == 'tunnel-straight' }.state", equalTo("open"));
    assertThat(printed.lines().takeWhile(line -> !line.isBlank())).hasSizeLessThan(15);
    assertThat(service.stranger().get("/docs").statusCode()).isEqualTo(200);
    assertThat(
            PosixFilePermissions.toString(Files.getPosixFilePermissions(keyFile("whole-season"))))
        .isEqualTo("rw-------");
  }

  @Test
  void aSecondStartWeeksLaterPostsNothing() throws IOException, InterruptedException {
    shown("twice", SHORT, clockAfter(Duration.ZERO));
    String before = digest("twice");

    String printed = shown("twice", SHORT, clockAfter(Duration.ofDays(20)));

    assertThat(printed).startsWith("The club is here already").doesNotContain("Posting");
    assertThat(digest("twice")).isEqualTo(before);
    assertThat(club("twice").get("/events/demo-00001").<Integer>path("repeated")).isZero();
  }

  @Test
  void whatAnEarlierStartDidNotComeToIsPosted() throws IOException, InterruptedException {
    shown("in-one-go", SHORT, clockAfter(Duration.ZERO));
    LocalDate firstDay = firstDay(SHORT);
    List<ObjectNode> season = OfflinePhones.asDelivered(Season.of(firstDay, SHORT));
    send(registeredByTheDemo("interrupted", firstDay), season.subList(0, 100));

    String printed = shown("interrupted", SHORT, clockAfter(Duration.ofDays(3)));

    assertThat(printed).startsWith("An earlier start was stopped half-way");
    assertThat(digest("interrupted")).isEqualTo(digest("in-one-go"));
  }

  @Test
  void phonesThatWereOutOfReachChangeNothing() throws IOException, InterruptedException {
    shown("mixed-up", SHORT, clockAfter(Duration.ZERO));
    LocalDate firstDay = firstDay(SHORT);
    Club inOrder = registeredByTheDemo("in-order", firstDay);
    send(inOrder, OfflinePhones.inOrder(Season.of(firstDay, SHORT)));

    Club mixedUp = club("mixed-up");
    assertThat(mixedUp.get("/digest").asString()).isEqualTo(inOrder.get("/digest").asString());
    for (String read :
        List.of("/dogs/juniper/angle-mastery", "/dogs/pebble/reps?limit=1000", "/waiting")) {
      assertThat(mixedUp.get(read).asString()).as(read).isEqualTo(inOrder.get(read).asString());
    }
  }

  @Test
  void aClubOfTheSameNameThatIsNotTheDemosIsLeftAlone() {
    Club other = service.newClub();

    assertThatThrownBy(() -> shown(other.id(), SHORT, clockAfter(Duration.ZERO)))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("is not the demo's")
        .hasMessageContaining("--data");
    assertThat(other.get("/digest").<Integer>path("events")).isZero();
  }

  @Test
  void itCanBePractised() throws IOException, InterruptedException {
    shown("practice", SHORT, clockAfter(Duration.ZERO));
    URI address = URI.create("http://127.0.0.1:" + service.port());
    int before = club("practice").get("/digest").path("events");
    try (DemoClub demo = new DemoClub(address, "practice", keyFile("practice"), 1, System.out)) {
      demo.practise(clockAfter(Duration.ZERO), 1);
    }

    assertThat(club("practice").get("/digest").<Integer>path("events")).isGreaterThan(before + 100);
  }
}
