package dev.poleward.service.http;

import static dev.poleward.service.http.Said.event;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasKey;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;

import dev.poleward.domain.programme.DefaultProgramme;
import dev.poleward.service.Club;
import dev.poleward.service.SharedService;
import dev.poleward.service.codec.Documents;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** The programme that ships, beside those that a club publishes. */
@ExtendWith(SharedService.class)
class ShippedProgrammeTest {

  private static final String STAGES =
      "'stages':[{'stage':'bare','poles':4,'leadIn':'none','entries':{'clocks':['12:00']},"
          + "'handlings':[{'manoeuvre':'send'}]}]";

  private final Club club;

  ShippedProgrammeTest(Club club) {
    this.club = club;
  }

  @BeforeEach
  void furnish() {
    club.record(Said.dog("juniper"), published("aaa"), published("zzz"));
  }

  private static String published(String id) {
    return event(
        "p-" + id,
        "programme.published.v1",
        "2026-05-01T09:00:00Z",
        "{'programme':'%s','name':'Ours',%s}".formatted(id, STAGES));
  }

  private static String assigned(String event, String programme, String stage) {
    return event(
        event,
        "programme.assigned.v1",
        "2026-05-02T09:00:00Z",
        "{'dog':'juniper','programme':'%s','startStage':'%s'}".formatted(programme, stage));
  }

  @Test
  void everyClubHasItAsItShips() {
    club.get("/programmes/poleward-default?asOf=1990-01-01T00:00:00Z&knownAt=1990-01-01T00:00:00Z")
        .then()
        .statusCode(200)
        .body("name", equalTo(DefaultProgramme.programme().name()))
        .body("version", equalTo(1))
        .body("stages.stage", hasItem("tunnel-turned"))
        .body("duplicates", empty())
        .body("$", not(hasKey("event")));
    assertThat(club.get("/programmes/poleward-default").<List<?>>path("stages"))
        .hasSize(Documents.write(DefaultProgramme.document()).get("stages").size());
  }

  @Test
  void itIsListedInItsPlace() {
    club.get("/programmes")
        .then()
        .body("programmes.programme", contains("aaa", "poleward-default", "zzz"));
    String second =
        club.get("/programmes?limit=1")
            .then()
            .body("programmes", hasSize(1))
            .extract()
            .header("Link");
    assertThat(second).contains("cursor=");
    String path = second.substring(second.indexOf('?'), second.indexOf('>'));
    club.get("/programmes" + path)
        .then()
        .body("programmes.programme", contains("poleward-default"));
  }

  @Test
  void nobodyPublishesUnderItsId() {
    club.given()
        .header("Content-Type", Club.EVENT)
        .body(published("poleward-default"))
        .post(club.path("/events"))
        .then()
        .statusCode(400)
        .body("errors.pointer", contains("/data/programme"));
  }

  @Test
  void itCanBeAssignedWithAStageToStartAt() {
    club.given()
        .header("Content-Type", Club.EVENT)
        .body(assigned("a-1", "poleward-default", "four-bare"))
        .post(club.path("/events"))
        .then()
        .statusCode(201)
        .body("status", equalTo("applied"));

    club.get("/dogs/juniper/progress")
        .then()
        .body("followed", equalTo("assigned"))
        .body("programme", equalTo("poleward-default"))
        .body("stage", equalTo("four-bare"))
        .body("advice", empty());
  }

  @Test
  void aStartStageThatIsNotThereIsTold() {
    club.record(assigned("a-1", "aaa", "baer"));

    club.get("/dogs/juniper/progress")
        .then()
        .statusCode(200)
        .body("followed", equalTo("assigned"))
        .body("stage", equalTo("bare"))
        .body("advice.matter", contains("start-stage-unknown"))
        .body(
            "advice[0].text",
            equalTo(
                "Start stage baer is not in this programme, aaa in version 1: nothing is passed"
                    + " over."));
    club.get("/dogs/juniper/progress?asOf=2026-05-01T10:00:00Z").then().body("advice", empty());
  }
}
