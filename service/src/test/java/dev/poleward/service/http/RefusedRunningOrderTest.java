package dev.poleward.service.http;

import static dev.poleward.service.http.MondayClass.AT_30;
import static dev.poleward.service.http.MondayClass.AT_60;
import static dev.poleward.service.http.MondayClass.ORDER;
import static dev.poleward.service.http.MondayClass.SIX;
import static dev.poleward.service.http.MondayClass.asks;
import static dev.poleward.service.http.MondayClass.joins;
import static dev.poleward.service.http.Said.event;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;

import dev.poleward.service.Club;
import dev.poleward.service.SharedService;
import io.restassured.response.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Running orders that are refused, and why. */
@ExtendWith(SharedService.class)
class RefusedRunningOrderTest {

  private final Club club;

  RefusedRunningOrderTest(Club club) {
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
  void everyFaultIsToldAtOnce() {
    ask("{'time':'2026-05-04T17:00:00Z','from':'2026-05-04T16:00:00Z','turnMinutes':0,'atHand':{'turns':1,'minutes':2},"
            + "'poleSets':[{'poleSet':'a'},{'poleSet':'a','stands':{'poles':4,'spacing':0.6,'leadIn':'tunnel'}}],"
            + "'dogs':[{'dog':'moss'},{'dog':'moss','drills':[{'setup':{'poles':1,'spacing':0.6,'leadIn':'none'}}]}],"
            + "'apart':[{'dog':'moss','after':'moss'}],"
            + "'ran':[{'dog':'moss','poleSet':'b','setup':{'poles':4,'spacing':0.6,'leadIn':'none'},'ended':'2026-05-04T19:00:00Z'}],"
            + "'extra':1}")
        .then()
        .statusCode(400)
        .body(
            "errors.pointer",
            hasItems(
                "/from",
                "/turnMinutes",
                "/atHand",
                "/poleSets/1/poleSet",
                "/poleSets/1/stands/angle",
                "/dogs/1/dog",
                "/dogs/1/drills/0/reps",
                "/dogs/1/drills/0/setup/poles",
                "/apart/0/after",
                "/ran/0/poleSet",
                "/ran/0/ended",
                "/extra"));
    ask("{'from':'2026-05-04T17:00:00Z'}")
        .then()
        .statusCode(400)
        .body("errors.pointer", contains("/time"));
    ask("[]").then().statusCode(400);
    ask("{").then().statusCode(400);
  }

  @Test
  void everyFaultThatOnlyTheRecordShowsIsToldAtOnce() {
    club.record(
        Said.dog("stranger"),
        Said.dog("moss-2"),
        event("merge", "dog.merged.v1", "2026-02-01T10:00:00Z", "{'dog':'moss-2','into':'moss'}"));

    ask("{"
            + SIX
            + ",'dogs':[{'dog':'stranger'},{'dog':'moss'},{'dog':'moss-2'},{'dog':'nobody'}],"
            + "'apart':[{'dog':'moss','after':'stranger'}],"
            + "'ran':[{'dog':'nobody','setup':"
            + AT_30
            + ",'ended':'2026-05-04T17:00:00Z'}]}")
        .then()
        .statusCode(400)
        .body(
            "errors.pointer",
            contains("/dogs/0/dog", "/dogs/2/dog", "/dogs/3/dog", "/apart/0/after", "/ran/0/dog"));
  }

  @Test
  void moreThanOneOrderHoldsIsRefused() {
    String turns =
        List.of("juniper", "moss", "fern").stream()
            .map(
                dog ->
                    "{'dog':'%s','drills':[{'setup':%s,'reps':60},{'setup':%s,'reps':60}]}"
                        .formatted(dog, AT_30, AT_60))
            .collect(Collectors.joining(","));
    ask("{" + SIX + ",'repsPerTurn':1,'dogs':[" + turns + "]}")
        .then()
        .statusCode(400)
        .body("errors.pointer", contains("/dogs"))
        .body("errors.detail", contains("come to 360 turns; 240 at most run in one order"));

    List<String> joining = new ArrayList<>();
    for (int i = 0; i < 28; i++) {
      joining.add(Said.dog("d-" + i));
      joining.add(joins("d-" + i));
    }
    club.record(joining.toArray(String[]::new));
    ask("{" + SIX + "}").then().statusCode(400).body("errors.pointer", contains("/dogs"));
  }

  @Test
  void otherClassesClubsAndKeysHaveNoOrder() {
    club.given()
        .header("Content-Type", "application/json")
        .body("{}")
        .post(club.path("/classes/tuesday/running-order"))
        .then()
        .statusCode(404);
    Club reader = club.withKey("reader", "'records:read'");
    asks(reader, "{" + SIX + "}").then().statusCode(200);
    asks(club.withKey("writer", "'records:write'"), "{}").then().statusCode(403);
    asks(club.withKey("pupil", "'records:read'", "'dogs':['moss']"), "{}").then().statusCode(403);
    club.given()
        .header("Content-Type", "text/plain")
        .body("{}")
        .post(club.path(ORDER))
        .then()
        .statusCode(415);
    club.given()
        .header("Content-Type", "application/json")
        .body("{}")
        .post(club.path(ORDER + "?asOf=2026-05-04T17:00:00Z"))
        .then()
        .statusCode(400);
  }

  @Test
  void hugeBodiesAreRefused() {
    ask("{'extra':'" + "x".repeat(5 << 20) + "'}").then().statusCode(413);
    String dogs =
        IntStream.range(0, 20_000)
            .mapToObj(i -> "{'dog':'d-%d'}".formatted(i))
            .collect(Collectors.joining(","));
    ask("{'dogs':[" + dogs + "]}").then().statusCode(400).body("errors.pointer", hasItem("/dogs"));
  }
}
