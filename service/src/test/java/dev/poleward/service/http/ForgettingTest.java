package dev.poleward.service.http;

import static dev.poleward.service.http.Said.at;
import static dev.poleward.service.http.Said.event;
import static dev.poleward.service.http.Said.rep;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasKey;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;

import dev.poleward.service.Club;
import dev.poleward.service.SharedService;
import io.restassured.response.Response;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Personal data: where it shows, and that it is gone for good once a person is forgotten. */
@ExtendWith(SharedService.class)
class ForgettingTest {

  private static final String NAME = "Wilhelmina Example";
  private static final String NOTE = "Looked back at the cross";
  private static final String REGISTERED = Said.handler("h-1", NAME);
  private static final String NOTED =
      rep("r-1", "s-1", "juniper", "18:05:00", ",'handler':'h-1','note':'" + NOTE + "'");

  private final Club club;

  ForgettingTest(Club club) {
    this.club = club;
  }

  @BeforeEach
  void furnish() {
    club.record(
        REGISTERED,
        Said.handler("h-2", "Other Example"),
        Said.dog("juniper"),
        Said.session("s-1", "18:00:00"),
        NOTED,
        rep("r-2", "s-1", "juniper", "18:06:00", ",'handler':'h-2','note':'Kept'"));
  }

  private Response forget(String handler) {
    return club.given().delete(club.path("/handlers/" + handler + "/personal-data"));
  }

  private String csv() {
    return club.given()
        .header("Accept", "text/csv")
        .get(club.path("/dogs/juniper/reps"))
        .then()
        .statusCode(200)
        .extract()
        .asString();
  }

  private String lines() {
    return club.given()
        .header("Accept", "application/x-ndjson")
        .get(club.path("/events"))
        .then()
        .statusCode(200)
        .extract()
        .asString();
  }

  /** Everything that anybody can read in the club. */
  private List<String> everything() {
    return List.of(
        club.get("/events").asString(),
        lines(),
        csv(),
        club.get("/dogs/juniper/reps").asString(),
        club.get("/sessions/s-1").asString(),
        club.get("/handlers").asString(),
        club.get("/handlers/h-1").asString(),
        club.get("/events/handler-h-1").asString(),
        club.get("/events/log-r-1").asString());
  }

  @Test
  void namesAndNotesShowWhereTheyBelong() {
    club.get("/handlers/h-1").then().body("name", equalTo(NAME));
    club.get("/handlers").then().body("handlers[0].name", equalTo(NAME));
    club.get("/dogs/juniper/reps").then().body("reps[0].note", equalTo(NOTE));
    club.get("/sessions/s-1").then().body("reps[0].note", equalTo(NOTE));
    club.get("/events?after=2")
        .then()
        .body("events[0].data.name", equalTo(NAME))
        .body("events[4].data.note", equalTo(NOTE))
        .body("events[0]", not(hasKey("forgotten")));
    assertThat(csv()).contains(NOTE);
    assertThat(lines()).contains(NAME).contains(NOTE);
  }

  @Test
  void afterwardsTheyAreGoneFromEveryAnswer() {
    String digest = club.get("/digest").asString();
    Instant before = club.service().now();

    Response forgotten = forget("h-1");

    forgotten.then().statusCode(200).body("handler", equalTo("h-1"));
    assertThat(Instant.parse(forgotten.path("lastCopyGoneBy"))).isAfter(before);
    assertThat(everything())
        .allSatisfy(answer -> assertThat(answer).doesNotContain(NAME).doesNotContain(NOTE));
    club.get("/events?after=2")
        .then()
        .body("events[0].forgotten", equalTo(true))
        .body("events[4].forgotten", equalTo(true))
        .body("events[4].data.rep", equalTo("r-1"))
        .body("events[5]", not(hasKey("forgotten")));
    club.get("/handlers/h-1").then().body("forgotten", equalTo(true));
    club.get("/dogs/juniper/reps")
        .then()
        .body("reps[0].note", nullValue())
        .body("reps[1].note", equalTo("Kept"));
    club.get("/handlers/h-2").then().body("name", equalTo("Other Example"));
    assertThat(club.get("/digest").asString()).isEqualTo(digest);
  }

  @Test
  void anOldEventIsStillRepeatedAndBringsNothingBack() {
    forget("h-1").then().statusCode(200);

    for (String old : List.of(REGISTERED, NOTED)) {
      club.send(old).then().statusCode(200).body("status", equalTo("repeated"));
    }
    club.send(REGISTERED.replace(NAME, "Somebody Else"))
        .then()
        .statusCode(200)
        .body("status", equalTo("repeated"));
    assertThat(everything())
        .allSatisfy(
            answer ->
                assertThat(answer)
                    .doesNotContain(NAME)
                    .doesNotContain(NOTE)
                    .doesNotContain("Somebody Else"));
  }

  @Test
  void whatComesLaterIsDropped() {
    forget("h-1").then().statusCode(200);

    club.send(rep("r-3", "s-1", "juniper", "18:09:00", ",'handler':'h-1','note':'A new note'"))
        .then()
        .statusCode(201);
    club.send(
            event(
                "a-1",
                "rep.amended.v1",
                at("19:00:00"),
                "{'rep':'r-1','handler':'h-1','drive':3,'note':'A late note'}"))
        .then()
        .statusCode(201);
    club.send(
            event(
                "handler-again",
                "handler.registered.v1",
                at("09:00:00"),
                "{'handler':'h-1','name':'Once Again','email':'once@saltmarsh.example'}"))
        .then()
        .statusCode(201);

    assertThat(everything())
        .allSatisfy(
            answer ->
                assertThat(answer)
                    .doesNotContain("A new note")
                    .doesNotContain("A late note")
                    .doesNotContain("Once Again")
                    .doesNotContain("once@"));
    club.get("/dogs/juniper/reps").then().body("reps[0].drive", equalTo(3));
  }

  @Test
  void forgettingAgainTellsWhenItWas() {
    String first = forget("h-1").path("forgotten");

    forget("h-1").then().statusCode(200).body("forgotten", equalTo(first));
    club.get("/events?after=8").then().body("events.size()", equalTo(1));
    club.get("/events?after=8").then().body("events[0].type", equalTo("person.forgotten.v1"));
  }

  @Test
  void somebodyWhoIsNotKnownYetCanBeForgotten() {
    forget("h-9").then().statusCode(200);
    club.send(Said.handler("h-9", "Late Example")).then().statusCode(201);

    club.get("/handlers/h-9")
        .then()
        .statusCode(200)
        .body("forgotten", equalTo(true))
        .body("name", nullValue());
    assertThat(club.get("/events").asString()).doesNotContain("Late Example");
  }

  /** A note that names nobody is sealed for whoever handles the dog. */
  @Test
  void notesOfNobodyAreNotTheForgottenPersons() {
    club.send(rep("r-4", "s-1", "juniper", "18:10:00", ",'note':'Nobody wrote this'"));

    forget("h-2").then().statusCode(200);

    assertThat(club.get("/dogs/juniper/reps").asString()).contains(NOTE).doesNotContain("Kept");
  }

  @Test
  void oneClubsForgettingIsNotAnothers(Club other) {
    other.record(REGISTERED);
    forget("h-1").then().statusCode(200);

    other.get("/handlers/h-1").then().body("name", equalTo(NAME));
  }
}
