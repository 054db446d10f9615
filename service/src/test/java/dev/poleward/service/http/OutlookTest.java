package dev.poleward.service.http;

import static dev.poleward.service.http.Said.event;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsInAnyOrder;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasKey;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;

import dev.poleward.service.Club;
import dev.poleward.service.SharedService;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** What lies ahead and behind of a dog, as clients ask for it. */
@ExtendWith(SharedService.class)
class OutlookTest {

  private static final String AS_OF = "asOf=2026-05-20T12:00:00Z";

  private final Club club;

  OutlookTest(Club club) {
    this.club = club;
  }

  @BeforeEach
  void furnish() {
    club.record(
        Said.dog("juniper"),
        Said.dog("bracken"),
        event(
            "grid",
            "programme.published.v1",
            "2026-01-11T10:00:00Z",
            "{'programme':'grid','version':1,'name':'Grid','rule':{'method':'run','length':2},'stages':["
                + "{'stage':'three','poles':3,'leadIn':'none','entries':{'clocks':['12:00','12:30','11:30']},'handlings':[{'manoeuvre':'alongside'}]},"
                + "{'stage':'four','poles':4,'leadIn':'none','entries':{'clocks':['12:00','1:00','11:00']},'handlings':[{'manoeuvre':'alongside'}],"
                + "'prerequisites':['three']}]}"),
        event(
            "assigned",
            "programme.assigned.v1",
            "2026-01-11T10:00:00Z",
            "{'dog':'juniper','programme':'grid'}"));
  }

  /** Three weeks, two sessions each of eight reps on three poles, one of eight missed. */
  private void train() {
    List<String> events = new ArrayList<>();
    for (int session = 0; session < 6; session++) {
      String day = "2026-05-%02d".formatted(1 + 3 * session);
      events.add(
          event(
              "open-" + session,
              "session.opened.v1",
              day + "T17:00:00Z",
              "{'session':'s-%d'}".formatted(session)));
      for (int rep = 0; rep < 8; rep++) {
        int angle = List.of(0, 15, -15).get(rep % 3);
        events.add(
            event(
                "e-%d-%d".formatted(session, rep),
                "rep.logged.v1",
                day + "T17:0%d:00Z".formatted(rep + 1),
                "{'rep':'r-%d-%d','session':'s-%d','dog':'juniper','manoeuvre':'alongside','dogSide':'left','outcome':'%s','setup':{'poles':3,'spacing':0.6,'leadIn':'none','angle':%d}}"
                    .formatted(session, rep, session, rep == 7 ? "missed-entry" : "clean", angle)));
      }
    }
    club.record(events.toArray(String[]::new));
  }

  @Test
  void fewRepsCannotTell() {
    club.get("/dogs/juniper/outlook")
        .then()
        .statusCode(200)
        .body("status", equalTo("cannot-tell"))
        .body("reason", equalTo("too-few-reps"))
        .body("reasons[0]", containsString("fewer than 20 reps"))
        .body("$", not(hasKey("rhythms")));
  }

  @Test
  void anOutlookHasQuantilesAtTheDogsOwnRhythmAndAtOthers() {
    train();

    club.get("/dogs/juniper/outlook?" + AS_OF)
        .then()
        .statusCode(200)
        .body("agedTo", equalTo("2026-05-20"))
        .body("status", equalTo("told"))
        .body("programme.programme", equalTo("grid"))
        .body("rhythms.runs", contains(100, 50, 50, 50))
        .body("horizonDays", equalTo(1460))
        .body("rhythms.horizonDays", everyItem(equalTo(1460)))
        .body("basis.reps", equalTo(48))
        .body("ownRhythm.sessions", equalTo(6))
        .body("ownRhythm.repsPerSession", equalTo(8))
        .body("rhythms.own", contains(true, false, false, false))
        .body("rhythms[1].sessionsPerWeek", equalTo(1))
        .body("rhythms[0].stages.stage", contains("three", "four"))
        .body("rhythms[0].stages[0].state", equalTo("done"))
        .body("rhythms[0].stages[1].state", equalTo("ahead"))
        .body("rhythms[0].programme.sessions.middle", greaterThan(0))
        .body("reasons[0]", containsString("Of ten dogs like this one, "))
        .body("assumed[0]", containsString("A plain trainer teaches"));
  }

  @Test
  void anotherRhythmCanBeAskedFor() {
    train();

    club.get("/dogs/juniper/outlook?sessionsPerWeek=0.5&repsPerSession=4&" + AS_OF)
        .then()
        .statusCode(200)
        .body("rhythms", hasSize(2))
        .body("rhythms.repsPerSession", everyItem(equalTo(4)))
        .body("rhythms[1].sessionsPerWeek", equalTo(0.5f));
    club.get("/dogs/juniper/outlook?sessionsPerWeek=8&repsPerSession=0&asOf=now&level=1")
        .then()
        .statusCode(400)
        .body(
            "errors.parameter",
            containsInAnyOrder("sessionsPerWeek", "repsPerSession", "asOf", "level"));
  }

  @Test
  void whatIsAskedAgainIsAnsweredAlike() {
    train();
    String first = club.get("/dogs/juniper/outlook?" + AS_OF).asString();

    club.record(Said.dog("wren"));

    assertThat(club.get("/dogs/juniper/outlook?" + AS_OF).asString()).isEqualTo(first);
  }

