package dev.poleward.service.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.closeTo;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;

import dev.poleward.service.Club;
import dev.poleward.service.SharedService;
import io.restassured.response.ValidatableResponse;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Setups on the ground, over HTTP. */
@ExtendWith(SharedService.class)
class LayoutTest {

  private static final String TUNNEL =
      "'setup':{'poles':4,'spacing':0.6096,'leadIn':'tunnel','leadInDistance':4.7,'angle':45}";

  private final Club club;

  LayoutTest(Club club) {
    this.club = club;
  }

  /** Four poles at 24 in, the last pole moving 6 in a time, to 90 degrees [D]. */
  @Test
  void aSetupComesAsCoordinatesTapesAndATurningTable() {
    asked("{" + TUNNEL + ",'turning':{'lastPoleChord':0.1524,'to':90}}")
        .statusCode(200)
        .body("pieces.piece", hasItem("tunnel-exit"))
        .body("pieces", hasSize(7))
        .body("pieces[0].piece", equalTo("pole-1"))
        .body("pieces[0].x", equalTo(0))
        .body("pieces[3].y", equalTo(1.829f))
        .body("pieces[4].x", equalTo(-3.323f))
        .body("pieces[4].y", equalTo(-3.323f))
        .body("pieces[0].tapes", hasSize(2))
        .body("pieces[0].tapes[0].feetInches", containsString(" ft "))
        .body("turning.degreesEach.toDouble()", closeTo(4.776, 0.001))
        .body("turning.rungsPerSide", equalTo(19))
        .body("turning.setups", equalTo(38))
        .body("turning.lastStep.toDouble()", closeTo(4.03, 0.005))
        .body("turning.rungs[18].swing.toDouble()", closeTo(3.66, 0.005))
        .body("path.length", notNullValue())
        .body("moves", nullValue())
        .body("warnings", hasSize(0));
  }

  @Test
  void whatStandsNowBecomesMoves() {
    asked(
            "{"
                + TUNNEL
                + ",'standing':{'poles':6,'spacing':0.6096,'leadIn':'tunnel','leadInDistance':4.7,'angle':0}}")
        .statusCode(200)
        .body("moves.stays", equalTo("lead-in"))
        .body("moves.moves.text", hasItem(startsWith("Take pole ")))
        .body("moves.moves.text", hasItem("Pole 1 stays."));
  }

  @Test
  void groundAndRulesAreLookedAt() {
    asked("{" + TUNNEL + ",'ground':{'length':6,'width':4},'rules':'fci'}")
        .statusCode(200)
        .body("ground.fits", equalTo(false))
        .body("warnings.id", hasItem("does-not-fit-the-ground"))
        .body("warnings.id", hasItem("spacing-outside-rules"));
  }

  @Test
  void itComesAsATableAndAsPictures() {
    String table = send("{" + TUNNEL + "}", "text/csv").statusCode(200).extract().body().asString();
    assertThat(table.split("\r\n")).hasSize(6);
    assertThat(table).startsWith("piece,x,y,metresFromPegA").contains("tunnel-exit,-3.323,-3.323,");

    String svg =
        send("{" + TUNNEL + "}", "image/svg+xml").statusCode(200).extract().body().asString();
    assertThat(svg).contains("4 poles, 0.61\u00A0m apart");
    byte[] png =
        send("{" + TUNNEL + "}", "image/png").statusCode(200).extract().body().asByteArray();
    assertThat(new String(png, 1, 3, StandardCharsets.US_ASCII)).isEqualTo("PNG");
  }

  @Test
  void everyFaultIsToldAtOnce() {
    asked(
            "{'setup':{'poles':4,'spacing':0.6,'leadIn':'jump'},'turning':{'lastPoleChord':5,'to':90},"
                + "'pegs':{'a':{'x':1,'y':1},'b':{'x':1,'y':1}},'jumpWidth':'wide','tent':1}")
        .statusCode(400)
        .body("errors.pointer", hasItem("/setup/angle"))
        .body("errors.pointer", hasItem("/turning/lastPoleChord"))
        .body("errors.pointer", hasItem("/pegs/b"))
        .body("errors.pointer", hasItem("/jumpWidth"))
        .body("errors.pointer", hasItem("/tent"));
    asked("{" + TUNNEL + ",'turning':{'to':90}}")
        .statusCode(400)
        .body("errors[0].detail", equalTo("is required, or degreesEach in its place"));
    asked("{" + TUNNEL + ",'turning':{'to':90,'degreesEach':0.1}}")
        .statusCode(400)
        .body("errors[0].pointer", equalTo("/turning/degreesEach"));
    asked("{" + TUNNEL + ",'turning':{'to':90,'degreesEach':5,'lastPoleChord':0.1}}")
        .statusCode(400)
        .body("errors[0].detail", equalTo("must not be given beside lastPoleChord"));
  }

  @Test
  void whatIsOnePlaceIsOneHoweverItIsWritten() {
    asked("{" + TUNNEL + ",'pegs':{'a':{'x':1,'y':1},'b':{'x':1.0,'y':1}}}")
        .statusCode(400)
        .body("errors[0].pointer", equalTo("/pegs/b"));
    asked("{" + TUNNEL + ",'turning':{'to':1e-9,'degreesEach':5}}")
        .statusCode(400)
        .body("errors[0].pointer", equalTo("/turning/to"));
    asked("{" + TUNNEL + ",'turning':{'to':90,'lastPoleChord':5e-324}}")
        .statusCode(400)
        .body("errors[0].pointer", equalTo("/turning/lastPoleChord"));
  }

  @Test
  void theExtremesOfTheContractAreLaidOut() {
    asked("{'setup':{'poles':2,'spacing':0.3,'leadIn':'none'}}")
        .statusCode(200)
        .body("pieces", hasSize(4))
        .body("path", nullValue());
    asked(
            "{'setup':{'poles':24,'spacing':1.5,'leadIn':'jump','leadInDistance':50,'clock':'6:30'},"
                + "'turningRadius':10,'turning':{'degreesEach':1,'to':179}}")
        .statusCode(200)
        .body("pieces", hasSize(28))
        .body("warnings.id", hasItem("lead-in-far"))
        .body("warnings.id", hasItem("long-tape"));
    asked("{'setup':{'poles':4,'spacing':0.6,'leadIn':'tunnel','leadInDistance':0,'angle':90}}")
        .statusCode(200);
  }

  @Test
  void anyKeyWillDoAndNoneWillNot() {
    Club timer = club.withKey("timer", "'timing:push'", "'dogs':['juniper']");
    timer
        .given()
        .contentType("application/json")
        .body(Said.json("{" + TUNNEL + "}"))
        .post("/v1/layouts")
        .then()
        .statusCode(200);
    club.service()
        .stranger()
        .contentType("application/json")
        .body(Said.json("{" + TUNNEL + "}"))
        .post("/v1/layouts")
        .then()
        .statusCode(401);
  }

  private ValidatableResponse asked(String body) {
    return send(body, "application/json");
  }

  private ValidatableResponse send(String body, String form) {
    return club.given()
        .contentType("application/json")
        .header("Accept", form)
        .body(Said.json(body))
        .post("/v1/layouts")
        .then();
  }
}
