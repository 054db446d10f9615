package dev.poleward.service.http;

import static dev.poleward.service.http.Said.event;
import static dev.poleward.service.http.Said.json;
import static dev.poleward.service.http.Said.rep;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.greaterThanOrEqualTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.lessThanOrEqualTo;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;

import dev.poleward.service.Club;
import dev.poleward.service.SharedService;
import io.restassured.response.Response;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Plans, as trainers ask for them. */
@ExtendWith(SharedService.class)
class PlanTest {

  private static final String PLANS = "/dogs/juniper/plans";
  private static final String BARE =
      ",'setup':{'poles':3,'spacing':0.6,'leadIn':'none','angle':0},'dogSide':'left'";

  private final Club club;

  PlanTest(Club club) {
    this.club = club;
  }

  @BeforeEach
  void furnish() {
    club.record(
        event(
            "dog-juniper",
            "dog.registered.v1",
            "2026-05-01T18:00:00Z",
            "{'dog':'juniper','callName':'Juniper','born':'2022-03-01'}"),
        Said.session("s-1", "18:00:00"));
  }

  private Response ask(String body) {
    return club.given()
        .header("Content-Type", "application/json")
        .body(json(body))
        .post(club.path(PLANS));
  }

  @Test
  void aNewDogBeginsStraightOnAndThePlanIsRecorded() {
    ask("{'id':'i-1','time':'2026-05-04T17:00:00Z','plan':'plan-1','budget':{'reps':8}}")
        .then()
        .statusCode(201)
        .body("plan", equalTo("plan-1"))
        .body("programme", equalTo("poleward-default"))
        .body("stage", equalTo("three-bare"))
        .body("reps", lessThanOrEqualTo(8))
        .body("drills[0].angle", equalTo(0))
        .body("drills.poles", everyItem(equalTo(3)))
        .body("notes", empty());

    club.get("/events/i-1").then().statusCode(200).body("status", equalTo("applied"));
    club.get("/plans/plan-1")
        .then()
        .statusCode(200)
        .body("issued", equalTo("2026-05-04T17:00:00Z"))
        .body("came.reps", equalTo(0));
  }

  @Test
  void theSameAgainIsTheSamePlanWhateverHasHappenedSince() {
    String asked = "{'id':'i-1','time':'2026-05-04T17:00:00Z','budget':{'reps':8}}";
    String plan = ask(asked).then().statusCode(201).extract().asString();
    club.record(rep("r-1", "s-1", "juniper", "18:10:00", BARE));

    assertThat(ask(asked).then().statusCode(200).extract().asString()).isEqualTo(plan);
    ask("{'id':'i-1','budget':{'reps':9}}").then().statusCode(409);
    ask("{'id':'i-2','plan':'i-1'}").then().statusCode(409);
  }

  @Test
  void theSameWishWrittenOtherwiseIsTheSame() {
    String plan =
        ask("{'id':'i-1','time':'2026-05-04T18:00:00+01:00','budget':{'reps':4}}")
            .then()
            .statusCode(201)
            .extract()
            .asString();

    String again = "{'id':'i-1','time':'%s','plan':'%s','budget':{'reps':4.0}}";
    assertThat(
            ask(again.formatted("2026-05-04T17:00:00Z", "i-1"))
                .then()
                .statusCode(200)
                .extract()
                .asString())
        .isEqualTo(plan);
    ask("{'id':'i-1','budget':{'reps':4.0}}").then().statusCode(200);
    ask(again.formatted("2026-05-04T17:00:01Z", "i-1")).then().statusCode(409);
    ask(again.formatted("2026-05-04T17:00:00Z", "other")).then().statusCode(409);
  }

  @Test
  void aPlanForATimeThatIsPastLeavesOutWhatHappenedSince() {
    String then = "{'id':'%s','time':'2026-05-04T18:05:00Z','budget':{'reps':8}}";
    Response before = ask(then.formatted("i-1"));
    List<String> events = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      events.add(rep("r-" + i, "s-1", "juniper", "18:%d:00".formatted(10 + i), BARE));
    }
    events.add(event("rest-1", "dog.rested.v1", "2026-05-04T18:40:00Z", "{'dog':'juniper'}"));
    club.record(events.toArray(String[]::new));

