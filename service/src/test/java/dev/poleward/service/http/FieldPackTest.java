package dev.poleward.service.http;

import static dev.poleward.service.http.Said.event;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;

import dev.poleward.service.Club;
import dev.poleward.service.SharedService;
import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** A day without network. */
@ExtendWith(SharedService.class)
class FieldPackTest {

  private static final String PACK = "/field-pack?class=evening&date=2026-05-05";

  private final Club club;

  FieldPackTest(Club club) {
    this.club = club;
  }

  @BeforeEach
  void furnish() {
    club.record(
        Said.dog("juniper"),
        Said.dog("bracken"),
        event(
            "c", "class.formed.v1", "2026-01-10T10:00:00Z", "{'class':'evening','name':'Evening'}"),
        event(
            "j-1",
            "class.joined.v1",
            "2026-05-04T10:00:00Z",
            "{'class':'evening','dog':'juniper'}"),
        event(
            "j-2",
            "class.joined.v1",
            "2026-05-06T10:00:00Z",
            "{'class':'evening','dog':'bracken'}"),
        Said.session("s-1", "18:00:00"));
  }

  @Test
  void membersOfTheDayHaveTheirSessionsTapesAndTurns() {
    club.get(PACK)
        .then()
        .statusCode(200)
        .body("name", equalTo("Evening"))
        .body("date", equalTo("2026-05-05"))
        .body("dogs.dog", contains("juniper"))
        .body("dogs[0].plan.drills.size()", greaterThan(0))
        .body("order.dogs.dog", contains("juniper"))
        .body("layouts[0].pieces.piece", hasItem("pole-1"))
        .body("turning", hasSize(1))
        .body("turning[0].rungs.size()", greaterThan(5));
    club.get("/field-pack?class=evening&date=2026-05-07")
        .then()
        .body("dogs.dog", contains("bracken", "juniper"));
  }

  @Test
  void nothingIsRecordedAndWhatIsAskedAgainIsTheSame() {
    String before = club.get("/digest").asString();

    String once = club.get(PACK).asString();

    assertThat(club.get(PACK).asString()).isEqualTo(once);
    assertThat(club.get("/digest").asString()).isEqualTo(before);
  }

  @Test
  void whatIsLoggedFromItComesBackThroughTheEventDoor() {
    club.record(
        Said.rep(
            "r-1",
            "s-1",
            "juniper",
            "18:05:00",
            ",'setup':{'poles':3,'spacing':0.6,'leadIn':'none','angle':0},'dogSide':'left'"));

    club.get("/dogs/juniper/reps").then().body("reps.rep", contains("r-1"));
    club.get(PACK).then().statusCode(200).body("dogs.dog", contains("juniper"));
  }

  /** 24 poles at a metre: 6 inches would be more than 180 rungs a side [D]. */
  @Test
  void aVeryLongLineIsTurnedByHalfADegree() {
    club.record(
        event(
            "p",
            "programme.published.v1",
            "2026-01-10T10:00:00Z",
            "{'programme':'long','version':1,'name':'Long','stages':[{'stage':'all','poles':24,'spacing':1,'leadIn':'none',"
                + "'entries':{'clocks':['12:00']},'handlings':[{'manoeuvre':'alongside'}]}]}"),
        event(
            "a",
            "programme.assigned.v1",
            "2026-01-11T10:00:00Z",
            "{'dog':'juniper','programme':'long'}"),
        event(
            "ok",
            "dog.cleared.v1",
            "2026-01-11T10:00:00Z",
            "{'dog':'juniper','limits':{'poles':24,'gapsPerSession':200,'gapsPerWeek':400}}"));

    club.get(PACK)
        .then()
        .statusCode(200)
        .body("turning[0].poles", equalTo(24))
        .body("turning[0].degreesEach", equalTo(0.5f))
        .body("turning[0].rungsPerSide", equalTo(180));
  }

  @Test
  void itIsPrinted() throws IOException {
    byte[] print =
        club.given()
            .header("Accept", "application/pdf")
            .get(club.path(PACK))
            .then()
            .statusCode(200)
            .extract()
            .asByteArray();

    try (PDDocument file = Loader.loadPDF(print)) {
      assertThat(new PDFTextStripper().getText(file))
          .contains("Who runs when")
          .contains("juniper: session of 5 May 2026")
          .contains("Turning the line")
          .contains("Reps that were not planned");
    }
  }

  @Test
  void whatCannotBeIsRefusedAllAtOnce() {
    club.get("/field-pack?date=2026-13-01&dog=juniper")
        .then()
        .statusCode(400)
        .body("errors", hasSize(3));
    club.get("/field-pack?class=a%20b").then().statusCode(400).body("errors", hasSize(1));
    club.get("/field-pack?class=morning").then().statusCode(404);
    club.withKey("pupil", "'records:read'", "'dogs':['juniper']").get(PACK).then().statusCode(403);
  }
}
