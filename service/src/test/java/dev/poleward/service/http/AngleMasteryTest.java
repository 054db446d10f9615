package dev.poleward.service.http;

import static dev.poleward.service.http.Said.at;
import static dev.poleward.service.http.Said.event;
import static dev.poleward.service.http.Said.rep;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsInAnyOrder;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasKey;
import static org.hamcrest.Matchers.lessThan;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;

import dev.poleward.service.Club;
import dev.poleward.service.SharedService;
import io.restassured.response.Response;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The angle-mastery curve as clients ask for it, in each of its forms. */
@ExtendWith(SharedService.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class AngleMasteryTest {

  private static final String JUNIPER = "/dogs/juniper/angle-mastery";

  private final Club club;
  private int reps;

  AngleMasteryTest(Club club) {
    this.club = club;
  }

  /** Ten reps at each angle: those to the left fall off, those to the right do not. */
  @BeforeAll
  void train() {
    club.record(Said.dog("juniper"), Said.dog("bracken"), Said.session("s-1", "18:00:00"));
    List<String> events = new ArrayList<>();
    int[] made = {10, 10, 8, 5, 2};
    for (int i = 0; i < made.length; i++) {
      for (int each = 0; each < 10; each++) {
        events.add(run(i * 30, each < made[i] ? "popped-out" : "missed-entry", ""));
        if (i > 0) {
          events.add(run(i * -15, i == 4 && each == 9 ? "no-attempt" : "clean", ""));
        }
      }
    }
    events.add(run(30, "clean", ",'help':'lure'"));
    events.add(run(30, "void", ""));
    events.add(run(120, "skipped-pole", ",'atPole':1"));
    club.record(events.toArray(String[]::new));
  }

  private String run(int angle, String outcome, String more) {
    String time = "18:%02d:%02d".formatted(reps / 60, reps % 60);
    return rep("r-" + reps++, "s-1", "juniper", time, setup(angle) + more)
        .replace("\"outcome\":\"clean\"", "\"outcome\":\"" + outcome + "\"");
  }

  private static String setup(int angle) {
    return ",'setup':{'poles':4,'spacing':0.6,'leadIn':'none','angle':" + angle + "}";
  }

  private Response as(String form, String path) {
    return club.given().header("Accept", form).get(club.path(path));
  }

  @Test
  void eachSideHasItsOwnCurveAndThreshold() {
    club.get(JUNIPER + "?poles=4&halfLifeDays=none")
        .then()
        .statusCode(200)
        .body("dog", equalTo("juniper"))
        .body("poles", equalTo(4))
        .body("level", equalTo(0.8f))
        .body("of", equalTo("entry"))
        .body("interval", equalTo("profile"))
        .body("$", not(hasKey("halfLifeDays")))
        .body("sides.entrySide", contains("pole", "gap"))
        .body("sides[0].reps", equalTo(51))
        .body("sides[0].made", equalTo(35))
        .body("sides[0].effectiveReps", equalTo(51))
        .body("sides[0].points.angle", contains(0, 30, 60, 90, 120))
        .body("sides[0].points.clock", contains("12:00", "1:00", "2:00", "3:00", "4:00"))
        .body("sides[0].points.reps", contains(10, 10, 10, 10, 11))
        .body("sides[0].points.made", contains(10, 10, 8, 5, 2))
        .body("sides[0].points[2].observed.share", equalTo(0.8f))
        .body("sides[0].fit.method", equalTo("firth-logistic"))
        .body("sides[0].fit.slopePerDegree", lessThan(0f))
        .body("sides[0].threshold.status", equalTo("estimated"))
        .body("sides[0].threshold.interval", equalTo("profile"))
        .body("sides[0].shapesDisagree", equalTo(false))
        .body("sides[1].points.angle", contains(0, -15, -30, -45, -60))
        .body("sides[1].points.size", contains(0, 15, 30, 45, 60))
        .body("sides[1].threshold.status", equalTo("beyond-tried"))
        .body("sides[1].threshold.angle", nullValue());
  }

  @Test
  void agesRunToTheEndOfTheClubsDay() {
    String today = LocalDate.ofInstant(club.service().now(), ZoneId.of("Europe/Lisbon")).toString();
    assertThat(club.get(JUNIPER).<String>path("agedTo")).isIn(today, tomorrowOf(today));

    // Half an hour before midnight UTC it is the next day in Lisbon, in summer.
    club.get(JUNIPER + "?asOf=2026-06-03T23:30:00Z&halfLifeDays=31")
        .then()
        .body("agedTo", equalTo("2026-06-04"))
        .body("halfLifeDays", equalTo(31))
        // Some 31.2 days after them ten reps weigh a little less than five.
        .body("sides[0].points[1].weight", greaterThan(4.95f))
        .body("sides[0].points[1].weight", lessThan(5f));
    club.get(JUNIPER + "?asOf=2026-05-04T17:00:00Z").then().body("sides.reps", contains(0, 0));
  }

  /** Midnight may pass between two lines of a test. */
  private static String tomorrowOf(String day) {
    return LocalDate.parse(day).plusDays(1).toString();
  }

  @Test
  void filtersNarrowAndPoolWhenLeftOut() {
    club.get(JUNIPER + "?poles=6").then().body("sides.reps", contains(0, 0));
    club.get(JUNIPER).then().body("sides.reps", contains(51, 50)).body("$", not(hasKey("poles")));
    club.get(JUNIPER + "?manoeuvre=rear-cross&dogSide=left&leadIn=tunnel")
        .then()
        .body("manoeuvre", equalTo("rear-cross"))
        .body("dogSide", equalTo("left"))
        .body("leadIn", equalTo("tunnel"))
        .body("sides.reps", contains(0, 0));
    club.get(JUNIPER + "?help=lure").then().body("sides.reps", contains(1, 0));
    club.get(JUNIPER + "?of=clean").then().body("sides.made", contains(0, 39));
  }

  @Test
  void whatCannotBeEstimatedIsSaidToBeSo() {
    club.get("/dogs/bracken/angle-mastery")
        .then()
        .statusCode(200)
        .body("sides.threshold.status", everyItem(equalTo("not-enough-reps")))
        .body("sides[0].points.size()", equalTo(0))
        .body("sides[0]", not(hasKey("fit")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"profile", "fieller", "delta"})
  void limitsAreFoundAsAsked(String interval) {
    club.get(JUNIPER + "?halfLifeDays=none&interval=" + interval)
        .then()
        .body("interval", equalTo(interval))
        .body("sides[0].threshold.interval", equalTo(interval))
        .body("sides[0].threshold.lower", greaterThan(20f))
        .body("sides[0].threshold.upper", lessThan(90f));
  }

  @Test
  void allFaultsOfTheParametersAreNamedAtOnce() {
    club.get(
            JUNIPER
                + "?poles=1&level=1&halfLifeDays=never&interval=exact&of=all&manoeuvre=jump&dogSide=front"
                + "&leadIn=wall&help=much&picture=pie&width=99999&asOf=soon&colour=red")
        .then()
        .statusCode(400)
        .body(
            "errors.parameter",
            containsInAnyOrder(
                "poles",
                "level",
                "halfLifeDays",
                "interval",
                "of",
                "manoeuvre",
                "dogSide",
                "leadIn",
                "help",
                "picture",
                "width",
                "asOf",
                "colour"))
        .body("errors.detail", hasItem("must be one of curve, clock"));
    as("image/png", JUNIPER + "?width=many")
        .then()
        .statusCode(400)
        .body("errors[0].detail", containsString("320 to 1200"));
    club.get(JUNIPER + "?level=NaN").then().statusCode(400);
    club.get(JUNIPER + "?level=0x1p-1").then().statusCode(400);
    club.get(JUNIPER + "?level=").then().statusCode(400);
  }

  @Test
  void aDogThatIsNotThereOrNotToBeSeenIsNotFound() {
    Club pupil = club.withKey("pupil", "'records:read'", "'dogs':['bracken']");

    club.get("/dogs/nobody/angle-mastery").then().statusCode(404);
    pupil.get("/dogs/bracken/angle-mastery").then().statusCode(200);
    for (String form : List.of("application/json", "image/svg+xml")) {
      assertThat(as(form, JUNIPER).statusCode()).isEqualTo(200);
      pupil
          .given()
          .header("Accept", form)
          .get(club.path(JUNIPER))
          .then()
          .statusCode(404)
          .body("detail", equalTo("There is no such dog."));
    }
  }

  @Test
  void aTableHasARowForEachAngleOfEachSide() {
    String[] table = as("text/csv", JUNIPER + "?halfLifeDays=none").asString().split("\r\n", -1);

    assertThat(table).hasSize(1 + 5 + 5 + 1);
    assertThat(table[0]).startsWith("dog,entrySide,clock,angle,size,reps,made,weight,estimate,");
    assertThat(table[2]).startsWith("juniper,pole,1:00,30,30,10,10,10,0.9");
    assertThat(table[7]).startsWith("juniper,gap,11:30,-15,15,10,10,10,0.9");
    assertThat(table[7]).contains(",50,49,50,false,0.8,beyond-tried,,");

    String[] empty = as("text/csv", "/dogs/bracken/angle-mastery").asString().split("\r\n", -1);
    assertThat(empty).hasSize(1 + 2 + 1);
    assertThat(empty[1])
        .startsWith("bracken,pole,,,,,,,,,,,,,,0,0,0,false,0.8,not-enough-reps,,,,");
  }

  @Test
  void picturesComeInBothFormsAndBothKinds() {
    byte[] png = as("image/png", JUNIPER + "?picture=clock&width=320").asByteArray();
    assertThat(png).startsWith(0x89, 'P', 'N', 'G');
    assertThat(as("image/png", JUNIPER).contentType()).isEqualTo("image/png");

    Response curve = as("image/svg+xml", JUNIPER + "?halfLifeDays=none");
    assertThat(curve.contentType()).startsWith("image/svg+xml");
    assertThat(curve.asString())
        .contains("<title id=\"poleward-title\">juniper: entries made by entry angle</title>")
        .contains("Pole side")
        .contains("80% made at ");
    assertThat(as("image/svg+xml", JUNIPER + "?picture=clock").asString())
        .isNotEqualTo(curve.asString());
    assertThat(as("image/svg+xml", JUNIPER + "?width=1200").asString())
        .contains("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"1200\"");
  }

  @Test
  void aNewRepChangesTheCurveAndItsTag(Club fresh) {
    fresh.record(Said.dog("juniper"), Said.session("s-1", "18:00:00"));
    String tag = fresh.get(JUNIPER).header("ETag");
    fresh.given().header("If-None-Match", tag).get(fresh.path(JUNIPER)).then().statusCode(304);

    fresh.record(rep("r-1", "s-1", "juniper", "18:05:00", setup(45)));

    fresh
        .given()
        .header("If-None-Match", tag)
        .get(fresh.path(JUNIPER))
        .then()
        .statusCode(200)
        .body("sides.reps", contains(1, 0));
  }

  @Test
  void theClubsTimeZoneDecidesWhichDayItIs(Club fresh) {
    fresh.record(Said.dog("juniper"));
    String question = JUNIPER + "?asOf=2026-06-03T12:00:00Z";
    fresh.get(question).then().body("agedTo", equalTo("2026-06-03"));

    fresh.record(
        event(
            "z-1",
            "club.settings-changed.v1",
            at("10:00:00"),
            "{'timeZone':'Pacific/Kiritimati'}"));

    fresh.get(question).then().body("agedTo", equalTo("2026-06-04"));
  }
}
