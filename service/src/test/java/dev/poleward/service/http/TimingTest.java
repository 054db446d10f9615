package dev.poleward.service.http;

import static dev.poleward.service.http.Said.event;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.closeTo;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasKey;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;

import dev.poleward.service.Club;
import dev.poleward.service.SharedService;
import io.restassured.response.Response;
import io.restassured.response.ValidatableResponse;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** How fast a dog weaves, and what belongs to which rep. */
@ExtendWith(SharedService.class)
class TimingTest {

  private static final String DAY = "asOf=2026-05-04T20:00:00Z";
  private static final String ON_FOUR =
      ",'dogSide':'left','setup':{'poles':4,'spacing':0.6,'leadIn':'none','angle':30}";

  private final Club club;

  TimingTest(Club club) {
    this.club = club;
  }

  @BeforeEach
  void furnish() {
    club.record(
        Said.dog("juniper"),
        Said.dog("bramble"),
        Said.session("s-1", "18:00:00"),
        event(
            "gate",
            "device.enrolled.v1",
            "2026-05-01T18:00:00Z",
            "{'device':'gate-1','kind':'timer'}"));
  }

  private ValidatableResponse timing(String dog, String query) {
    return club.given().get(club.path("/dogs/" + dog + "/timing?" + query)).then();
  }

  /** A rep at that minute. */
  private void run(String rep, String dog, int minute) {
    club.record(Said.rep(rep, "s-1", dog, "18:%02d:20".formatted(minute), ON_FOUR));
  }

  /** A timing at that minute; {@code more} are members of the data, each after a comma. */
  private void timed(String id, int minute, double seconds, String more) {
    int entry = 60_000 * minute;
    club.record(
        event(
            id,
            "timing.recorded.v1",
            Said.at("18:%02d:00".formatted(minute)),
            String.format(
                Locale.ROOT,
                "{'device':'gate-1','sequence':%d,'deviceClock':%d,'entryAt':%d,'exitAt':%.1f%s}",
                minute,
                entry + 9_000,
                entry,
                entry + 1_000 * seconds,
                more)));
  }

  @Test
  void timesAreOfRepsThatTheyFollowInOrder() {
    for (int i = 1; i <= 8; i++) {
      run("r-" + i, "juniper", 2 * i);
      timed(
          "t-" + i,
          2 * i,
          1.5 + i / 100.0,
          ",'session':'s-1','dog':'juniper','gaps':[600,450,460]");
    }
    timed("stray", 40, 1.5, ",'session':'s-1','dog':'juniper'");

    timing("juniper", DAY)
        .statusCode(200)
        .body("days", equalTo(90))
        .body("paired.reps", equalTo(8))
        .body("paired.byDog", equalTo(8))
        .body("paces", hasSize(1))
        .body("paces[0].poles", equalTo(4))
        .body("paces[0].entrySide", equalTo("pole"))
        .body("paces[0].runs", equalTo(8))
        .body("paces[0].seconds.median", equalTo(1.545f))
        .body("paces[0].seconds.lower", equalTo(1.51f))
        .body("paces[0].seconds.upper", equalTo(1.58f))
        .body("paces[0].gapsASecond.median.doubleValue()", closeTo(3 / 1.545, 1e-5))
        .body("paces[0]", not(hasKey("trend")))
        .body("paces[0].rhythm.gaps.slow", contains(true, false, false))
        .body("slowing.verdict", equalTo("not-enough-days"))
        .body("unpaired.timing", contains("stray"))
        .body("devices[0].device", equalTo("gate-1"))
        .body("devices[0].timings", equalTo(9))
        .body("devices[0].clock.readings", equalTo(9));
  }

  @Test
  void aGateThatKnowsNeitherDogNorSessionTimesWhoeverRuns() {
    for (int i = 1; i <= 6; i++) {
      run("r-" + i, i % 2 == 0 ? "bramble" : "juniper", 2 * i);
      timed("t-" + i, 2 * i, 1 + i / 10.0, "");
    }
    timed("stray", 40, 1.5, "");

    timing("juniper", DAY)
        .body("paired.bySession", equalTo(3))
        .body("paces[0].seconds.median", equalTo(1.3f))
        .body("unpaired", empty())
        .body("unclaimed", equalTo(1));
    timing("bramble", DAY).body("paces[0].seconds.median", equalTo(1.4f));
  }

