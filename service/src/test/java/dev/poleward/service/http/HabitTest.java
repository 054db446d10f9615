package dev.poleward.service.http;

import static dev.poleward.service.http.Said.event;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.nullValue;

import dev.poleward.service.Club;
import dev.poleward.service.SharedService;
import io.restassured.response.Response;
import io.restassured.response.ValidatableResponse;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Faults, and what reps are paid with. */
@ExtendWith(SharedService.class)
class HabitTest {

  private static final String DAY = "asOf=2026-05-04T20:00:00Z";
  private static final String BARE =
      ",'setup':{'poles':3,'spacing':0.6,'leadIn':'none','angle':0},'dogSide':'left'";
  private static final String RICH = BARE + ",'rewards':[{'kind':'food','at':'gap','count':3}]";
  private static final String TOY = BARE + ",'rewards':[{'kind':'toy','at':'exit'}]";

  private final Club club;

  HabitTest(Club club) {
    this.club = club;
  }

  @BeforeEach
  void furnish() {
    club.record(Said.dog("juniper"), Said.session("s-1", "18:00:00"));
  }

  private ValidatableResponse read(String what, String query) {
    return club.given().get(club.path("/dogs/juniper/" + what + "?" + query)).then();
  }

  private void run(int from, int reps, String data) {
    for (int i = from; i < from + reps; i++) {
      club.record(Said.rep("r-" + i, "s-1", "juniper", "18:%02d:00".formatted(i), data));
    }
  }

  @Test
  void faultsAreToldByPoleAngleAndManoeuvre() {
    run(1, 3, BARE);
    read("faults", DAY + "&days=7")
        .statusCode(200)
        .body("lines[0].atPoles.faults", contains(0, 0, 0))
        .body("lines[0].atPoles.findAll { it.share != null }", empty());
    club.record(
        event(
            "missed",
            "rep.logged.v1",
            "2026-05-04T18:30:00Z",
            "{'rep':'missed','session':'s-1','dog':'juniper','manoeuvre':'alongside',"
                + "'outcome':'popped-out','atPole':2"
                + BARE
                + "}"));

    read("faults", DAY + "&days=7")
        .statusCode(200)
        .body("all.reps", equalTo(4))
        .body("all.faults", hasSize(1))
        .body("all.faults[0].fault", equalTo("popped-out"))
        .body("lines[0].atPoles.faults", contains(0, 1, 0))
        .body("lines[0].atPoles.share.share", contains(0, 1, 0))
        .body("angles[0].entrySide", equalTo("both"))
        .body("angles[0].faulty", equalTo(1))
        .body("manoeuvres[0].manoeuvre", equalTo("alongside"));
    read("faults", "asOf=2026-08-04T20:00:00Z&days=7")
        .statusCode(200)
        .body("all.reps", equalTo(0))
        .body("all.share", nullValue());
  }

  @Test
  void rewardsFadeStepByStep() {
    run(1, 10, RICH);
    read("reward-fade", DAY)
        .statusCode(200)
        .body("stages", hasSize(1))
        .body("stages[0].step", equalTo(0))
        .body("stages[0].advice", equalTo("fade"))
        .body("stages[0].nextStep", equalTo(1))
        .body("stages[0].months[0].foodEach", equalTo(3));

    run(11, 3, TOY);
    read("reward-fade", DAY)
        .statusCode(200)
        .body("stages[0].step", equalTo(2))
        .body("stages[0].advice", equalTo("hold"))
        .body("stages[0].reason", equalTo("too-few-reps"))
        .body("stages[0].stays.reps", contains(10, 3))
        .body("stages[0].judgedBy.reps", equalTo(3))
        .body("stages[0].judgedBy.richer.clean", equalTo(10))
        .body("stages[0].stays[1].held", equalTo("cannot-tell"));
  }

  @Test
  void fadingRewardsAreAPictureInBothForms() {
    run(1, 10, RICH);
    run(11, 3, TOY);

    assertThat(picture("image/svg+xml", "&width=360").asString())
        .contains("width=\"360\"")
        .contains("<title id=\"poleward-title\">juniper: how rewards fade</title>")
        .contains("On step 3 of 3: a toy at the end, 1 reward a rep.")
        .contains("Fewer than 8 reps on this step: stay until there are.")
        .contains("2026-05: 13 of 13 reps clean, 100% (77% to 100%).");
    assertThat(picture("image/png", "").asByteArray()).startsWith(0x89, 'P', 'N', 'G');
    read("reward-fade", "width=many").statusCode(400).body("errors.parameter", hasItems("width"));
  }

  private Response picture(String form, String more) {
    return club.given()
        .header("Accept", form)
        .get(club.path("/dogs/juniper/reward-fade?" + DAY + more));
  }

  @Test
  void whereNothingWasToldNothingIsSaid() {
    run(1, 3, BARE);

    read("reward-fade", DAY).statusCode(200).body("stages", empty());
  }

  @Test
  void everyFaultOfAQuestionIsToldAtOnce() {
    read("faults", "days=0&since=2026")
        .statusCode(400)
        .body("errors.parameter", hasItems("days", "since"));
    read("reward-fade", "days=3").statusCode(400);
  }
}
