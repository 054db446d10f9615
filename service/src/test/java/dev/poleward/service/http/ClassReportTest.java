package dev.poleward.service.http;

import static dev.poleward.service.http.Said.at;
import static dev.poleward.service.http.Said.event;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsInAnyOrder;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.nullValue;

import dev.poleward.service.Club;
import dev.poleward.service.SharedService;
import io.restassured.response.ValidatableResponse;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** The report of a class, as it is answered. What it says is tried in the domain. */
@ExtendWith(SharedService.class)
class ClassReportTest {

  private static final String REPORT = "/classes/evening/report?asOf=2026-05-10T12:00:00Z";
  private static final String BARE =
      ",'setup':{'poles':4,'spacing':0.6,'leadIn':'none','angle':0},'rewards':[]";

  private final Club club;

  ClassReportTest(Club club) {
    this.club = club;
  }

  @BeforeEach
  void furnish() {
    club.record(
        Said.dog("juniper"),
        Said.dog("bracken"),
        Said.handler("h-1", "First Example"),
        event(
            "c",
            "class.formed.v1",
            "2026-01-10T10:00:00Z",
            "{'class':'evening','name':'Evening','instructor':'h-1'}"),
        event("j-1", "class.joined.v1", at("10:00:00"), "{'class':'evening','dog':'juniper'}"),
        event("j-2", "class.joined.v1", at("10:00:00"), "{'class':'evening','dog':'bracken'}"),
        event("o", "session.opened.v1", at("18:00:00"), "{'session':'s-1','class':'evening'}"),
        Said.setup("up", "s-1", "18:01:00", 0, ""),
        event(
            "a-2",
            "session.attended.v1",
            at("18:00:00"),
            "{'session':'s-1','dog':'bracken','present':false}"),
        Said.rep("r-1", "s-1", "juniper", "18:05:00", BARE),
        Said.rep("r-2", "s-1", "juniper", "18:06:00", ",'help':'lure'"));
  }

  private ValidatableResponse read(String query) {
    return club.get("/classes/evening/report" + query).then();
  }

  @Test
  void theClassAndEveryDogHaveAPage() {
    club.get(REPORT)
        .then()
        .statusCode(200)
        .body("from", equalTo("2026-04-13"))
        .body("to", equalTo("2026-05-10"))
        .body("instructor", equalTo("h-1"))
        .body("narrowed", equalTo(false))
        .body("page.sessions.session", contains("s-1"))
        .body("page.sessions[0].present", equalTo(1))
        .body("page.sessions[0].absent", equalTo(1))
        .body("page.sessions[0].members.dog", contains("bracken", "juniper"))
        .body("page.sessions[0].members[0].noted", equalTo(false))
        .body("page.reps.reps", equalTo(1))
        .body("page.reps.helped", equalTo(1))
        .body("page.reps.cleanShare.share", equalTo(1))
        .body("page.equipment.stoodSeconds", equalTo(300))
        .body("page.notKnown.matter", contains("reps"))
        .body("dogs.dog", contains("bracken", "juniper"))
        .body("dogs[1].attended[0].presence", equalTo("present"))
        .body("dogs[1].end.followed", equalTo("by-default"))
        .body("dogs[1].lagging.verdict", equalTo("cannot-tell"))
        .body("dogs[1].sides.before.status", contains("not-enough-reps", "not-enough-reps"))
        .body("dogs[1].atHome.kind", equalTo("proposed"))
        .body("dogs[1].load.mostGaps.gapsLimit", equalTo(24))
        .body("dogs[1].load.mostGaps.age", equalTo("unknown"))
        .body("dogs[1].notKnown.matter", hasItem("few-reps"))
        .body("dogs[0].notKnown.matter", hasItem("reps"))
        .body("dogs[0].faults.all.share", nullValue());
  }

  @Test
  void theDaysAreThoseAskedFor() {
    read("?asOf=2026-05-10T12:00:00Z&from=2026-05-05")
        .statusCode(200)
        .body("page.sessions", empty())
        .body("page.notKnown.matter", contains("sessions", "reps"))
        .body("dogs", hasSize(2));
    read("?from=2026-04-01&to=2026-05-03").statusCode(200).body("dogs", empty());
    read("?from=2025-05-05&to=2026-05-05").statusCode(200).body("dogs", hasSize(2));
  }

  @Test
  void whatCannotBeIsRefusedAllAtOnce() {
    read("?from=2026-05-05&to=2026-05-04")
        .statusCode(400)
        .body("errors.pointer", hasSize(1))
        .body("errors[0].detail", containsString("must not be after to"));
    read("?from=2025-05-04&to=2026-05-05")
        .statusCode(400)
        .body("errors[0].detail", containsString("366 days"));
    read("?asOf=2026-05-10T12:00:00Z&to=2026-05-11&from=2026-05-12&dog=juniper")
        .statusCode(400)
        .body("errors", hasSize(3));
    read("?from=yesterday&to=2026-02-30").statusCode(400).body("errors", hasSize(2));
    club.get("/classes/morning/report").then().statusCode(404);
  }

  @Test
  void aNarrowedKeyGetsThePagesOfItsDogsAlone() {
    Club pupil = club.withKey("pupil", "'records:read'", "'dogs':['juniper']");

    String answer =
        pupil
            .get(REPORT)
            .then()
            .statusCode(200)
            .body("narrowed", equalTo(true))
            .body("page", nullValue())
            .body("dogs.dog", contains("juniper"))
            .extract()
            .asString();

    assertThat(answer).doesNotContain("bracken");
    // What one was told is not told to the other.
    club.get(REPORT).then().body("dogs.dog", containsInAnyOrder("bracken", "juniper"));
  }

  @Test
  void asATableEachDogIsARow() {
    String table =
        club.given()
            .header("Accept", "text/csv")
            .get(club.path(REPORT))
            .then()
            .statusCode(200)
            .extract()
            .asString();

    List<String> lines = table.lines().toList();
    assertThat(lines).hasSize(3);
    assertThat(lines.getFirst()).startsWith("class,from,to,dog,callName,guest,present,absent");
    assertThat(lines.getFirst()).endsWith("atHome,notKnown");
    assertThat(lines.get(1))
        .startsWith("evening,2026-04-13,2026-05-10,bracken,bracken,false,0,1,0");
    assertThat(lines.get(2))
        .startsWith("evening,2026-04-13,2026-05-10,juniper,juniper,false,1,0,0,1,1,1,1,1,0,1,");
    // The columns are those that the contract lists.
    String described =
        FlatContract.OPENAPI
            .at("/paths/~1v1~1clubs~1{club}~1classes~1{class}~1report/get/description")
            .asText()
            .replaceAll("\\s+", " ");
    assertThat(described).contains("in this order: " + lines.getFirst().replace(",", ", ") + ".");
  }
}
