package dev.poleward.service.http;

import static dev.poleward.service.http.Said.at;
import static dev.poleward.service.http.Said.dog;
import static dev.poleward.service.http.Said.event;
import static dev.poleward.service.http.Said.json;
import static dev.poleward.service.http.Said.rep;
import static dev.poleward.service.http.Said.session;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsInAnyOrder;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasKey;
import static org.hamcrest.Matchers.not;

import dev.poleward.service.Club;
import dev.poleward.service.SharedService;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The door for one event, structured or binary, and its answers. */
@ExtendWith(SharedService.class)
class SingleEventTest {

  private final Club club;

  SingleEventTest(Club club) {
    this.club = club;
  }

  @Test
  void aNewEventIsAppliedAndSaysWhereItsFateIsTold() {
    Response answer = club.send(session("s-1", "18:00:00"));

    answer
        .then()
        .statusCode(201)
        .header("Location", club.path("/events/open-s-1"))
        .body("id", equalTo("open-s-1"))
        .body("status", equalTo("applied"))
        .body("waitsFor", empty());
    club.given()
        .get(answer.header("Location"))
        .then()
        .statusCode(200)
        .body("status", equalTo("applied"))
        .body("type", equalTo("session.opened.v1"));
  }

  @Test
  void theSameAgainIsRepeated() {
    club.send(session("s-1", "18:00:00"));

    club.send(session("s-1", "18:00:00"))
        .then()
        .statusCode(200)
        .body("$", equalTo(Map.of("id", "open-s-1", "status", "repeated")));
  }

