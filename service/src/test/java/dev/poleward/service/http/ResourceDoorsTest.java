package dev.poleward.service.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.service.Club;
import dev.poleward.service.SharedService;
import dev.poleward.service.http.ResourceDoors.Door;
import io.restassured.response.Response;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every door for one resource, tried with the example of its event. */
@ExtendWith(SharedService.class)
class ResourceDoorsTest {

  private final Club club;

  ResourceDoorsTest(Club club) {
    this.club = club;
  }

  static List<Door> doors() {
    return ResourceDoors.ALL;
  }

  private static FlatBody example(Door door) {
    return FlatBody.of(door, FlatBody.example(door));
  }

  private JsonNode recorded(String id) {
    for (JsonNode each : FlatBody.tree(club.get("/events?limit=1000").asString()).path("events")) {
      if (each.path("id").textValue().equals(id)) {
        return each;
      }
    }
    throw new AssertionError("not recorded: " + id);
  }

  /** All that the example refers to. */
  private void furnish() {
    club.record(
        Said.dog("juniper"),
        Said.handler("handler-1", "First Example"),
        Said.handler("handler-2", "Second Example"),
        Said.event("g", "ground.registered.v1", Said.at("09:00:00"), "{'ground':'lower-field'}"),
        Said.event(
            "c",
            "class.formed.v1",
            Said.at("09:00:00"),
            "{'class':'monday-beginners','name':'Monday'}"),
        Said.session("s-1", "17:00:00"),
        Said.rep("r-1", "s-1", "juniper", "17:00:01", ""));
  }

  @ParameterizedTest
  @MethodSource("doors")
  void whatComesInIsTheEvent(Door door) {
    furnish();
    ObjectNode event = FlatBody.example(door);
    String id = event.get("id").textValue();

    Response answer = FlatBody.of(door, event).post(club);

    answer.then().statusCode(201).body("id", equalTo(id));
    JsonNode kept = recorded(id);
    for (String member : List.of("type", "source", "data")) {
      assertThat(kept.path(member)).as(member).isEqualTo(event.path(member));
    }
    assertThat(java.time.OffsetDateTime.parse(kept.path("time").textValue()))
        .isEqualTo(java.time.OffsetDateTime.parse(event.path("time").textValue()));
    assertThat(kept.fieldNames())
        .toIterable()
        .containsExactlyInAnyOrder(
            "specversion",
            "id",
            "source",
            "type",
            "time",
            "datacontenttype",
            "recordedtime",
            "data");
  }

  /** To the thing where there is one and it counts, else to the event's fate. */
  @ParameterizedTest
  @MethodSource("doors")
  void theAnswerLeadsOn(Door door) {
    furnish();
    ObjectNode event = FlatBody.example(door);
    event.put("time", Said.at("08:00:00"));
    Response answer = FlatBody.of(door, event).post(club);

    answer.then().statusCode(201);
    String fate = club.path("/events/" + event.get("id").textValue());
    boolean applied = answer.path("status").equals("applied");
    assertThat(applied).isEqualTo(answer.<List<Object>>path("waitsFor").isEmpty());
    assertThat(answer.header("Location").equals(fate))
        .as(answer.header("Location"))
        .isEqualTo(!applied || door.thing() == null);
    Response read = club.given().get(answer.header("Location"));
    read.then().statusCode(200);
    if (applied && door.thing() != null) {
      assertThat(door.thing()).endsWith("}");
      String place = door.thing().replaceFirst(".*\\{([a-z]+)}$", "$1");
      assertThat(read.<String>path(place)).isEqualTo(event.at("/data/" + place).textValue());
    }
  }

  @ParameterizedTest
  @MethodSource("doors")
  void theSameAgainIsRepeatedThroughWhicheverDoor(Door door) {
    ObjectNode event = FlatBody.example(door);
    FlatBody flat = FlatBody.of(door, event);
    flat.post(club).then().statusCode(201);

    ObjectNode otherwise = flat.body().deepCopy();
    otherwise.remove("source");
    Map<String, String> repeated = Map.of("id", event.get("id").textValue(), "status", "repeated");
    flat.post(club).then().statusCode(200).body("$", equalTo(repeated));
    flat.post(club, otherwise.toString()).then().statusCode(200).body("$", equalTo(repeated));
    club.send(event.toString()).then().statusCode(200).body("$", equalTo(repeated));
  }

  @ParameterizedTest
  @MethodSource("doors")
  void whatCameThroughTheEventDoorIsKnownHere(Door door) {
    ObjectNode event = FlatBody.example(door);
    event.remove("recordedtime");
    club.send(event.toString()).then().statusCode(201);

    FlatBody.of(door, event).post(club).then().statusCode(200).body("status", equalTo("repeated"));
  }

  @ParameterizedTest
  @MethodSource("doors")
  void otherContentUnderTheIdIsContradicted(Door door) {
    FlatBody flat = example(door);
    flat.post(club).then().statusCode(201);
    String id = flat.body().get("id").textValue();

    flat.post(club, flat.body().deepCopy().put("time", Said.at("03:00:00")).toString())
        .then()
        .statusCode(409)
        .body("type", equalTo("urn:poleward:problem:contradicted"))
        .body("detail", containsString(club.path("/events/" + id)));
    club.get("/events/" + id).then().body("contradictedCount", equalTo(1));
  }