  @Test
  void whatSomebodySaysGoesBeforeTheOrder() {
    run("r-1", "juniper", 2);
    run("r-2", "juniper", 30);
    timed("t-1", 2, 1.2, ",'session':'s-1','dog':'juniper'");
    timing("juniper", DAY).body("paired.byDog", equalTo(1));

    club.record(
        event("apart", "timing.unpaired.v1", Said.at("19:00:00"), "{'timing':'t-1','rep':'r-1'}"));
    timing("juniper", DAY).body("paired.reps", equalTo(0)).body("unpaired", hasSize(1));

    club.record(
        event("pair", "timing.paired.v1", Said.at("19:01:00"), "{'timing':'t-1','rep':'r-2'}"));
    timing("juniper", DAY).body("paired.byWord", equalTo(1)).body("unpaired", empty());
  }

  @Test
  void whatIsFasterThanADogCanBeAndWhatIsNotCleanIsSetAside() {
    run("r-1", "juniper", 2);
    run("r-2", "juniper", 4);
    club.record(
        event(
            "popped",
            "rep.logged.v1",
            Said.at("18:06:20"),
            "{'rep':'r-3','session':'s-1','dog':'juniper','manoeuvre':'alongside','outcome':"
                + "'popped-out'"
                + ON_FOUR
                + "}"));
    timed("t-1", 2, 1.2, ",'rep':'r-1'");
    timed("t-2", 4, 0.5, ",'rep':'r-2'");
    timed("t-3", 6, 0.9, ",'rep':'r-3'");

    timing("juniper", DAY)
        .body("paired.byWord", equalTo(3))
        .body("setAside.implausible", equalTo(1))
        .body("setAside.notClean", equalTo(1))
        .body("paces[0].runs", equalTo(1))
        .body("paces[0].seconds", not(hasKey("lower")));
  }

  @Test
  void asATable() {
    run("r-1", "juniper", 2);
    timed("t-1", 2, 1.2, ",'rep':'r-1'");

    club.given()
        .header("Accept", "text/csv")
        .get(club.path("/dogs/juniper/timing?" + DAY))
        .then()
        .statusCode(200)
        .body(startsWith("dog,poles,entrySide,runs,days,seconds,lower,upper,mad,gapsASecond,"))
        .body(containsString("juniper,4,pole,1,1,1.2,,,0,2.5,"));
  }

  @Test
  void asAPictureInBothForms() {
    for (int i = 1; i <= 8; i++) {
      run("r-" + i, "juniper", 2 * i);
      timed(
          "t-" + i,
          2 * i,
          1.5 + i / 100.0,
          ",'session':'s-1','dog':'juniper','gaps':[600,450,460]");
    }

    assertThat(as("image/svg+xml", "juniper", "&width=360").asString())
        .contains("width=\"360\"")
        .contains("<title id=\"poleward-title\">juniper: how fast and how evenly</title>")
        .contains("4 poles, pole side, 8 clean runs on 1 day.")
        .contains("Surely slower than the others: gap 1–2, 1.30 times.")
        .contains("Gaps: 1–2 0.60 s, half within 0.00 s, slow; 2–3 0.45 s")
        .contains("All of these runs fell on one day");
    assertThat(as("image/png", "juniper", "").asByteArray()).startsWith(0x89, 'P', 'N', 'G');
    assertThat(as("image/svg+xml", "bramble", "").asString())
        .contains("No clean run without help has a time in these days.");
    timing("juniper", "width=1201").statusCode(400).body("errors.parameter", hasItems("width"));
  }

  private Response as(String form, String dog, String more) {
    return club.given()
        .header("Accept", form)
        .get(club.path("/dogs/" + dog + "/timing?" + DAY + more));
  }

  @Test
  void everyFaultOfAQuestionIsToldAtOnce() {
    timing("juniper", "days=76&poles=4")
        .statusCode(400)
        .body("errors.parameter", hasItems("days", "poles"));
    timing("nobody", DAY).statusCode(404);
  }
}
