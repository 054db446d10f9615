package dev.poleward.service.http;

import static dev.poleward.service.http.Said.at;
import static dev.poleward.service.http.Said.event;
import static dev.poleward.service.http.Said.rep;
import static dev.poleward.service.http.Said.setup;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasKey;
import static org.hamcrest.Matchers.not;

import dev.poleward.service.Club;
import dev.poleward.service.SharedService;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Reps as they are read: where the dog came from, over what, and with which corrections. */
@ExtendWith(SharedService.class)
class PlacedRepsTest {

  private final Club club;

  PlacedRepsTest(Club club) {
    this.club = club;
  }

  @BeforeEach
  void furnish() {
    club.record(Said.dog("juniper"), Said.session("s-1", "18:00:00"));
  }

  @Test
  void aRepShowsTheSetupInForceAndAllThatWasSaidOfIt() {
    club.record(
        setup("set-1", "s-1", "18:01:00", 45, ""),
        rep(
            "r-1",
            "s-1",
            "juniper",
            "18:05:00",
            ",'dogSide':'left','atPole':3,'drive':3,'help':'none','stride':'single','handlerAt':'pole 2',"
                + "'lateralDistance':2.5,'rewards':[{'kind':'toy','at':'exit','count':1,'delivery':'thrown'}]"));

    club.get("/dogs/juniper/reps")
        .then()
        .statusCode(200)
        .body(
            "reps[0]",
            equalTo(
                Map.ofEntries(
                    Map.entry("event", "log-r-1"),
                    Map.entry("rep", "r-1"),
                    Map.entry("session", "s-1"),
                    Map.entry("dog", "juniper"),
                    Map.entry("time", "2026-05-04T18:05:00Z"),
                    Map.entry("entrySide", "pole"),
                    Map.entry("angle", 45),
                    Map.entry("clock", "1:30"),
                    Map.entry("poles", 4),
                    Map.entry("spacing", 0.6f),
                    Map.entry("leadIn", "none"),
                    Map.entry("setup", "set-1"),
                    Map.entry("poleSet", "main"),
                    Map.entry("manoeuvre", "alongside"),
                    Map.entry("outcome", "clean"),
                    Map.entry("dogSide", "left"),
                    Map.entry("atPole", 3),
                    Map.entry("drive", 3),
                    Map.entry("help", "none"),
                    Map.entry("stride", "single"),
                    Map.entry("handlerAt", "pole 2"),
                    Map.entry("lateralDistance", 2.5f),
                    Map.entry(
                        "rewards",
                        List.of(
                            Map.of("kind", "toy", "at", "exit", "count", 1, "delivery", "thrown"))),
                    Map.entry("amendedBy", List.of()),
                    Map.entry("duplicates", List.of()))));
  }

  @Test
  void aSetupThatComesLateAppliesAllTheSame() {
    club.record(setup("set-1", "s-1", "18:01:00", 15, ""));
    club.record(
        rep("r-1", "s-1", "juniper", "18:03:00", ""), rep("r-2", "s-1", "juniper", "18:05:00", ""));
    club.get("/dogs/juniper/reps").then().body("reps.angle", contains(15, 15));

    club.record(setup("set-2", "s-1", "18:04:00", -60, ""));

    club.get("/dogs/juniper/reps")
        .then()
        .body("reps.angle", contains(15, -60))
        .body("reps.entrySide", contains("pole", "gap"))
        .body("reps.setup", contains("set-1", "set-2"));
  }

  @Test
  void twoSetsOfPolesStandSideBySide() {
    club.record(
        setup("set-1", "s-1", "18:01:00", 15, ""),
        setup("set-2", "s-1", "18:02:00", 75, ",'poleSet':'far'"),
        rep("r-1", "s-1", "juniper", "18:05:00", ""),
        rep("r-2", "s-1", "juniper", "18:06:00", ",'poleSet':'far'"),
        rep("r-3", "s-1", "juniper", "18:07:00", ",'poleSet':'none-such'"));

    club.get("/dogs/juniper/reps")
        .then()
        .body("reps.angle", contains(15, 75, null))
        .body("reps.poleSet", contains("main", "far", "none-such"))
        .body("reps[2]", not(hasKey("poles")));
    club.get("/sessions/s-1").then().body("setups.poleSet", contains("main", "far"));
  }

  @Test
  void aRepMayBringItsOwnSetupOrItsOwnAngle() {
    club.record(
        setup("set-1", "s-1", "18:01:00", 15, ""),
        rep(
            "r-1",
            "s-1",
            "juniper",
            "18:05:00",
            ",'setup':{'poles':6,'spacing':0.6,'leadIn':'tunnel','leadInDistance':4,'clock':'11:00'}"),
        rep("r-2", "s-1", "juniper", "18:06:00", ",'angle':0"),
        rep("r-3", "s-1", "juniper", "18:07:00", ",'clock':'9:30'"),
        rep("r-4", "s-1", "juniper", "18:08:00", ",'angle':-12.5"));

    club.get("/dogs/juniper/reps")
        .then()
        .body("reps.angle", contains(-30, 0, -75, -12.5f))
        .body("reps.entrySide", contains("gap", "both", "gap", "gap"))
        .body("reps.clock", contains("11:00", "12:00", "9:30", null))
        .body("reps.poles", contains(6, 4, 4, 4))
        .body("reps[0].leadIn", equalTo("tunnel"))
        .body("reps[0]", not(hasKey("setup")))
        .body("reps[1].setup", equalTo("set-1"));
  }

