package dev.poleward.service.http;

import static dev.poleward.service.http.Said.event;
import static dev.poleward.service.http.Said.json;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasKey;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;

import dev.poleward.service.Club;
import dev.poleward.service.SharedService;
import io.restassured.response.ValidatableResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** What dogs may be asked for, and limits of clubs. */
@ExtendWith(SharedService.class)
class CareTest {

  private static final String DAY = "asOf=2026-05-04T20:00:00Z";
  private static final String ON_FOUR =
      ",'setup':{'poles':4,'spacing':0.6,'leadIn':'none','angle':75}";

  private final Club club;

  CareTest(Club club) {
    this.club = club;
  }

  @BeforeEach
  void furnish() {
    club.record(
        event(
            "dog-juniper",
            "dog.registered.v1",
            "2026-05-01T18:00:00Z",
            "{'dog':'juniper','callName':'Juniper','born':'2022-03-01','heatRisk':'high'}"),
        Said.session("s-1", "18:00:00"));
  }

  private ValidatableResponse care(String query) {
    return club.given().get(club.path("/dogs/juniper/care?" + query)).then();
  }

  private ValidatableResponse plan(String wish) {
    return club.given()
        .header("Content-Type", "application/json")
        .body(json(wish))
        .post(club.path("/dogs/juniper/plans"))
        .then();
  }

  private void settings(int status, String limits) {
    club.given()
        .header("Content-Type", Club.EVENT)
        .body(
            event(
                "limits",
                "club.settings-changed.v1",
                "2026-05-01T17:00:00Z",
                "{'careLimits':" + limits + "}"))
        .post(club.path("/events"))
        .then()
        .statusCode(status);
  }

  @Test
  void loadIsCountedInGapsAndSharpBends() {
    club.record(
        Said.rep("r-1", "s-1", "juniper", "18:05:00", ON_FOUR),
        Said.rep("r-2", "s-1", "juniper", "18:06:00", ON_FOUR));

    care(DAY)
        .statusCode(200)
        .body("mayTrain", equalTo(true))
        .body("load.today.gaps", equalTo(6))
        .body("load.week.sharpBends", equalTo(2))
        .body("gaps", equalTo(84))
        .body("sharpBends", equalTo(8))
        .body("limits.gapsPerSession", equalTo(90));
  }

  @Test
  void aWarmDayIsTooMuchForADogOfHighRisk() {
    care(DAY + "&temperature=26&sky=sun")
        .statusCode(200)
        .body("mayTrain", equalTo(false))
        .body("angleWork", equalTo(false))
        .body("gaps", equalTo(0))
        .body("notes[0].id", equalTo("too-hot"));

    plan("{'id':'i-1','time':'2026-05-04T17:00:00Z',"
            + "'conditions':{'temperature':26,'sky':'sun'},"
            + "'setup':{'poles':4,'spacing':0.6,'leadIn':'none'}}")
        .statusCode(201)
        .body("drills", empty())
        .body("notes.id", hasItem("too-hot"));
  }

  @Test
  void aClubsLimitsAreJudgedAtTheDoorAndKept() {
    settings(400, "{'gapsPerSesion':60}");
    settings(400, "{'poles':1}");
    settings(400, "{'breakDays':6}");
    settings(400, "{'heatStop':'cold'}");
    settings(201, "{'gapsPerSession':60,'heatStop':28}");

    care(DAY + "&temperature=23")
        .statusCode(200)
        .body("mayTrain", equalTo(false))
        .body("limits.gapsPerSession", equalTo(60));
  }

  @Test
  void onWetGroundNoPlanHasSharpBends() {
    care(DAY + "&footing=wet")
        .statusCode(200)
        .body("sharpBends", equalTo(0))
        .body("gaps", equalTo(90))
        .body("notes.id", hasItem("wet-ground"));

    plan("{'id':'i-1','time':'2026-05-04T17:00:00Z','conditions':{'footing':'wet'}}")
        .statusCode(201)
        .body("drills", not(empty()))
        .body("notes.id", hasItem("wet-ground"));
  }