    Response late = ask(then.formatted("i-2"));
    late.then().statusCode(201).body("drills", not(empty()));
    assertThat(late.<Object>path("drills")).isEqualTo(before.path("drills"));
    assertThat(late.<Object>path("notes")).isEqualTo(before.path("notes"));
    ask("{'id':'i-3','time':'2026-05-04T18:40:00Z'}")
        .then()
        .statusCode(201)
        .body("notes[0].id", equalTo("resting"));
  }

  @Test
  void whatWasRunOfItIsComparedWithIt() {
    ask("{'id':'i-1','time':'2026-05-04T17:55:00Z','plan':'plan-1','budget':{'reps':4}}")
        .then()
        .statusCode(201);
    List<String> reps = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      reps.add(rep("r-" + i, "s-1", "juniper", "18:1%d:00".formatted(i), BARE));
    }
    reps.add(rep("r-9", "s-1", "juniper", "18:20:00", BARE.replace("'poles':3", "'poles':6")));
    club.record(reps.toArray(String[]::new));

    Response read = club.get("/plans/plan-1");
    read.then().statusCode(200).body("came.otherReps", greaterThanOrEqualTo(1));
    List<Integer> done = read.path("done.reps");
    int planned = read.path("came.reps");
    int others = read.path("came.otherReps");
    assertThat(done.stream().mapToInt(Integer::intValue).sum()).isEqualTo(planned);
    assertThat(planned + others).isEqualTo(4);
    club.get("/plans/plan-1?asOf=2026-05-04T17:56:00Z")
        .then()
        .statusCode(200)
        .body("came.reps", equalTo(0));
    club.get("/plans/plan-1?asOf=2026-05-04T17:54:00Z").then().statusCode(404);
  }

  @Test
  void aRestingDogHasAPlanWithoutDrillsThatSaysWhy() {
    club.record(
        event(
            "rest-1",
            "dog.rested.v1",
            "2026-05-04T17:00:00Z",
            "{'dog':'juniper','reason':'a sore shoulder'}"));

    ask("{'id':'i-1','time':'2026-05-05T17:00:00Z'}")
        .then()
        .statusCode(201)
        .body("drills", empty())
        .body("notes.id", contains("resting"))
        .body("notes[0].severity", equalTo("stop"));
  }

  @Test
  void theClubsLimitsAreKept() {
    club.record(
        event(
            "limits",
            "club.settings-changed.v1",
            "2026-05-01T17:00:00Z",
            "{'careLimits':{'gapsPerSession':6}}"));

    ask("{'id':'i-1','time':'2026-05-04T17:00:00Z','budget':{'minutes':20}}")
        .then()
        .statusCode(201)
        .body("reps", equalTo(3));
  }

  @Test
  void everyFaultOfAWishIsToldAtOnce() {
    ask("{'budget':{'reps':0,'minutes':3},'sides':['left'],'available':{'poles':1},'extra':1}")
        .then()
        .statusCode(400)
        .body("errors.pointer", hasItems("/budget", "/budget/reps", "/sides/0", "/extra"));
    ask("{}").then().statusCode(400);
    ask("[]").then().statusCode(400);
  }

  @Test
  void whateverStandsAPlanCanBeMade() {
    List<String> setups =
        List.of(
            "'leadIn':'none'",
            "'leadIn':'jump','angle':0",
            "'leadIn':'jump','clock':'1:30'",
            "'leadIn':'tunnel','angle':-45");
    for (int i = 0; i < setups.size(); i++) {
      ask("{'id':'i-%d','time':'2026-05-04T17:00:00Z','setup':{'poles':4,'spacing':0.6,%s}}"
              .formatted(i, setups.get(i)))
          .then()
          .statusCode(201)
          .body("drills", not(empty()));
    }
    ask("{'id':'i-9','setup':{'poles':4,'spacing':0.6,'leadIn':'tunnel'},'conditions':{'footing':'ice'}}")
        .then()
        .statusCode(400)
        .body("errors.pointer", hasItems("/setup/angle", "/conditions/footing"));
  }

  @Test
  void otherDogsAndOtherKeysHaveNoPlans() {
    club.given()
        .header("Content-Type", "application/json")
        .body(json("{'id':'i-1'}"))
        .post(club.path("/dogs/nobody/plans"))
        .then()
        .statusCode(404);
    club.get("/plans/nothing").then().statusCode(404);
    ask("{'id':'i-3','plan':'mine'}").then().statusCode(201);
    club.get("/plans/mine").then().body("drills.manoeuvre", not(hasItem("pressure")));
  }

  @Test
  void aPlanComesOnPaper() {
    ask("{'id':'i-9','time':'2026-05-04T17:00:00Z','plan':'plan-9','budget':{'reps':4}}")
        .then()
        .statusCode(201);

    String page =
        club.given()
            .header("Accept", "text/html")
            .get(club.path("/plans/plan-9"))
            .then()
            .statusCode(200)
            .header("Content-Security-Policy", startsWith("default-src 'none'"))
            .extract()
            .asString();
    assertThat(page)
        .contains("Juniper: session of 4 May 2026")
        .contains("What to do")
        .contains("Round the clock, from three poles to twelve")
        .contains("Three poles from 9 to 3 o")
        .doesNotContain("three-bare");
    byte[] print =
        club.given()
            .header("Accept", "application/pdf")
            .get(club.path("/plans/plan-9"))
            .then()
            .statusCode(200)
            .extract()
            .asByteArray();
    assertThat(new String(print, 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
  }
}