  @Test
  void goalsAreAnswered() {
    train();
    club.record(
        event(
            "g-1",
            "goal.set.v1",
            "2026-05-02T10:00:00Z",
            "{'dog':'juniper','by':'2026-06-30','stage':'four'}"),
        event("g-2", "goal.set.v1", "2026-05-03T10:00:00Z", "{'dog':'juniper','by':'2026-05-05'}"),
        event(
            "g-3",
            "goal.set.v1",
            "2026-05-04T10:00:00Z",
            "{'dog':'juniper','by':'2026-08-05','stage':'three'}"));

    club.get("/dogs/juniper/goals?" + AS_OF)
        .then()
        .statusCode(200)
        .body("goals.event", contains("g-3", "g-2", "g-1"))
        .body("goals.state", contains("reached", "missed", "ahead"))
        .body("goals[2].chance.value", equalTo(1))
        .body("goals[2].rhythm.own", equalTo(true));
    club.get("/dogs/bracken/goals").then().statusCode(200).body("goals", hasSize(0));
  }

  @Test
  void aStageIsProposedFromAFewReps() {
    club.get("/dogs/juniper/starting-stage?" + AS_OF)
        .then()
        .statusCode(200)
        .body("status", equalTo("not-enough-reps"))
        .body("next.size()", greaterThan(0))
        .body("$", not(hasKey("proposed")));

    train();

    club.get("/dogs/juniper/starting-stage?" + AS_OF)
        .then()
        .statusCode(200)
        .body("status", equalTo("proposed"))
        .body("reps", equalTo(20))
        .body("stages.stage", contains("three", "four"))
        .body("stages.ruledOut", contains(true, false))
        .body("proposed.stage", equalTo("four"))
        .body("reasons[0]", containsString("the earliest stage that the reps do not rule out."));
  }

  @Test
  void homeworkIsCompared() {
    train();
    club.record(
        event(
            "h-1",
            "homework.set.v1",
            "2026-05-04T00:00:00Z",
            "{'dog':'juniper','drills':[{'poles':3,'clock':'12:30','reps':3},{'poles':12}],'due':'2026-05-08'}"));

    club.get("/dogs/juniper/homework?" + AS_OF)
        .then()
        .statusCode(200)
        .body("homework[0].state", equalTo("overdue"))
        .body("homework[0].drills[0].reps", equalTo(6))
        .body("homework[0].drills[0].done", equalTo(true))
        .body("homework[0].drills[1].done", equalTo(false))
        .body("homework[0].drills[1].drill.poles", equalTo(12));
    club.get("/dogs/juniper/homework?asOf=2026-05-08T12:00:00Z")
        .then()
        .body("homework[0].state", equalTo("open"));
  }

  @Test
  void trialsStandBesideTraining() {
    train();
    club.record(
        event(
            "t-1",
            "trial.run.v1",
            "2026-05-18T10:00:00Z",
            "{'dog':'juniper','poles':3,'outcome':'popped-out','angle':10}"));

    club.get("/dogs/juniper/trials?" + AS_OF)
        .then()
        .statusCode(200)
        .body("trials[0].training.reps", equalTo(36))
        .body("carryOver[0].verdict", equalTo("not-enough-yet"))
        .body("carryOver[0].change.value", greaterThan(-1.0f));
  }

  @Test
  void aSeasonIsToldInNumbersAndAsATable() {
    train();

    club.get("/dogs/juniper/season?from=2026-05-01&to=2026-05-31&" + AS_OF)
        .then()
        .statusCode(200)
        .body("total.sessions", equalTo(6))
        .body("total.reps", equalTo(48))
        .body("total.gaps", equalTo(96))
        .body("months.month", contains("2026-05"))
        .body("stages.stage", contains("three"))
        .body("longestBreak.days", equalTo(2))
        .body("sides.entrySide", contains("pole", "gap"));
    String table =
        club.given()
            .header("Accept", "text/csv")
            .get(club.path("/dogs/juniper/season?from=2026-05-01&to=2026-05-31&" + AS_OF))
            .asString();
    assertThat(table)
        .isEqualTo(
            "dog,month,sessions,days,reps,clean,gaps,trials,cleanTrials,stagesDone,rungsMovedOn\r\n"
                + "juniper,2026-05,6,6,48,42,96,0,0,1,3\r\n");
    club.get("/dogs/juniper/season?from=2026-02-30&to=2026-05-31")
        .then()
        .statusCode(400)
        .body("errors.parameter", contains("from"));
    club.get("/dogs/juniper/season?from=2025-01-01&to=2026-05-31").then().statusCode(400);
    club.get("/dogs/juniper/season?from=2026-06-01&to=2026-05-31").then().statusCode(400);
  }

  @Test
  void aPupilsKeySeesItsOwnDogAlone() {
    Club pupil = club.withKey("pupil", "'records:read'", "'dogs':['bracken']");

    for (String view :
        List.of("outlook", "starting-stage", "homework", "goals", "trials", "season")) {
      club.get("/dogs/nowhere/" + view).then().statusCode(404);
      pupil.get("/dogs/juniper/" + view).then().statusCode(404);
      pupil.get("/dogs/bracken/" + view).then().statusCode(200);
    }
  }
}
