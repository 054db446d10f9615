package dev.poleward.service.http;

import static dev.poleward.service.http.Said.at;
import static dev.poleward.service.http.Said.event;
import static dev.poleward.service.http.Said.rep;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsInAnyOrder;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasKey;
import static org.hamcrest.Matchers.not;

import dev.poleward.service.Club;
import dev.poleward.service.SharedService;
import io.restassured.response.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** What a dog has run, as clients ask for it. */
@ExtendWith(SharedService.class)
class ProgressTest {

  private static final String JUNIPER = "/dogs/juniper/progress";
  private static final String TUNNEL_FROM_45 =
      ",'setup':{'poles':4,'spacing':0.6,'leadIn':'tunnel','leadInDistance':4.7,'angle':45}";
  private static final String WRAP_FROM_THE_GAP =
      ",'setup':{'poles':6,'spacing':0.6,'leadIn':'jump','leadInDistance':4.7,'angle':-12.5}"
          + ",'backChainStep':'wrap','jumpTurn':'left'";

  private final Club club;

  ProgressTest(Club club) {
    this.club = club;
  }

  @BeforeEach
  void furnish() {
    club.record(Said.dog("juniper"), Said.dog("bracken"), Said.session("s-1", "18:00:00"));
  }

  @Test
  void registrationsHoldAtAnyTimeAndAreKnownFromTheirRecordingOn() {
    train();

    club.get(JUNIPER + "?asOf=1990-01-01T00:00:00Z")
        .then()
        .statusCode(200)
        .body("totals.reps", equalTo(0))
        .body("stage", equalTo("three-bare"));
    club.get("/dogs/juniper?asOf=1990-01-01T00:00:00Z").then().statusCode(200);
    club.get(JUNIPER + "?knownAt=1990-01-01T00:00:00Z").then().statusCode(404);
    club.get("/dogs/juniper?knownAt=1990-01-01T00:00:00Z").then().statusCode(404);
  }

  /** Ten that count and one that was helped from the left; one that was helped from the right. */
  private void train() {
    List<String> events = new ArrayList<>();
    for (int i = 0; i < 10; i++) {
      String outcome = i < 8 ? "clean" : i == 8 ? "popped-out" : "missed-entry";
      events.add(run("r-" + i, "18:1%d:00".formatted(i), outcome, TUNNEL_FROM_45));
    }
    events.add(run("helped", "18:05:00", "clean", TUNNEL_FROM_45 + ",'help':'lure'"));
    events.add(run("other", "18:06:00", "clean", WRAP_FROM_THE_GAP + ",'help':'cue'"));
    events.add(run("void", "18:30:00", "void", TUNNEL_FROM_45));
    events.add(run("no-setup", "18:31:00", "clean", ",'angle':45"));
    events.add(
        run("no-angle", "18:32:00", "clean", ",'setup':{'poles':4,'spacing':0.6,'leadIn':'none'}"));
    club.record(events.toArray(String[]::new));
  }

  private static String run(String rep, String time, String outcome, String more) {
    return rep(rep, "s-1", "juniper", time, ",'dogSide':'left'" + more)
        .replace("\"outcome\":\"clean\"", "\"outcome\":\"" + outcome + "\"");
  }

  private Response table(String path) {
    return club.given().header("Accept", "text/csv").get(club.path(path));
  }

  @Test
  void aDogWithoutAProgrammeStandsInTheDefaultOne() {
    club.get(JUNIPER)
        .then()
        .statusCode(200)
        .body("programme", equalTo("poleward-default"))
        .body("followed", equalTo("by-default"))
        .body("stage", equalTo("three-bare"))
        .body("finished", equalTo(false))
        .body("rungs.size()", equalTo(59))
        .body("drills.size()", equalTo(211))
        .body("drills.state.unique()", contains("untouched"))
        .body("next.angle", contains(0))
        .body("next.why", contains("frontier"));
  }

