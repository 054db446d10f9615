package dev.poleward.service.http;

import static dev.poleward.service.http.Said.at;
import static dev.poleward.service.http.Said.event;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.nullValue;

import dev.poleward.service.Club;
import dev.poleward.service.SharedService;
import io.restassured.response.Response;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** The club at a glance, as it is answered. What it says is tried in the domain. */
@ExtendWith(SharedService.class)
class OverviewTest {

  private static final String DAY = "/overview?asOf=2026-05-10T12:00:00Z";

  private final Club club;

  OverviewTest(Club club) {
    this.club = club;
  }

  @BeforeEach
  void furnish() {
    club.record(
        Said.dog("juniper"),
        Said.dog("bracken"),
        event(
            "dog-visitor",
            "dog.registered.v1",
            "2026-01-10T10:00:00Z",
            "{'dog':'visitor','callName':'Visitor','guest':true}"),
        event("c", "class.formed.v1", "2026-01-10T10:00:00Z", "{'class':'evening','name':'E'}"),
        event("j", "class.joined.v1", at("10:00:00"), "{'class':'evening','dog':'juniper'}"),
        event("rest", "dog.rested.v1", at("10:00:00"), "{'dog':'bracken','reason':'lame'}"),
        Said.session("s-1", "18:00:00"),
        Said.setup("up", "s-1", "18:01:00", 0, ""),
        Said.rep("r-1", "s-1", "juniper", "18:05:00", ""));
  }

  @Test
  void everyDogIsThereWithWhatToMind() {
    club.get(DAY)
        .then()
        .statusCode(200)
        .body("agedTo", equalTo("2026-05-10"))
        .body("untrainedDays", equalTo(21))
        .body("totals.dogs", equalTo(2))
        .body("totals.guests", equalTo(1))
        .body("totals.resting", equalTo(1))
        .body("totals.untrained", equalTo(1))
        .body("dogs.dog", contains("bracken", "juniper"))
        .body("dogs[0].resting", equalTo(true))
        .body("dogs[0].lastTrained", nullValue())
        .body("dogs[0].untrained", equalTo(true))
        .body("dogs[1].lastTrained", equalTo("2026-05-04"))
        .body("dogs[1].daysSince", equalTo(6))
        .body("dogs[1].week.gaps", equalTo(3))
        .body("dogs[1].age", equalTo("unknown"))
        .body("guests.dog", contains("visitor"))
        .body("stages", hasSize(1))
        .body("stages[0].dogs", contains("bracken", "juniper"))
        .body("classes[0].members", equalTo(1))
        .body("moreClasses", equalTo(false));
    club.get(DAY + "&untrainedDays=6").then().body("totals.untrained", equalTo(2));
  }

  @Test
  void pagesAreLinked() {
    Response first = club.get(DAY + "&limit=2");
    first.then().statusCode(200).body("dogs.dog", contains("bracken", "juniper"));
    String link = first.header("Link");
    assertThat(link).contains("rel=\"next\"");

    String next = link.substring(1, link.indexOf('>'));
    Response second = club.given().urlEncodingEnabled(false).get(next);
    second.then().statusCode(200).body("guests.dog", contains("visitor")).body("dogs", hasSize(0));
    assertThat(second.header("Link")).isNull();
  }

  @Test
  void itIsForThoseWhoSeeEveryDog() {
    club.withKey("pupil", "'records:read'", "'dogs':['juniper']").get(DAY).then().statusCode(403);
    for (String wrong : List.of("limit=301", "untrainedDays=0", "cursor=%20")) {
      club.get(DAY + "&" + wrong).then().statusCode(400).body("errors", hasSize(1));
    }
    club.get("/overview?limit=0&untrainedDays=x&dogs=all")
        .then()
        .statusCode(400)
        .body("errors", hasSize(3));
  }
}