  @Test
  void amendmentsApplyFieldByField() {
    club.record(
        rep("r-1", "s-1", "juniper", "18:05:00", ",'drive':1,'dogSide':'left','note':'first'"),
        amended("a-1", "19:00:00", "'drive':2,'outcome':'popped-out','atPole':4"),
        amended("a-2", "18:59:00", "'drive':3,'note':'second'"),
        amended("a-3", "19:01:00", "'dogSide':null"));

    club.get("/dogs/juniper/reps")
        .then()
        .body("reps[0].drive", equalTo(2))
        .body("reps[0].outcome", equalTo("popped-out"))
        .body("reps[0].note", equalTo("second"))
        .body("reps[0]", not(hasKey("dogSide")))
        .body("reps[0].amendedBy", contains("a-2", "a-1", "a-3"));
  }

  private static String amended(String id, String time, String fields) {
    return event(id, "rep.amended.v1", at(time), "{'rep':'r-1'," + fields + "}");
  }

  @Test
  void aRepOfTwoPhonesIsOneRep() {
    String second =
        rep("r-1", "s-1", "juniper", "18:05:01", ",'drive':2").replace("log-r-1", "again-r-1");
    club.record(rep("r-1", "s-1", "juniper", "18:05:00", ",'drive':1"), second);

    club.get("/dogs/juniper/reps")
        .then()
        .body("reps.size()", equalTo(1))
        .body("reps[0].drive", equalTo(1))
        .body("reps[0].duplicates", contains("again-r-1"));
  }

  @Test
  void mergedDogsHaveTheirRepsTogether() {
    club.record(
        Said.dog("juniper-2"),
        rep("r-2", "s-1", "juniper-2", "18:04:00", ""),
        rep("r-1", "s-1", "juniper", "18:05:00", ""));
    club.record(
        event("m-1", "dog.merged.v1", at("20:00:00"), "{'dog':'juniper-2','into':'juniper'}"));

    club.get("/dogs/juniper/reps")
        .then()
        .body("reps.rep", contains("r-2", "r-1"))
        .body("reps.dog.unique()", contains("juniper"));
    club.get("/dogs/juniper").then().body("merged", contains("juniper-2"));
    club.get("/dogs/juniper-2").then().body("mergedInto", equalTo("juniper"));
  }

  /** The two times: what had happened by then, and what was known by then. */
  @Test
  void thePastIsReadAsItWas() {
    club.record(
        rep("r-1", "s-1", "juniper", "18:05:00", ""), rep("r-2", "s-1", "juniper", "18:10:00", ""));
    String recorded = club.get("/events/log-r-2").path("recordedtime");
    club.record(rep("r-0", "s-1", "juniper", "18:04:00", ""));

    club.get("/dogs/juniper/reps?asOf=2026-05-04T18:05:00Z")
        .then()
        .body("reps.rep", contains("r-0", "r-1"));
    club.get("/dogs/juniper/reps?asOf=2026-05-04T18:04:59.999999999%2B00:00")
        .then()
        .body("reps.rep", contains("r-0"));
    club.get("/dogs/juniper/reps?knownAt=" + recorded)
        .then()
        .body("reps.rep", contains("r-1", "r-2"));
    club.get("/dogs/juniper/reps?asOf=2026-05-04T18:05:00Z&knownAt=" + recorded)
        .then()
        .body("reps.rep", contains("r-1"));
    club.get("/dogs/juniper/reps?knownAt=2026-05-04T18:05:00Z").then().statusCode(404);
  }

  @Test
  void aSessionStandsWithSetupsAttendanceAndReps() {
    club.record(
        setup("set-1", "s-1", "18:01:00", 15, ""),
        event(
            "a-1",
            "session.attended.v1",
            at("18:00:00"),
            "{'session':'s-1','dog':'juniper','present':true}"),
        rep("r-1", "s-1", "juniper", "18:05:00", ""),
        event("c-1", "session.closed.v1", at("19:00:00"), "{'session':'s-1'}"),
        rep("r-2", "s-1", "juniper", "19:05:00", ""));

    club.get("/sessions/s-1")
        .then()
        .statusCode(200)
        .body("registered", equalTo("2026-05-04T18:00:00Z"))
        .body("closed", equalTo("2026-05-04T19:00:00Z"))
        .body("setups.event", contains("set-1"))
        .body("setups[0].setup.angle", equalTo(15))
        .body("attendance[0].dog", equalTo("juniper"))
        .body("reps.rep", contains("r-1", "r-2"));
    club.get("/sessions/s-1?asOf=2026-05-04T18:00:30Z")
        .then()
        .body("setups", empty())
        .body("reps", empty())
        .body("$", not(hasKey("closed")));
    club.get("/sessions/s-2").then().statusCode(404);
  }
}