  @Test
  void aYoungDogsBarsAreLow() {
    club.record(
        event(
            "dog-newt",
            "dog.registered.v1",
            "2026-05-01T18:00:00Z",
            "{'dog':'newt','callName':'Newt'}"));

    club.given()
        .get(club.path("/dogs/newt/care?" + DAY))
        .then()
        .statusCode(200)
        .body("barHeight", equalTo(0.1f))
        .body("notes.id", hasItem("age-unknown"));
    care(DAY).statusCode(200).body("$", not(hasKey("barHeight")));
  }

  @Test
  void aDogThatHopsWhereItStrodeHasNoAngleWorkUntilItIsCleared() {
    String run = ",'setup':{'poles':3,'spacing':0.6,'leadIn':'none','angle':0},'stride':'%s'";
    for (int i = 0; i < 20; i++) {
      club.record(
          Said.rep(
              "r-" + i,
              "s-1",
              "juniper",
              "18:%02d:00".formatted(5 + i),
              run.formatted(i < 17 ? "single" : "hop")));
    }

    care(DAY)
        .statusCode(200)
        .body("mayTrain", equalTo(true))
        .body("angleWork", equalTo(false))
        .body("sharpBends", equalTo(0))
        .body("notes[0].id", equalTo("have-it-looked-at"));
    plan("{'id':'i-1','time':'2026-05-05T17:00:00Z'}")
        .statusCode(201)
        .body("drills", not(empty()))
        .body("drills.angle", everyItem(equalTo(0)));

    club.record(event("clear-1", "dog.cleared.v1", "2026-05-04T19:00:00Z", "{'dog':'juniper'}"));
    care(DAY).statusCode(200).body("angleWork", equalTo(true));
  }

  @Test
  void aDogThatIsSlowerThanItWasHasNoAngleWork() {
    club.record(
        event(
            "gate",
            "device.enrolled.v1",
            "2026-02-01T18:00:00Z",
            "{'device':'gate-1','kind':'timer'}"));
    for (int day = 1; day <= 12; day++) {
      timedOn(day, day <= 9 ? 1_500 + day : 1_800 + day);
    }

    care("asOf=2026-04-30T20:00:00Z").statusCode(200).body("angleWork", equalTo(true));
    care(DAY)
        .statusCode(200)
        .body("mayTrain", equalTo(true))
        .body("angleWork", equalTo(false))
        .body("notes[0].id", equalTo("have-it-looked-at"))
        .body("notes[0].text", containsString("slower through the poles"));
    plan("{'id':'i-1','time':'2026-05-05T17:00:00Z'}")
        .statusCode(201)
        .body("drills", not(empty()))
        .body("drills.angle", everyItem(equalTo(0)));
    club.given()
        .get(club.path("/dogs/juniper/timing?" + DAY))
        .then()
        .body("slowing.verdict", equalTo("slower"))
        .body("slowing.days", equalTo(3))
        .body("slowing.daysBefore", equalTo(9));
  }

  /** A rep and its time, on days of spring the last three of which are in May. */
  private void timedOn(int day, int millis) {
    String time =
        day <= 9
            ? "2026-04-%02dT18:05:00Z".formatted(2 * day)
            : "2026-05-%02dT18:05:00Z".formatted(day - 8);
    club.record(
        event(
            "rep-" + day,
            "rep.logged.v1",
            time,
            "{'rep':'r-%d','session':'s-1','dog':'juniper','manoeuvre':'alongside','outcome':'clean','setup':{'poles':4,'spacing':0.6,'leadIn':'none','angle':0}}"
                .formatted(day)),
        event(
            "timing-" + day,
            "timing.recorded.v1",
            time,
            "{'device':'gate-1','sequence':%d,'deviceClock':%d,'entryAt':%d,'exitAt':%d,'rep':'r-%d'}"
                .formatted(day, 9_000_000 * day, 8_000_000 * day, 8_000_000 * day + millis, day)));
  }

