package dev.poleward.service.http;

import static dev.poleward.service.http.Said.at;
import static dev.poleward.service.http.Said.dog;
import static dev.poleward.service.http.Said.event;
import static dev.poleward.service.http.Said.rep;
import static dev.poleward.service.http.Said.session;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasKey;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;

import dev.poleward.service.Club;
import dev.poleward.service.SharedService;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** What becomes of events, and what waits. */
@ExtendWith(SharedService.class)
class FateTest {

  private final Club club;

  FateTest(Club club) {
    this.club = club;
  }

  @Test
  void anEventThatNobodySentHasNoFate() {
    club.get("/events/e-lost").then().statusCode(404);
  }

  @Test
  void repetitionsAreCounted() {
    for (int i = 0; i < 3; i++) {
      club.send(dog("juniper"));
    }
    club.sendAll(List.of(dog("juniper"), dog("juniper")));

    club.get("/events/dog-juniper")
        .then()
        .statusCode(200)
        .body("status", equalTo("applied"))
        .body("repeated", equalTo(4))
        .body("contradictedCount", equalTo(0))
        .body("time", equalTo("2026-01-10T10:00:00Z"));
  }

  @Test
  void contradictionsAreKeptBesideWhatStands() {
    club.send(dog("juniper"));
    club.send(dog("juniper").replace("\"callName\":\"juniper\"", "\"callName\":\"June\""));
    club.send(event("dog-juniper", "session.closed.v1", at("18:00:00"), "{'session':'s'}"));

    club.get("/events/dog-juniper")
        .then()
        .body("type", equalTo("dog.registered.v1"))
        .body("contradictedCount", equalTo(2))
        .body("contradicted.type", contains("dog.registered.v1", "session.closed.v1"))
        .body("contradicted[0].data", equalTo(Map.of("dog", "juniper", "callName", "June")))
        .body("contradicted[1].time", startsWith("2026-05-04T18:00:00"));
    club.get("/dogs/juniper").then().body("callName", equalTo("juniper"));
    club.get("/digest").then().body("events", equalTo(1));
  }

  /** Personal members are not shown in what was refused to stand. */
  @Test
  void contradictionsShowNothingPersonal() {
    club.send(Said.handler("h-1", "First Example"));
    club.send(Said.handler("h-1", "Second Example")).then().statusCode(409);

    club.get("/events/handler-h-1")
        .then()
        .body("contradictedCount", equalTo(1))
        .body("contradicted[0].data", equalTo(Map.of("handler", "h-1")));
    club.get("/handlers/h-1").then().body("name", equalTo("First Example"));
  }

  @Test
  void aWithdrawnEventSaysByWhat() {
    club.record(
        dog("juniper"), session("s-1", "18:00:00"), rep("r-1", "s-1", "juniper", "18:05:00", ""));
    club.record(
        event("w-1", "event.withdrawn.v1", at("19:00:00"), "{'event':'log-r-1','reason':'twice'}"));

    club.get("/events/log-r-1")
        .then()
        .body("status", equalTo("withdrawn"))
        .body("withdrawnBy", equalTo("w-1"))
        .body("waitsFor", empty());
    club.get("/dogs/juniper/reps").then().body("reps", empty());
    club.get("/events?after=2").then().body("events.size()", equalTo(4));
  }

  /** Whatever comes first, a withdrawal or what it withdraws. */
  @Test
  void aWithdrawalMayComeFirst() {
    club.record(dog("juniper"), session("s-1", "18:00:00"));
    club.send(
            event("w-1", "event.withdrawn.v1", at("19:00:00"), "{'event':'log-r-1','reason':'x'}"))
        .then()
        .statusCode(201)
        .body("status", equalTo("waiting"))
        .body("waitsFor[0]", equalTo(Map.of("kind", "event", "id", "log-r-1")));
    club.send(rep("r-1", "s-1", "juniper", "18:05:00", "")).then().statusCode(201);

    club.get("/events/log-r-1").then().body("status", equalTo("withdrawn"));
    club.get("/waiting").then().body("waiting", empty());
  }

  @Test
  void oneThingAnnouncedTwiceStandsOnce() {
    club.record(
        event("e-2", "dog.registered.v1", at("10:00:00"), "{'dog':'juniper','callName':'Second'}"),
        event("e-1", "dog.registered.v1", at("09:00:00"), "{'dog':'juniper','callName':'First'}"));

    club.get("/events/e-2").then().body("duplicateOf", equalTo("e-1"));
    club.get("/events/e-1").then().body("$", not(hasKey("duplicateOf")));
    club.get("/dogs/juniper")
        .then()
        .body("callName", equalTo("First"))
        .body("event", equalTo("e-1"))
        .body("duplicates", contains("e-2"));
  }

  @Test
  void whatWaitsIsListedUntilWhatIsMissingArrives() {
    club.record(
        rep("r-2", "s-1", "juniper", "18:06:00", ""), rep("r-1", "s-1", "juniper", "18:05:00", ""));

    club.get("/waiting")
        .then()
        .body("waiting.id", contains("log-r-1", "log-r-2"))
        .body("waiting[0].type", equalTo("rep.logged.v1"))
        .body("waiting[0].waitsFor.kind", contains("session", "dog"));
    club.get("/events/log-r-1").then().body("status", equalTo("waiting"));

    club.record(dog("juniper"));
    club.get("/waiting").then().body("waiting[0].waitsFor.kind", contains("session"));

    club.record(session("s-1", "18:00:00"));
    club.get("/waiting").then().body("waiting", empty());
    club.get("/events/log-r-1").then().body("status", equalTo("applied")).body("waitsFor", empty());
    club.get("/dogs/juniper/reps").then().body("reps.rep", contains("r-1", "r-2"));
  }

  @Test
  void aReadWaitsForTheEventThatItNames() {
    club.record(dog("juniper"));

    club.given()
        .header("Poleward-Wait-For", "dog-juniper")
        .get(club.path("/dogs"))
        .then()
        .statusCode(200)
        .body("dogs.dog", contains("juniper"));
    club.given()
        .header("Poleward-Wait-For", "no id")
        .get(club.path("/dogs"))
        .then()
        .statusCode(400)
        .body("errors.parameter", contains("Poleward-Wait-For"));
  }

  @Test
  void itWaitsUntilThatArrives() throws InterruptedException {
    Thread later =
        Thread.ofVirtual()
            .start(
                () -> {
                  assertThat(club.get("/digest").statusCode()).isEqualTo(200);
                  club.record(dog("juniper"));
                });
    club.given()
        .header("Poleward-Wait-For", "dog-juniper")
        .get(club.path("/dogs/juniper"))
        .then()
        .statusCode(200);
    later.join();
  }

  @Test
  void anEventThatNeverComesIsNotAwaitedForEver() {
    club.given()
        .header("Poleward-Wait-For", "e-lost")
        .get(club.path("/dogs"))
        .then()
        .statusCode(504)
        .body("type", equalTo("urn:poleward:problem:not-in-time"));
  }
}
