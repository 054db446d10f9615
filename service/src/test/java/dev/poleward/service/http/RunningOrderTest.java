package dev.poleward.service.http;

import static dev.poleward.service.http.MondayClass.AT_30;
import static dev.poleward.service.http.MondayClass.AT_60;
import static dev.poleward.service.http.MondayClass.SIX;
import static dev.poleward.service.http.MondayClass.drills;
import static dev.poleward.service.http.Said.event;
import static dev.poleward.service.http.Said.json;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsInAnyOrder;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.lessThanOrEqualTo;
import static org.hamcrest.Matchers.not;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.service.Club;
import dev.poleward.service.SharedService;
import io.restassured.response.Response;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Running orders of a class, as instructors ask for them. */
@ExtendWith(SharedService.class)
class RunningOrderTest {

  private final Club club;

  RunningOrderTest(Club club) {
    this.club = club;
  }

  @BeforeEach
  void furnish() {
    MondayClass.meet(club);
  }

  private Response ask(String body) {
    return MondayClass.asks(club, body);
  }

  @Test
  void membersRunWhatTheirNextPlansSay() {
    ask("{" + SIX + "}")
        .then()
        .statusCode(200)
        .body("class", equalTo("monday"))
        .body("from", equalTo("2026-05-04T17:00:00Z"))
        .body("until", equalTo("2026-05-04T18:00:00Z"))
        .body("exact", equalTo(true))
        .body("dogs.dog", contains("fern", "juniper", "moss"))
        .body("dogs.planned", everyItem(equalTo(true)))
        .body("dogs.notes", everyItem(empty()))
        // New dogs all begin with three poles and nothing before them: one setup, two turns each.
        .body("poleSets.setups.flatten().setup.poles", contains(3))
        .body(
            "poleSets[0].setups[0].turns.dog",
            containsInAnyOrder("fern", "juniper", "moss", "fern", "juniper", "moss"))
        .body(
            "poleSets[0].setups[0].turns.drills.flatten().text",
            everyItem(containsString("3 poles")))
        .body("leftOut", empty())
        .body("waitMinutes", equalTo(0));

    club.get("/events?after=0").then().body("events.type", not(hasItem("plan.issued.v1")));
  }

  @Test
  void leastIsCarriedFromWhatStands() {
    Response order =
        ask(
            "{"
                + SIX
                + ",'poleSets':[{'poleSet':'main','stands':"
                + AT_60
                + "}],'dogs':["
                + drills("moss", AT_30, AT_60)
                + ","
                + drills("fern", AT_30, AT_60)
                + "]}");
    order
        .then()
        .statusCode(200)
        .body("poleSets[0].setups.clock", contains("2:00", "1:00"))
        .body(
            "poleSets[0].setups[0].text",
            equalTo("4 poles behind a tunnel, 60° on the pole side (2:00): stands already."))
        .body("poleSets[0].setups[1].ready", equalTo("2026-05-04T17:08:00Z"))
        .body(
            "poleSets[0].setups[0].turns.starts",
            contains("2026-05-04T17:00:00Z", "2026-05-04T17:03:00Z"))
        .body("text", containsString("the least there is; no pole set waits"))
        .body("dogs.planned", everyItem(equalTo(false)));
    // Poles 2 to 4 swing by 30 degrees: 3.6 · 2 · sin 15° [D].
    assertThat(order.jsonPath().getDouble("metres")).isEqualTo(1.863);
    assertThat(order.jsonPath().getDouble("naive.metres")).isEqualTo(7.452);
  }

  @Test
  void askedAgainMidwayItGoesOnFromWhatRan() throws IOException {
    String wish = "{" + SIX + ",'rest':{'minutes':2},'apart':[{'dog':'moss','after':'juniper'}]";
    JsonNode first = tree(ask(wish + "}"));
    ArrayNode ran = new ObjectMapper().createArrayNode();
    JsonNode standing = first.at("/poleSets/0/setups/0");
    for (int i = 0; i < 2; i++) {
      JsonNode turn = standing.at("/turns/" + i);
      ran.addObject()
          .put("dog", turn.path("dog").textValue())
          .put("ended", turn.path("ends").textValue())
          .set("setup", standing.path("setup"));
    }
    String from = ran.path(1).path("ended").textValue();
    ObjectNode midway = (ObjectNode) new ObjectMapper().readTree(json(wish + "}"));
    midway.put("from", from).set("ran", ran);
    midway
        .putArray("poleSets")
        .addObject()
        .put("poleSet", "main")
        .set("stands", standing.path("setup"));

    JsonNode then = tree(ask(midway.toString()));

    // What is left of the first order is the best order of what is left.
    assertThat(then.at("/poleSets/0/setups/0/turns").size()).isEqualTo(4);
    for (int i = 0; i < 4; i++) {
      assertThat(then.at("/poleSets/0/setups/0/turns/" + i + "/starts"))
          .isEqualTo(standing.at("/turns/" + (i + 2) + "/starts"));
    }
    assertThat(then.path("metres").intValue()).isZero();
    // The dogs' second halves, not their first ones again.
    List<String> all = new ArrayList<>();
    standing
        .at("/turns")
        .forEach(turn -> all.add(turn.path("dog").textValue() + turn.path("drills")));
    List<String> run = new ArrayList<>(all.subList(0, 2));
    then.at("/poleSets/0/setups/0/turns")
        .forEach(turn -> run.add(turn.path("dog").textValue() + turn.path("drills")));
    assertThat(run).containsExactlyInAnyOrderElementsOf(all);
  }