  @Test
  void aPlanGoesByTheSameWeekAsCareOfThatDay() {
    List<String> reps = new ArrayList<>();
    for (String day : List.of("04-06", "04-13", "04-20", "04-27")) {
      for (int i = 0; i < 15; i++) {
        String rep = day + "-" + i;
        reps.add(
            event(
                rep,
                "rep.logged.v1",
                "2026-%sT18:%02d:00Z".formatted(day, 5 + i),
                "{'rep':'%s','session':'s-1','dog':'juniper','manoeuvre':'alongside','outcome':'clean','setup':{'poles':4,'spacing':0.6,'leadIn':'none','angle':0}}"
                    .formatted(rep)));
      }
    }
    club.record(reps.toArray(String[]::new));

    String asked = "asOf=2026-05-04T17:00:00Z";
    care(asked)
        .statusCode(200)
        .body("gaps", equalTo(67))
        .body("load.week.gaps", equalTo(0))
        .body("load.fourWeeksBefore.gaps", equalTo(180));
    List<String> told = care(asked).extract().path("notes.text");
    assertThat(told).anyMatch(text -> text.contains("held to 67 gaps"));
    plan("{'id':'i-1','time':'2026-05-04T17:00:00Z','budget':{'reps':30}}")
        .statusCode(201)
        .body("notes.text", hasItem(told.getFirst()));
  }

  /** Nobody said that it rested: half a year lies between its reps and the day. */
  @Test
  void aPlanAfterALongBreakIsEasedBackAsCareSays() {
    club.record(Said.rep("r-1", "s-1", "juniper", "18:05:00", ON_FOUR));

    String asked = "asOf=2026-11-04T20:00:00Z";
    care(asked)
        .statusCode(200)
        .body("gaps", equalTo(30))
        .body("sharpBends", equalTo(0))
        .body("limits.breakDays", equalTo(28));
    List<String> told = care(asked).extract().path("notes.text");
    assertThat(told).anyMatch(text -> text.contains("184 days earlier, on 2026-05-04"));
    ValidatableResponse plan =
        plan("{'id':'i-1','time':'2026-11-04T17:00:00Z','budget':{'reps':30}}")
            .statusCode(201)
            .body("notes.text", hasItem(told.getFirst()));
    List<Integer> poles = plan.extract().path("drills.poles");
    List<Integer> reps = plan.extract().path("drills.reps");
    assertThat(IntStream.range(0, poles.size()).map(i -> (poles.get(i) - 1) * reps.get(i)).sum())
        .isBetween(1, 30);
    care(DAY).body("notes.id", not(hasItem("easing-back")));
  }

  @Test
  void everyFaultOfAQuestionIsToldAtOnce() {
    care("temperature=hot&humidity=101&sky=grey&footing=ice&wind=3")
        .statusCode(400)
        .body("errors.parameter", hasItems("temperature", "humidity", "sky", "footing", "wind"));
  }

  /** A dog of unknown age is not sent to sharp bends or long lines to find out what it can. */
  @Test
  void aStartingStageKeepsToWhatADogMayRun() {
    club.record(
        event(
            "dog-newt",
            "dog.registered.v1",
            "2026-05-01T18:00:00Z",
            "{'dog':'newt','callName':'Newt'}"));

    club.given()
        .get(club.path("/dogs/newt/starting-stage?" + DAY))
        .then()
        .statusCode(200)
        .body("next", not(empty()))
        .body("next.findAll { it.drill.poles > 4 }", empty())
        .body("next.findAll { it.drill.angle > 60 || it.drill.angle < -60 }", empty());
  }

  @Test
  void aDogThatRestsIsNotSentToAnyStage() {
    club.record(
        event(
            "dog-fern",
            "dog.registered.v1",
            "2026-05-01T18:00:00Z",
            "{'dog':'fern','callName':'Fern','born':'2022-03-01'}"),
        event("rest-fern", "dog.rested.v1", "2026-05-01T19:00:00Z", "{'dog':'fern'}"));

    club.given()
        .get(club.path("/dogs/fern/starting-stage?" + DAY))
        .then()
        .statusCode(200)
        .body("status", equalTo("resting"))
        .body("reasons[0]", startsWith("The dog is resting until it is cleared: no poles."))
        .body("next", empty())
        .body("clear", equalTo(false))
        .body("$", not(hasKey("proposed")));
  }
}
