package dev.poleward.service.http;

import static dev.poleward.service.http.Said.at;
import static dev.poleward.service.http.Said.event;
import static dev.poleward.service.http.Said.rep;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;

import dev.poleward.service.Club;
import dev.poleward.service.SharedService;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** A key that is narrowed to some dogs, as for a pupil. */
@ExtendWith(SharedService.class)
class NarrowedKeyTest {

  private final Club club;
  private final Club pupil;

  NarrowedKeyTest(Club club) {
    this.club = club;
    this.pupil =
        club.withKey("pupil", "'records:write','records:read','timing:push'", "'dogs':['juniper']");
  }

  @BeforeEach
  void furnish() {
    EveryRoute.planned(EveryRoute.furnished(club))
        .record(
            Said.dog("bracken"),
            event("j-1", "class.joined.v1", at("10:00:00"), "{'class':'c-1','dog':'juniper'}"),
            event("j-2", "class.joined.v1", at("10:00:00"), "{'class':'c-1','dog':'bracken'}"),
            event(
                "a-1",
                "session.attended.v1",
                at("18:00:00"),
                "{'session':'s-1','dog':'juniper','present':true}"),
            event(
                "a-2",
                "session.attended.v1",
                at("18:00:00"),
                "{'session':'s-1','dog':'bracken','present':true}"),
            rep("r-2", "s-1", "bracken", "18:06:00", ""));
  }

  @Test
  void itSeesItsOwnDogAndNoOther() {
    pupil.get("/dogs").then().statusCode(200).body("dogs.dog", contains("juniper"));
    pupil.get("/dogs/juniper").then().statusCode(200);
    pupil.get("/dogs/juniper/reps").then().statusCode(200).body("reps.rep", contains("r-1"));
    pupil.get("/dogs/bracken").then().statusCode(404);
    pupil.get("/dogs/bracken/reps").then().statusCode(404);
    assertThat(without(pupil.get("/dogs/bracken").asString(), "bracken"))
        .isEqualTo(without(pupil.get("/dogs/nobody").asString(), "nobody"));
  }

  private static String without(String answer, String dog) {
    return answer.replace(dog, "");
  }

  @Test
  void itSeesItsPartOfSessionsAndClasses() {
    pupil
        .get("/sessions/s-1")
        .then()
        .statusCode(200)
        .body("reps.rep", contains("r-1"))
        .body("attendance.dog", contains("juniper"));
    pupil.get("/classes/c-1").then().statusCode(200).body("members.dog", contains("juniper"));
    pupil.get("/sessions/s-1/reps").then().statusCode(200).body("reps.rep", contains("r-1"));
    pupil.get("/sessions/s-1/attendance").then().body("attendance.dog", contains("juniper"));
    pupil.get("/classes/c-1/members").then().body("members.dog", contains("juniper"));
    pupil.get("/reps/r-1").then().statusCode(200).body("dog", equalTo("juniper"));
    pupil.get("/reps/r-2").then().statusCode(404);
    club.get("/sessions/s-1/reps").then().body("reps.rep", contains("r-1", "r-2"));
    club.get("/sessions/s-1/attendance")
        .then()
        .body("attendance.dog", contains("bracken", "juniper"));
    club.get("/classes/c-1/members").then().body("members.dog", contains("bracken", "juniper"));
    club.get("/reps/r-2").then().statusCode(200).body("dog", equalTo("bracken"));
    club.get("/sessions/s-1").then().body("reps.rep", contains("r-1", "r-2"));
    club.get("/classes/c-1").then().body("members.dog", contains("bracken", "juniper"));
  }

  @Test
  void whatSpeaksOfTheWholeClubIsClosedToIt() {
    for (String path :
        List.of("/events", "/digest", "/waiting", "/handlers", "/handlers/h-1", "/overview")) {
      pupil.get(path).then().statusCode(403);
      pupil
          .given()
          .header("Accept", "application/x-ndjson, */*")
          .get(club.path(path))
          .then()
          .statusCode(403);
    }
    for (String path :
        List.of("", "/grounds", "/grounds/g-1", "/programmes/p-1", "/devices/t-1", "/sessions")) {
      pupil.get(path).then().statusCode(200);
    }
  }

  @Test
  void itKnowsTheFateOfEventsAboutItsDogAlone() {
    pupil.get("/events/log-r-1").then().statusCode(200).body("status", equalTo("applied"));
    pupil.get("/events/dog-juniper").then().statusCode(200);
    for (String id : List.of("log-r-2", "dog-bracken", "handler-h-1", "open-s-1", "e-lost")) {
      pupil.get("/events/" + id).then().statusCode(404);
    }
  }

  @Test
  void itSendsWhatIsAboutItsDogAlone() {
    assertThat(pupil.send(rep("r-3", "s-1", "juniper", "18:07:00", "")).statusCode())
        .isEqualTo(201);
    assertThat(
            pupil
                .send(
                    event(
                        "t-1",
                        "trial.run.v1",
                        at("19:00:00"),
                        "{'dog':'juniper','poles':6,'outcome':'clean'}"))
                .statusCode())
        .isEqualTo(201);
    for (String refused :
        List.of(
            rep("r-4", "s-1", "bracken", "18:07:00", ""),
            event("o-1", "session.opened.v1", at("19:00:00"), "{'session':'s-2'}"),
            event("m-1", "rep.amended.v1", at("19:00:00"), "{'rep':'r-1','drive':2}"),
            event("m-2", "rep.amended.v1", at("19:00:00"), "{'rep':'r-2','dog':'juniper'}"),
            event(
                "w-1", "event.withdrawn.v1", at("19:00:00"), "{'event':'log-r-1','reason':'x'}"))) {
      pupil.send(refused).then().statusCode(403).body("detail", containsString("narrowed"));
    }
    pupil
        .sendAll(
            List.of(
                rep("r-5", "s-1", "bracken", "18:08:00", ""),
                rep("r-6", "s-1", "juniper", "18:08:00", "")))
        .then()
        .body("accepted", equalTo(1))
        .body("refused.index", contains(0));
    pupil.get("/dogs/juniper/reps").then().body("reps.rep", contains("r-1", "r-3", "r-6"));
  }

  /** An event's id that another dog's has is taken, and shows nothing of what it has. */
  @Test
  void aTakenIdTellsNoMoreThanThatItIsTaken() {
    String taken = rep("r-8", "s-1", "juniper", "18:06:00", "").replace("log-r-8", "log-r-2");

    pupil.send(taken).then().statusCode(409);
    pupil.get("/events/log-r-2").then().statusCode(404);
  }

  /** A rep that is another dog's already cannot be had by logging it earlier. */
  @Test
  void aRepIsNotTakenFromTheDogThatItWasLoggedFor() {
    String earlier = rep("r-2", "s-1", "juniper", "18:00:00", "").replace("log-r-2", "again-r-2");

    pupil.send(earlier).then().statusCode(403);
    club.get("/dogs/bracken/reps").then().body("reps.rep", contains("r-2"));
  }

  @Test
  void aPageOfDogsIsFullOfItsOwn() {
    Club two = club.withKey("two", "'records:read'", "'dogs':['zorro','aske']");
    club.record(Said.dog("zorro"), Said.dog("aske"));

    two.get("/dogs?limit=1").then().body("dogs.dog", contains("aske"));
    String link = two.get("/dogs?limit=1").header("Link");
    two.given()
        .get(link.substring(1, link.indexOf('>')))
        .then()
        .body("dogs.dog", contains("zorro"));
    club.withKey("none", "'records:read'", "'dogs':['unborn']")
        .get("/dogs")
        .then()
        .body("dogs", empty());
  }
}