  @Test
  void aRungIsMovedOnFromWithItsEvidenceAndTheNextHasItsTurn() {
    List<String> events = new ArrayList<>();
    String bare = ",'setup':{'poles':3,'spacing':0.6,'leadIn':'none','angle':0}";
    for (int i = 0; i < 10; i++) {
      String side = i % 2 == 0 ? ",'dogSide':'left'" : ",'dogSide':'right'";
      events.add(rep("r-" + i, "s-1", "juniper", "18:1%d:00".formatted(i), side + bare));
    }
    events.add(
        rep("r-10", "s-1", "juniper", "18:20:00", bare)
            .replace("\"manoeuvre\":\"alongside\"", "\"manoeuvre\":\"recall\""));
    club.record(events.toArray(String[]::new));

    club.get(JUNIPER)
        .then()
        .statusCode(200)
        .body("rungs[0].verdict", equalTo("move-on"))
        .body("rungs[0].state", equalTo("due"))
        .body("rungs[0].movedOn", equalTo("2026-05-04T18:20:00Z"))
        .body("next.why", contains("due", "frontier", "frontier"))
        .body("next.angle", contains(0, 30, -30));
    club.get(JUNIPER + "?asOf=2026-05-04T18:15:30Z")
        .then()
        .statusCode(200)
        .body("agedTo", equalTo("2026-05-04"))
        .body("rungs[0].verdict", equalTo("undecided"))
        .body("rungs[0].evidence", equalTo(Map.of("clean", 6, "missed", 0)))
        .body("rungs[0].missing.manoeuvre", contains("recall"))
        .body(
            "rungs[0].reason",
            equalTo("6 of 6 clean so far; 1 more clean rep would decide: recall."))
        .body("rungs[0].testPassed", equalTo(false))
        .body("next.why", contains("frontier"));
    club.get(JUNIPER + "?asOf=2026-05-04T18:16:30Z")
        .then()
        .statusCode(200)
        .body("rungs[0].verdict", equalTo("undecided"))
        .body("rungs[0].testPassed", equalTo(true))
        .body("rungs[0].cleanRepsToDecide", equalTo(1))
        .body(
            "rungs[0].reason",
            equalTo("The test is through, with 7 of 7 clean; still to be clean: recall."));
  }

  @Test
  void eachDrillHasItsCountsAndTheOneRunLastComesFirst() {
    train();

    club.get(JUNIPER)
        .then()
        .statusCode(200)
        .body("dog", equalTo("juniper"))
        .body(
            "totals", equalTo(Map.of("drills", 2, "reps", 10, "clean", 8, "made", 9, "helped", 2)))
        .body("notPlaced", equalTo(2))
        .body("voided", equalTo(1))
        .body("omitted", equalTo(0))
        .body(
            "ran[0].drill",
            equalTo(
                Map.of(
                    "poles", 4,
                    "leadIn", "tunnel",
                    "entrySide", "pole",
                    "angle", 45,
                    "clock", "1:30",
                    "manoeuvre", "alongside",
                    "dogSide", "left")))
        .body("ran[0].reps", equalTo(10))
        .body("ran[0].clean", equalTo(8))
        .body("ran[0].made", equalTo(9))
        .body("ran[0].cleanShare.share", equalTo(0.8f))
        // Wilson's formula by hand [D].
        .body("ran[0].cleanShare.lower", equalTo(0.49016247f))
        .body("ran[0].cleanShare.upper", equalTo(0.94331785f))
        .body("ran[0].recent", equalTo(Map.of("clean", 8, "of", 10)))
        .body("ran[0].helped", equalTo(1))
        .body("ran[0].first", equalTo("2026-05-04T18:05:00Z"))
        .body("ran[0].last", equalTo("2026-05-04T18:19:00Z"))
        .body(
            "ran[1].drill",
            equalTo(
                Map.of(
                    "poles", 6,
                    "leadIn", "jump",
                    "backChainStep", "wrap",
                    "jumpTurn", "left",
                    "entrySide", "gap",
                    "angle", -12.5f,
                    "manoeuvre", "alongside",
                    "dogSide", "left")))
        .body("ran[1].reps", equalTo(0))
        .body("ran[1].helped", equalTo(1))
        .body("ran[1]", not(hasKey("cleanShare")));
  }

  @Test
  void aTableHasARowForEachDrill() {
    train();

    Response answer = table(JUNIPER);

    assertThat(answer.contentType()).startsWith("text/csv");
    String[] table = answer.asString().split("\r\n", -1);
    assertThat(table).hasSize(1 + 2 + 1);
    assertThat(table[0])
        .isEqualTo(
            "dog,poles,leadIn,backChainStep,jumpTurn,entrySide,angle,clock,manoeuvre,dogSide,reps,clean,made,"
                + "cleanShare,cleanLower,cleanUpper,recentClean,recentOf,helped,first,last");
    assertThat(table[1])
        .startsWith("juniper,4,tunnel,,,pole,45,1:30,alongside,left,10,8,9,0.8,0.49016247")
        .endsWith(",8,10,1,2026-05-04T18:05:00Z,2026-05-04T18:19:00Z");
    assertThat(table[2])
        .isEqualTo(
            "juniper,6,jump,wrap,left,gap,-12.5,,alongside,left,0,0,0,,,,0,0,1,"
                + "2026-05-04T18:06:00Z,2026-05-04T18:06:00Z");
  }