  @ParameterizedTest
  @MethodSource("doors")
  void everyFaultIsToldAtOnceInTheWordsOfTheBody(Door door) {
    String place = place(door);
    String more = place.isEmpty() ? "" : ",'" + place + "':'again'";
    Response answer =
        example(door)
            .post(club, Said.json("{'id':'a b','time':'noon','source':'','extra':{}" + more + "}"));

    answer.then().statusCode(400).body("type", equalTo("urn:poleward:problem:invalid"));
    List<String> pointers = answer.path("errors.pointer");
    assertThat(pointers).contains("/id", "/time", "/source", "/extra").doesNotHaveDuplicates();
    assertThat(pointers).noneMatch(each -> each.startsWith("/data"));
    if (!place.isEmpty()) {
      assertThat(pointers).contains("/" + place);
    }
    for (JsonNode member : FlatContract.required(door)) {
      assertThat(pointers).contains("/" + member.textValue());
    }
  }

  /** The open place of a door's path; empty where there is none. */
  private static String place(Door door) {
    return door.below().contains("{") ? door.below().replaceFirst(".*\\{([a-z]+)}.*", "$1") : "";
  }

  @ParameterizedTest
  @MethodSource("doors")
  void whatIsNoFlatBodyIsRefused(Door door) {
    FlatBody flat = example(door);
    for (String body : List.of("[]", "1", "null", "'x'", "", "{", "{'id':1,'id':2}", "{} {}")) {
      Response answer = flat.post(club, Said.json(body));
      assertThat(answer.statusCode()).as(body).isEqualTo(400);
      answer.then().body("errors.pointer", hasItem(""));
    }
    flat.post(club, " ".repeat((4 << 20) + 1)).then().statusCode(413);
    flat.post(club, many(flat.body(), 1_001))
        .then()
        .statusCode(400)
        .body("errors.pointer", contains(""));
    assertThat(club.get("/digest").<Integer>path("events")).isZero();
  }

  private static String many(ObjectNode body, int members) {
    ObjectNode much = body.deepCopy();
    for (int i = 0; i < members; i++) {
      much.put("member" + i, i);
    }
    return much.toString();
  }

  @ParameterizedTest
  @MethodSource("doors")
  void bodiesAreJsonAndNothingElse(Door door) {
    FlatBody flat = example(door);
    for (String type :
        List.of("application/cloudevents+json", "text/plain", "application/octet-stream")) {
      club.given()
          .contentType(type)
          .body(flat.body().toString().getBytes(StandardCharsets.UTF_8))
          .post(club.path(flat.below()))
          .then()
          .statusCode(415)
          .body("detail", containsString("application/json"));
    }
    club.given()
        .contentType("Application/JSON; charset=utf-8")
        .body(flat.body().toString().getBytes(StandardCharsets.UTF_8))
        .post(club.path(flat.below()))
        .then()
        .statusCode(201);
  }

  @ParameterizedTest
  @MethodSource("doors")
  void idsInThePathAreIds(Door door) {
    String place = place(door);
    if (place.isEmpty()) {
      return;
    }
    for (String none : List.of("a%20b", "%C3%A9", "a:b", "x".repeat(65))) {
      new FlatBody(door.below().replace("{" + place + "}", none), example(door).body())
          .post(club)
          .then()
          .statusCode(400)
          .body("errors.parameter", contains(place));
    }
  }

  @ParameterizedTest
  @MethodSource("doors")
  void onlyTheScopesOfItsTypeOpenIt(Door door) {
    FlatBody flat = example(door);
    List<String> scopes = new ArrayList<>();
    FlatContract.scopes(door).forEach(each -> scopes.add(each.textValue()));
    for (String scope : List.of("records:read", "records:write", "timing:push", "club:manage")) {
      Club holder = club.withKey("only-" + scope.replace(':', '-'), "'" + scope + "'");
      Response answer = flat.post(holder);
      if (scopes.contains(scope)) {
        assertThat(answer.statusCode()).as(scope).isEqualTo(201);
      } else {
        answer
            .then()
            .statusCode(403)
            .body("detail", equalTo("Needs the scope " + String.join(" or ", scopes) + "."));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("doors")
  void aNarrowedKeySendsOnlyWhatNamesItsDog(Door door) {
    Club pupil = club.withKey("pupil", "'records:write'", "'dogs':['juniper']");
    Club other = club.withKey("other", "'records:write'", "'dogs':['bracken']");
    boolean names =
        FlatBody.example(door).at("/data/dog").asText().equals("juniper")
            && FlatContract.scopes(door).toString().contains("records:write")
            && !door.type().equals("rep.amended.v1");

    example(door).post(other).then().statusCode(403);
    assertThat(example(door).post(pupil).statusCode()).isEqualTo(names ? 201 : 403);
  }

  @ParameterizedTest
  @MethodSource("doors")
  void anotherClubsKeyOpensNothing(Door door) {
    Club stranger = club.as(club.service().newClub().accessKey());

    example(door).post(stranger).then().statusCode(403);
    assertThat(club.get("/digest").<Integer>path("events")).isZero();
  }
}