  @Test
  void theSameIsJudgedByTypeInstantAndDataAlone() {
    club.send(
        event("e-1", "trial.run.v1", at("17:00:00"), "{'dog':'d','poles':6,'outcome':'clean'}"));
    String otherwise =
        json(
            "{'data':{'outcome':'clean','poles':6.0,'dog':'d'},'subject':'s','specversion':'1.0','id':'e-1',"
                + "'source':'/elsewhere','time':'2026-05-04T18:00:00.000+01:00','type':'trial.run.v1','more':1}");

    club.send(otherwise).then().statusCode(200).body("status", equalTo("repeated"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{'session':'s-2'} session.opened.v1 2026-05-04T18:00:00Z",
        "{'session':'s-1'} session.closed.v1 2026-05-04T18:00:00Z",
        "{'session':'s-1'} session.opened.v1 2026-05-04T18:00:00.000000001Z"
      })
  void otherContentUnderTheIdIsContradicted(String other) {
    club.send(session("s-1", "18:00:00"));
    List<String> words = List.of(other.split(" ", -1));

    club.send(event("open-s-1", words.get(1), words.get(2), words.get(0)))
        .then()
        .statusCode(409)
        .body("type", equalTo("urn:poleward:problem:contradicted"))
        .body("detail", containsString(club.path("/events/open-s-1")));
  }

  @Test
  void whatItRefersToAndIsNotKnownIsAwaited() {
    club.send(rep("r-1", "s-1", "juniper", "18:05:00", ",'handler':'h-1'"))
        .then()
        .statusCode(201)
        .body("status", equalTo("waiting"))
        .body(
            "waitsFor",
            containsInAnyOrder(
                Map.of("kind", "session", "id", "s-1"),
                Map.of("kind", "dog", "id", "juniper"),
                Map.of("kind", "handler", "id", "h-1")));
  }

  private RequestSpecification binary(String id) {
    return club.given()
        .contentType("application/json")
        .header("ce-specversion", "1.0")
        .header("ce-id", id)
        .header("ce-source", "/apps/timer")
        .header("ce-type", "session.opened.v1")
        .header("ce-time", "2026-05-04T18:00:00+01:00");
  }

  @Test
  void anEventComesInBinaryModeToo() {
    binary("e-1")
        .header("ce-subject", "Euro %E2%82%AC \"quoted\" 100%25")
        .header("CE-FieldNote", "wet%20grass")
        .body(json("{'session':'s-1'}"))
        .post(club.path("/events"))
        .then()
        .statusCode(201)
        .body("status", equalTo("applied"));

    club.get("/events?after=2")
        .then()
        .body("events[0].subject", equalTo("Euro € \"quoted\" 100%"))
        .body("events[0].fieldnote", equalTo("wet grass"))
        .body("events[0].source", equalTo("/apps/timer"))
        .body("events[0].time", equalTo("2026-05-04T18:00:00+01:00"))
        .body("events[0].data", equalTo(Map.of("session", "s-1")));
  }

  @Test
  void bothFormsOfAnEventAreTheSame() {
    club.send(event("e-1", "session.opened.v1", at("17:00:00"), "{'session':'s-1'}"));

    binary("e-1")
        .body(json("{'session':'s-1'}"))
        .post(club.path("/events"))
        .then()
        .statusCode(200)
        .body("status", equalTo("repeated"));
  }

  @Test
  void faultsOfBinaryModePointIntoTheStructuredForm() {
    binary("an id")
        .header("ce-subject", "%E2%82")
        .header("ce-data", "x")
        .header("ce-too-long", "x")
        .body(json("{'sessions':'s-1'}"))
        .post(club.path("/events"))
        .then()
        .statusCode(400)
        .body(
            "errors.pointer",
            containsInAnyOrder(
                "/id", "/subject", "/data", "/too-long", "/data/session", "/data/sessions"));
  }

  @Test
  void binaryDataThatIsNoObjectIsRefused() {
    binary("e-1")
        .body("[1]")
        .post(club.path("/events"))
        .then()
        .statusCode(400)
        .body("errors.pointer", contains("/data"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"text/plain", "application/xml", "application/cloudevents+xml", "image/png"})
  void otherKindsOfBodiesAreNotRead(String type) {
    club.given()
        .contentType(type)
        .body(session("s-1", "18:00:00").getBytes(java.nio.charset.StandardCharsets.UTF_8))
        .post(club.path("/events"))
        .then()
        .statusCode(415)
        .body("detail", containsString(Club.BATCH));
  }

  @Test
  void jsonWithoutAttributesIsNoEvent() {
    club.given()
        .contentType("application/json")
        .body(session("s-1", "18:00:00"))
        .post(club.path("/events"))
        .then()
        .statusCode(415)
        .body("detail", containsString("ce-"));
  }

  @Test
  void theMediaTypeMayNameItsCharset() {
    club.given()
        .contentType("application/CloudEvents+json; charset=utf-8")
        .body(session("s-1", "18:00:00").getBytes(java.nio.charset.StandardCharsets.UTF_8))
        .post(club.path("/events"))
        .then()
        .statusCode(201);
  }

  @Test
  void attributesThatNobodyKnowsAreKept() {
    club.send(
            event(
                "e-1",
                "dog.registered.v1",
                at("17:00:00"),
                "{'dog':'d','callName':'Dot'}",
                ",'subject':'dogs/d','dataschema':'urn:club:dog','text':'wörter','whole':4.0,'least':-2147483648,"
                    + "'truth':false,'nothing':null"))
        .then()
        .statusCode(201);

    club.get("/events?after=2")
        .then()
        .body("events[0].subject", equalTo("dogs/d"))
        .body("events[0].dataschema", equalTo("urn:club:dog"))
        .body("events[0].text", equalTo("wörter"))
        .body("events[0].whole", equalTo(4))
        .body("events[0].least", equalTo(-2147483648))
        .body("events[0].truth", equalTo(false))
        .body("events[0]", not(hasKey("nothing")));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "club.registered.v1 POST /v1/clubs",
        "access-key.issued.v1 POST /v1/clubs/{club}/access-keys",
        "access-key.revoked.v1 DELETE /v1/clubs/{club}/access-keys/{key}",
        "person.forgotten.v1 DELETE /v1/clubs/{club}/handlers/{handler}/personal-data",
        "plan.issued.v1 its plans"
      })
  void whatOnlyTheServiceWritesIsRefusedWithTheRouteThatDoes(String typeAndRoute) {
    String type = typeAndRoute.substring(0, typeAndRoute.indexOf(' '));
    String route = typeAndRoute.substring(typeAndRoute.indexOf(' ') + 1);

    club.send(event("e-1", type, at("17:00:00"), "{'handler':'h-1'}"))
        .then()
        .statusCode(400)
        .body("errors.pointer", contains("/type"))
        .body("errors[0].detail", containsString(route));
    assertThat(club.get("/events/e-1").statusCode()).isEqualTo(404);
  }

  @Test
  void aMemberThatIsNoEventOfTheClubLeavesNoTrace() {
    club.send(dog("juniper").replace("callName", "name")).then().statusCode(400);

    club.get("/digest").then().body("events", equalTo(0));
  }
}