  @Test
  void theWayIsAPictureInBothForms() {
    train();

    String svg = club.given().header("Accept", "image/svg+xml").get(club.path(JUNIPER)).asString();
    assertThat(svg)
        .contains("width=\"800\"")
        .contains("<title id=\"poleward-title\">juniper: the way through the programme</title>")
        .contains("Now in: Three poles from 9 to 3 o'clock.")
        .contains("3 poles, straight on: next to be learned; about ");
    assertThat(
            club.given()
                .header("Accept", "image/png")
                .get(club.path(JUNIPER + "?width=320"))
                .asByteArray())
        .startsWith(0x89, 'P', 'N', 'G');
    club.get(JUNIPER + "?width=319")
        .then()
        .statusCode(400)
        .body("errors.parameter", contains("width"));
  }

  @Test
  void thePastIsCountedAsItWas() {
    train();
    String known = club.get("/events/log-no-angle").path("recordedtime");
    club.record(run("late", "18:09:00", "clean", TUNNEL_FROM_45));

    club.get(JUNIPER).then().body("ran.reps", contains(11, 0));
    club.get(JUNIPER + "?knownAt=" + known).then().body("ran.reps", contains(10, 0));
    club.get(JUNIPER + "?asOf=2026-05-04T18:10:00Z")
        .then()
        .body("ran.reps", contains(2, 0))
        .body("voided", equalTo(0));
    club.get(JUNIPER + "?asOf=2026-05-04T17:00:00Z").then().body("ran", empty());
  }

  @Test
  void aNewRepChangesTheCountsAndTheirTag() {
    train();
    String tag = club.get(JUNIPER).header("ETag");
    club.given().header("If-None-Match", tag).get(club.path(JUNIPER)).then().statusCode(304);

    club.record(event("a-1", "rep.amended.v1", at("19:00:00"), "{'rep':'r-9','outcome':'clean'}"));

    club.given()
        .header("If-None-Match", tag)
        .get(club.path(JUNIPER))
        .then()
        .statusCode(200)
        .body("ran.clean", contains(9, 0));
  }

  @Test
  void noMoreThanAThousandDrillsAreShownAndTheRestIsCounted() {
    List<String> events = new ArrayList<>();
    for (int i = 0; i < 1_002; i++) {
      String time = "%02d:%02d:%02d".formatted(18 + i / 3600, i / 60 % 60, i % 60);
      events.add(
          rep(
              "r-" + i,
              "s-1",
              "juniper",
              time,
              ",'setup':{'poles':4,'spacing':0.6,'leadIn':'none','angle':%s}".formatted(i / 10.0)));
    }
    club.record(events.subList(0, 501).toArray(String[]::new));
    club.record(events.subList(501, events.size()).toArray(String[]::new));

    club.get(JUNIPER)
        .then()
        .body("ran.size()", equalTo(1_000))
        .body("omitted", equalTo(2))
        .body("totals.drills", equalTo(1_002))
        .body("totals.reps", equalTo(1_002))
        .body("ran[0].drill.angle", equalTo(100.1f))
        .body("ran[999].drill.angle", equalTo(0.2f));
    assertThat(table(JUNIPER).asString().split("\r\n", -1)).hasSize(1 + 1_000 + 1);
  }

  @Test
  void aDogThatIsNotThereOrNotToBeSeenIsNotFound() {
    Club pupil = club.withKey("pupil", "'records:read'", "'dogs':['bracken']");

    club.get("/dogs/nobody/progress").then().statusCode(404);
    pupil
        .get("/dogs/bracken/progress")
        .then()
        .statusCode(200)
        .body("ran", empty())
        .body("totals.reps", equalTo(0));
    pupil.get(JUNIPER).then().statusCode(404).body("detail", equalTo("There is no such dog."));
    table("/dogs/nobody/progress").then().statusCode(404);
  }

  @Test
  void allFaultsOfTheParametersAreNamedAtOnce() {
    club.get(JUNIPER + "?asOf=soon&limit=5")
        .then()
        .statusCode(400)
        .body("errors.parameter", containsInAnyOrder("asOf", "limit"));
  }
}
