package dev.poleward.service.http;

import static dev.poleward.service.http.Said.rep;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import dev.poleward.service.Club;
import dev.poleward.service.RunningService;
import dev.poleward.service.SharedService;
import dev.poleward.service.http.PlainRequest.Answered;
import io.restassured.response.Response;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The forms of answers: JSON everywhere, and tables and lines where they are offered. */
@ExtendWith(SharedService.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FormsTest {

  private static final String COLUMNS =
      "event,rep,session,dog,time,entrySide,angle,clock,poles,spacing,leadIn,leadInDistance,jumpHeight,"
          + "jumpFacing,aids,setup,poleSet,manoeuvre,dogSide,outcome,atPole,backChainStep,jumpTurn,"
          + "lateralDistance,handlerAt,crossAt,rewards,help,handler,observer,drive,stride,note,amendedBy,duplicates";

  private final RunningService service;
  private final Club club;

  FormsTest(RunningService service, Club club) {
    this.service = service;
    this.club = EveryRoute.planned(EveryRoute.furnished(club));
  }

  private Response accepting(String accept, String path) {
    return club.given().header("Accept", accept).get(club.path(path));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "*/*|application/json",
        "application/json|application/json",
        "application/*|application/json",
        "APPLICATION/JSON; charset=utf-8|application/json",
        "text/csv|text/csv;charset=utf-8",
        "text/*|text/csv;charset=utf-8",
        "text/csv, application/json;q=0.9|text/csv;charset=utf-8",
        "text/csv;q=0.5, application/json;q=0.9|application/json",
        "text/html, text/csv;q=0.1|text/csv;charset=utf-8",
        "text/csv;q=0, */*;q=0.1|application/json"
      })
  void theFormIsChosen(String accept, String type) {
    Response answer = accepting(accept, "/dogs/juniper/reps");

    answer.then().statusCode(200);
    assertThat(answer.contentType().replace(" ", "")).isEqualToIgnoringCase(type);
  }

  @ParameterizedTest
  @ValueSource(strings = {"angle-mastery", "progress", "reward-fade", "timing"})
  void whoWantsAnyPictureGetsOneThatGrows(String read) {
    String path = "/dogs/juniper/" + read;

    assertThat(accepting("image/*", path).contentType()).startsWith("image/svg+xml");
    assertThat(accepting("image/png, image/svg+xml;q=0.5", path).contentType())
        .isEqualTo("image/png");
    assertThat(accepting("text/html, */*;q=0.1", path).contentType())
        .startsWith("application/json");
  }

  @Test
  void whatIsNotOfferedIsNotAcceptableOnAnyRoute() {
    for (String route : service.routes()) {
      Answered answer =
          EveryRoute.take(
              route,
              club.id(),
              PlainRequest.to(service).as(club.accessKey()).with("Accept", "audio/flac"));

      assertThat(answer.status()).as(route).isEqualTo(406);
      JsonNode problem = FlatBody.tree(answer.body());
      assertThat(problem.path("type").textValue()).isEqualTo("urn:poleward:problem:not-acceptable");
      assertThat(problem.path("detail").textValue()).contains("/");
    }
    accepting("text/csv", "/dogs").then().statusCode(406);
    accepting("application/x-ndjson", "/dogs/juniper/reps").then().statusCode(406);
    accepting("application/json;q=0", "/dogs").then().statusCode(406);
  }

  @Test
  void oddWishesAreNoFailures() {
    for (String odd : List.of("", ",", "a", "a/b/c;;", "*", "\"", "q=1", "text/csv;q=x")) {
      assertThat(accepting(odd, "/dogs/juniper/reps").statusCode()).as(odd).isIn(200, 406);
    }
  }

  @Test
  void aTableHasTheColumnsOfTheContract() {
    String table = accepting("text/csv", "/dogs/juniper/reps").asString();

    assertThat(table).startsWith(COLUMNS + "\r\n").endsWith("\r\n");
    assertThat(table.replace("\r\n", "")).doesNotContain("\n");
    assertThat(table.split("\r\n", -1)).hasSize(3);
  }

  @Test
  void cellsAreHarmlessInASpreadsheet(Club fresh) throws IOException {
    List<String> notes =
        List.of(
            "=1+1",
            "+1",
            "-1",
            "@sum",
            "\\t=1",
            "\\r=1",
            "a=1",
            "she said \\\"go\\\", twice",
            "two\\nlines",
            "",
            " =1",
            "Grüße 🐕");
    fresh.record(Said.dog("juniper"), Said.session("-s", "18:00:00"));
    for (int i = 0; i < notes.size(); i++) {
      fresh.record(
          rep("r-%02d".formatted(i), "-s", "juniper", "18:%02d:00".formatted(i), ",'note':'@'")
              .replace("\"@\"", '"' + notes.get(i) + '"'));
    }
    fresh.record(
        rep(
            "r-more",
            "-s",
            "juniper",
            "19:00:00",
            ",'angle':-30,'rewards':[{'kind':'food','at':'gap','count':2}],'handlerAt':'=pole',"
                + "'setup':{'poles':4,'spacing':0.6,'leadIn':'none','aids':['=wire','guide, \\\"wire\\\"']}"));
    String table =
        fresh.given().header("Accept", "text/csv").get(fresh.path("/dogs/juniper/reps")).asString();

    List<String[]> rows = rows(table);
    int note = List.of(COLUMNS.split(",", -1)).indexOf("note");
    assertThat(rows.subList(1, 1 + notes.size()))
        .extracting(row -> row[note])
        .containsExactly(
            "'=1+1",
            "'+1",
            "'-1",
            "'@sum",
            "'\t=1",
            "'\r=1",
            "a=1",
            "she said \"go\", twice",
            "two\nlines",
            "",
            " =1",
            "Grüße 🐕");
    List<String> last = List.of(rows.getLast());
    assertThat(last.get(2)).isEqualTo("'-s");
    assertThat(last)
        .contains("-30", "'=pole", "[\"=wire\",\"guide, \\\"wire\\\"\"]")
        .contains("[{\"kind\":\"food\",\"at\":\"gap\",\"count\":2}]");
  }

  private static List<String[]> rows(String table) throws IOException {
    try (MappingIterator<String[]> rows =
        new CsvMapper()
            .readerFor(String[].class)
            .with(CsvParser.Feature.WRAP_AS_ARRAY)
            .readValues(table)) {
      return rows.readAll();
    }
  }

  @Test
  void aPageOfATableIsThePageOfTheList(Club fresh) {
    fresh.record(Said.dog("juniper"), Said.session("s-1", "18:00:00"));
    for (int i = 0; i < 3; i++) {
      fresh.record(rep("r-" + i, "s-1", "juniper", "18:0%d:00".formatted(i), ""));
    }
    Response page =
        fresh.given().header("Accept", "text/csv").get(fresh.path("/dogs/juniper/reps?limit=2"));

    assertThat(page.asString()).contains("log-r-1").doesNotContain("log-r-2");
    String link = page.header("Link");
    assertThat(
            fresh
                .given()
                .header("Accept", "text/csv")
                .get(link.substring(1, link.indexOf('>')))
                .asString())
        .startsWith(COLUMNS)
        .contains("log-r-2")
        .doesNotContain("log-r-1,");
  }
}