  @Test
  void whatWasAnsweredCanBeSentAgain() throws IOException {
    JsonNode first = tree(ask("{" + SIX + "}"));
    ObjectNode again = (ObjectNode) new ObjectMapper().readTree(json("{" + SIX + "}"));
    ArrayNode dogs = again.putArray("dogs");
    first
        .path("dogs")
        .forEach(
            dog ->
                dogs.addObject()
                    .put("dog", dog.path("dog").textValue())
                    .set("drills", dog.path("drills")));

    assertThat(tree(ask(again.toString())).path("poleSets")).isEqualTo(first.path("poleSets"));
  }

  @Test
  void restingDogsArePlannedNothingAndLateOnesComeLater() {
    club.record(
        event(
            "rest-fern",
            "dog.rested.v1",
            "2026-05-03T17:00:00Z",
            "{'dog':'fern','reason':'a sore shoulder'}"));

    ask("{" + SIX + ",'dogs':[{'dog':'fern'},{'dog':'moss','comes':'2026-05-04T17:20:00Z'}]}")
        .then()
        .statusCode(200)
        .body("leftOut.dog", contains("fern"))
        .body("leftOut.why", contains("care"))
        .body("dogs[0].notes[0].id", equalTo("resting"))
        .body("poleSets[0].setups[0].turns[0].dog", equalTo("moss"))
        .body("poleSets[0].setups[0].turns[0].starts", equalTo("2026-05-04T17:20:00Z"));
    // Whoever sends drills all the same sees the note beside them.
    ask("{" + SIX + ",'dogs':[" + drills("fern", AT_30) + "]}")
        .then()
        .body("leftOut", empty())
        .body("dogs[0].turns", equalTo(1))
        .body("dogs[0].notes.severity", hasItem("stop"));
    // Rested after the class began.
    club.record(event("rest-moss", "dog.rested.v1", "2026-05-04T17:05:00Z", "{'dog':'moss'}"));
    ask("{" + SIX + ",'from':'2026-05-04T17:10:00Z','dogs':[{'dog':'moss'}]}")
        .then()
        .body("leftOut.why", contains("care"));
  }

  @Test
  void whereTheTimeIsShortEverybodyRunsBeforeAnybodyRunsTwice() {
    ask("{"
            + SIX
            + ",'atHand':{'turns':3},'changeMinutes':0,'dogs':["
            + drills("moss", AT_30, AT_60)
            + ","
            + drills("fern", AT_30, AT_60)
            + ","
            + drills("juniper", AT_30)
            + "]}")
        .then()
        .statusCode(200)
        .body("until", equalTo("2026-05-04T17:09:00Z"))
        .body("poleSets[0].setups.clock", contains("1:00"))
        .body("poleSets[0].setups[0].turns.dog", contains("moss", "fern", "juniper"))
        .body("leftOut.dog", contains("moss", "fern"))
        .body("leftOut.why", everyItem(equalTo("time")))
        .body("leftOut.turns", everyItem(equalTo(1)))
        .body("ends", equalTo("2026-05-04T17:09:00Z"));
  }

  @Test
  void manySetupsHaveABoundBesideThem() {
    String dogs =
        List.of("juniper", "moss", "fern").stream()
            .map(
                dog ->
                    drills(
                        dog,
                        IntStream.range(0, 10)
                            .mapToObj(
                                i -> AT_30.replace("30", "%d".formatted(7 * i + dog.length())))
                            .toArray(String[]::new)))
            .collect(Collectors.joining(","));

    Response order = ask("{" + SIX + ",'atHand':{'minutes':240},'dogs':[" + dogs + "]}");

    order.then().statusCode(200).body("leftOut", empty()).body("metresAtLeast", greaterThan(0f));
    assertThat(order.jsonPath().getDouble("metresAtLeast"))
        .isLessThanOrEqualTo(order.jsonPath().getDouble("metres"));
    order.then().body("poleSets[0].setups.size()", lessThanOrEqualTo(30));
  }

  @Test
  void membersAreThoseOfTheTime() {
    club.record(
        event(
            "leave-fern",
            "class.left.v1",
            "2026-05-04T17:30:00Z",
            "{'class':'monday','dog':'fern'}"));

    ask("{" + SIX + "}").then().body("dogs.dog", hasItem("fern"));
    ask("{'time':'2026-05-04T18:00:00Z'}").then().body("dogs.dog", not(hasItem("fern")));
    // Without a time it is now.
    ask("{}").then().statusCode(200).body("dogs.dog", contains("juniper", "moss"));
  }

  private static JsonNode tree(Response response) throws IOException {
    return new ObjectMapper().readTree(response.then().statusCode(200).extract().asString());
  }
}
