package dev.poleward.service.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.startsWith;

import dev.poleward.service.RunningService;
import dev.poleward.service.SharedService;
import io.restassured.response.Response;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The page about the API: whole, ours, and closed to what is not. */
@ExtendWith(SharedService.class)
class DocsTest {

  private static final Pattern NEEDS =
      Pattern.compile("(?:src|rel=\"stylesheet\" href)=\"([^\"]+)\"");

  private final RunningService service;

  DocsTest(RunningService service) {
    this.service = service;
  }

  private List<String> files() {
    String page = service.stranger().get("/docs").asString();
    return NEEDS.matcher(page).results().map((MatchResult each) -> each.group(1)).toList();
  }

  @Test
  void everythingThatThePageNeedsIsHere() {
    assertThat(files()).hasSize(4).allMatch(file -> file.startsWith("/docs/"));
    for (String file : files()) {
      Response answer = service.stranger().get(file);
      assertThat(answer.statusCode()).as(file).isEqualTo(200);
      assertThat(answer.asByteArray()).as(file).isNotEmpty();
      assertThat(answer.contentType())
          .startsWith(file.endsWith(".js") ? "text/javascript" : "text/css");
    }
  }

  /** No script and no style stands in the page itself; the policy would stop them. */
  @Test
  void nothingInThePageNeedsMoreThanThePolicyAllows() {
    String page = service.stranger().get("/docs").asString();

    assertThat(page).doesNotContain("<style").doesNotContain(" style=").doesNotContain(" onload=");
    assertThat(Pattern.compile("<script(?! src=\"/docs/)").matcher(page).find()).isFalse();
    assertThat(page.replace("http://www.w3.org/2000/svg", "")).doesNotContain("http");
  }

  @ParameterizedTest
  @ValueSource(strings = {"/docs", "/docs/docs.js", "/docs/swagger-ui.css"})
  void whatRunsInItIsBounded(String path) {
    service
        .stranger()
        .get(path)
        .then()
        .statusCode(200)
        .header(
            "Content-Security-Policy",
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:;"
                + " connect-src 'self'; frame-ancestors 'none'; base-uri 'none'; form-action 'none'")
        .header("X-Content-Type-Options", "nosniff")
        .header("Referrer-Policy", "no-referrer");
  }

  @ParameterizedTest
  @ValueSource(strings = {"/docs", "/docs/docs.css", "/docs/swagger-ui-bundle.js"})
  void whatIsKnownIsNotSentAgain(String path) {
    Response first = service.stranger().get(path);

    first.then().header("Cache-Control", "no-cache").header("ETag", startsWith("W/\""));
    Response again = service.stranger().header("If-None-Match", first.header("ETag")).get(path);
    again.then().statusCode(304).header("ETag", equalTo(first.header("ETag")));
    assertThat(again.asByteArray()).isEmpty();
    service.stranger().header("If-None-Match", "\"other\"").get(path).then().statusCode(200);
  }

  @ParameterizedTest
  @CsvSource({
    "/docs/index.html, 404",
    "/docs/swagger-ui-bundle.js.LICENSE.txt, 404",
    "/docs/nothing.js, 404",
    "/docs/.., 400",
    "/docs/%2e%2e%2fcontracts%2fopenapi.yaml, 400",
    "/docs/docs.js/more, 404"
  })
  void nothingElseIsServed(String path, int status) {
    RawHttp answer =
        RawHttp.exchange(
            service.port(), "GET %s HTTP/1.1\r\nHost: localhost\r\n\r\n".formatted(path));

    assertThat(answer.status()).isEqualTo(status);
    assertThat(answer.header("content-type")).startsWith("application/problem+json");
  }
}
