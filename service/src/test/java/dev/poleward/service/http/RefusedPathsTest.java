package dev.poleward.service.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;

import dev.poleward.service.Club;
import dev.poleward.service.RunningService;
import dev.poleward.service.SharedService;
import java.util.Arrays;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Paths, methods and requests that are none: refused with a problem document, all of them. */
@ExtendWith(SharedService.class)
class RefusedPathsTest {

  private final RunningService service;
  private final Club club;

  RefusedPathsTest(RunningService service, Club club) {
    this.service = service;
    this.club = club;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/",
        "/v1",
        "/v2/clubs",
        "/v1/clubs/c/nothing",
        "/v1/clubs/c/dogs/d/e/f",
        "/health"
      })
  void unknownPathsAreNotFound(String path) {
    service
        .as(club.accessKey())
        .get(path)
        .then()
        .statusCode(404)
        .contentType("application/problem+json")
        .body("type", equalTo("urn:poleward:problem:not-found"))
        .body("instance", equalTo(path));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "PUT|/v1/clubs/c/events|GET, HEAD, POST",
        "DELETE|/v1/clubs/c/dogs/d|GET, HEAD",
        "PATCH|/v1/clubs|POST",
        "GET|/v1/clubs|POST",
        "HEAD|/v1/clubs|POST",
        "POST|/health/live|GET, HEAD",
        "GET|/v1/clubs/c/access-keys/k|DELETE",
        "OPTIONS|/v1/clubs/c/events|GET, HEAD, POST",
        "TRACE|/v1/clubs/c/events|GET, HEAD, POST"
      })
  void otherMethodsAreToldWhichThereAre(String method, String path, String allowed) {
    var answer = service.as(club.accessKey()).request(method, path);

    answer.then().statusCode(405).contentType("application/problem+json");
    assertThat(new TreeSet<>(Arrays.asList(answer.header("Allow").split(", *", -1))))
        .isEqualTo(new TreeSet<>(Arrays.asList(allowed.split(", ", -1))));
    if (!method.equals("HEAD")) {
      answer.then().body("type", equalTo("urn:poleward:problem:method-not-allowed"));
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/v1/clubs/{club}/dogs/a%20b",
        "/v1/clubs/{club}/dogs/a%00b",
        "/v1/clubs/{club}/dogs/%C3%A9",
        "/v1/clubs/{club}/dogs/%F0%9F%90%95/reps",
        "/v1/clubs/{club}/sessions/a:b",
        "/v1/clubs/{club}/events/a@b",
        "/v1/clubs/a%00b/dogs",
        "/v1/clubs/{club}/dogs/a%2Fb",
        "/v1/clubs/{club}/dogs/a%5Cb",
        "/v1/clubs/{club}/dogs/%zz",
        "/v1/clubs/{club}/dogs/%FF",
        "/v1/clubs/{club}/dogs/a;b=c"
      })
  void idsThatAreNoneAreRefused(String path) {
    RawHttp answer = get(path.replace("{club}", club.id()), service.hostKey());

    assertThat(answer.status()).isEqualTo(400);
    assertThat(answer.header("content-type")).isEqualTo("application/problem+json");
    assertThat(answer.text()).contains("urn:poleward:problem:invalid");
  }

  @Test
  void anIdOf65IsTooLong() {
    String id = "x".repeat(65);

    club.get("/dogs/" + id.substring(1)).then().statusCode(404);
    club.get("/dogs/" + id)
        .then()
        .statusCode(400)
        .body("errors.parameter", equalTo(java.util.List.of("dog")))
        .body("errors[0].detail", containsString("64"));
    RawHttp answer = get("/v1/clubs/" + "x".repeat(6_000) + "/dogs", service.hostKey());
    assertThat(answer.status()).isEqualTo(400);
    ContractFilter.check(
        "GET", "/v1/clubs/x/dogs", answer.status(), answer.headers(), answer.body());
  }

  /**
   * An id of dots alone is an id; that a path with it leads elsewhere is between client and HTTP.
   */
  @Test
  void dotsDoNotLeadOutOfAClub(Club other) {
    for (String path : new String[] {"/v1/clubs/%s/../%s/dogs", "/v1/clubs/%s/%%2e%%2e/%s/dogs"}) {
      RawHttp answer = get(path.formatted(club.id(), other.id()), club.accessKey());
      assertThat(answer.status()).isIn(400, 403, 404);
    }
  }

  private RawHttp get(String path, String accessKey) {
    return RawHttp.exchange(
        service.port(),
        "GET %s HTTP/1.1\r\nHost: localhost\r\nAuthorization: Bearer %s\r\n\r\n"
            .formatted(path, accessKey));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "GET|400",
        "GARBAGE|400",
        "GET / HTTP/1.1\\r\\n\\r\\n|400",
        "GET / HTTP/1.1\\r\\nHost: a\\r\\nHost: b\\r\\n\\r\\n|400",
        "GET / HTTP/7.3\\r\\nHost: a\\r\\n\\r\\n|505",
        "GET / HTTP/1.1\\r\\nHost: a\\r\\nno colon\\r\\n\\r\\n|400",
        "POST /v1/clubs HTTP/1.1\\r\\nHost: a\\r\\nContent-Length: x\\r\\n\\r\\n|400",
        "POST /v1/clubs HTTP/1.1\\r\\nHost: a\\r\\nContent-Length: 5\\r\\nContent-Length: 6\\r\\n\\r\\n|400"
      })
  void whatIsNoHttpIsRefusedWithAProblemDocument(String request, int status) {
    String sent = request.replace("\\r", "\r").replace("\\n", "\n");
    RawHttp answer =
        RawHttp.exchange(service.port(), sent.endsWith("\n") ? sent : sent + "\r\n\r\n");

    assertThat(answer.status()).isEqualTo(status);
    assertThat(answer.header("content-type")).isEqualTo("application/problem+json");
    assertThat(answer.text())
        .contains("\"type\":\"urn:poleward:problem:")
        .contains("\"status\":" + status)
        .doesNotContainIgnoringCase("jetty");
  }

  @Test
  void headersThatAreTooLongAreRefused() {
    RawHttp answer =
        RawHttp.exchange(
            service.port(),
            "GET / HTTP/1.1\r\nHost: a\r\nX-Long: %s\r\n\r\n".formatted("x".repeat(20_000)));

    assertThat(answer.status()).isEqualTo(431);
    assertThat(answer.text()).contains("urn:poleward:problem:");
  }

  /** Chunks that break off are nobody's event. */
  @Test
  void aBodyThatIsNoneIsRefused() {
    RawHttp answer =
        RawHttp.exchange(
            service.port(),
            """
            POST %s HTTP/1.1
            Host: localhost
            Authorization: Bearer %s
            Content-Type: application/cloudevents+json
            Transfer-Encoding: chunked

            zzz
            """
                .formatted(club.path("/events"), club.accessKey())
                .replace("\n", "\r\n"));

    assertThat(answer.status()).isEqualTo(400);
    assertThat(answer.text()).contains("urn:poleward:problem:invalid").contains("broke off");
  }

  @Test
  void nothingTellsWhatItIsMadeOf() {
    RawHttp answer = get("/health/live", service.hostKey());

    assertThat(answer.headers()).doesNotContainKeys("server", "x-powered-by");
  }
}
