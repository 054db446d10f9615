package dev.poleward.service.http;

import static dev.poleward.service.http.Said.at;
import static dev.poleward.service.http.Said.event;
import static dev.poleward.service.http.Said.rep;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsInAnyOrder;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;

import dev.poleward.service.Club;
import dev.poleward.service.SharedService;
import io.restassured.response.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Lists come in pages that lie end to end, and parameters are judged in full. */
@ExtendWith(SharedService.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PagingTest {

  private static final int EACH = 7;

  private final Club club;

  PagingTest(Club club) {
    this.club = club;
  }

  @BeforeAll
  void furnish() {
    List<String> events = new ArrayList<>();
    events.add(Said.dog("juniper"));
    events.add(Said.session("s-0", "17:00:00"));
    events.add(event("c-0", "class.formed.v1", at("10:00:00"), "{'class':'c-0','name':'Evening'}"));
    for (int i = 0; i < EACH; i++) {
      events.add(Said.dog("dog-" + i));
      events.add(Said.handler("h-" + i, "Example " + i));
      // Pairs at one time, so that ids must tell them apart.
      events.add(Said.session("s-a" + i, "18:%02d:00".formatted(i / 2)));
      events.add(rep("r-" + i, "s-0", "juniper", "18:%02d:00".formatted(i / 2), ""));
      events.add(rep("r-w" + i, "s-lost", "juniper", "18:%02d:00".formatted(i / 2), ""));
      events.add(
          event(
              "g-" + i, "ground.registered.v1", at("10:00:00"), "{'ground':'g-%d'}".formatted(i)));
      events.add(Said.setup("u-" + i, "s-0", "17:%02d:00".formatted(i / 2), 30, ""));
      events.add(
          event(
              "a-" + i,
              "session.attended.v1",
              at("17:00:00"),
              "{'session':'s-0','dog':'dog-%d','present':true}".formatted(i)));
      events.add(
          event(
              "j-" + i,
              "class.joined.v1",
              at("17:00:00"),
              "{'class':'c-0','dog':'dog-%d'}".formatted(i)));
      club.withKey("k-" + i, "'records:read'");
    }
    club.record(events.toArray(String[]::new));
  }

  @ParameterizedTest
  @CsvSource({
    "/dogs, dogs.dog",
    "/handlers, handlers.handler",
    "/grounds, grounds.ground",
    "/sessions, sessions.session",
    "/waiting, waiting.id",
    "/dogs/juniper/reps, reps.rep",
    "/sessions/s-0/reps, reps.rep",
    "/sessions/s-0/setups, setups.event",
    "/sessions/s-0/attendance, attendance.dog",
    "/classes/c-0/members, members.dog",
    "/access-keys, accessKeys.key"
  })
  void pagesLieEndToEnd(String list, String items) {
    List<String> whole = club.get(list).path(items);
    assertThat(whole).hasSizeGreaterThanOrEqualTo(EACH).doesNotHaveDuplicates();
    assertThat(club.get(list).header("Link")).isNull();

    for (int limit : new int[] {1, 3, whole.size(), whole.size() + 1}) {
      assertThat(pages(list + "?limit=" + limit, items, limit)).isEqualTo(whole);
    }
  }

  private List<String> pages(String first, String items, int limit) {
    List<String> all = new ArrayList<>();
    String path = club.path(first);
    while (true) {
      Response page = club.given().get(path);
      page.then().statusCode(200);
      List<String> of = page.path(items);
      assertThat(of).hasSizeLessThanOrEqualTo(limit);
      all.addAll(of);
      assertThat(all).as("pages end somewhere").hasSizeLessThan(200);
      String link = page.header("Link");
      if (link == null) {
        return all;
      }
      assertThat(of).hasSize(limit);
      assertThat(link).startsWith("</v1/clubs/").endsWith(">; rel=\"next\"").contains("limit=");
      path = link.substring(1, link.indexOf('>'));
    }
  }

  @Test
  void aPageKeepsItsFilters() {
    String link =
        club.get("/dogs/juniper/reps?limit=1&asOf=2026-05-04T19:00:00%2B01:00").header("Link");

    assertThat(link).contains("asOf=2026-05-04T19%3A00%3A00%2B01%3A00").contains("limit=1");
    club.given()
        .get(link.substring(1, link.indexOf('>')))
        .then()
        .statusCode(200)
        .body("reps.rep", contains("r-1"));
  }

  @Test
  void theFeedGoesOnWithoutEnd() {
    Response all = club.get("/events?limit=1000");
    int position = all.path("position");
    List<String> ids = all.path("events.id");
    assertThat(ids).hasSize(position);

    List<String> paged = new ArrayList<>();
    String path = club.path("/events?limit=10");
    while (paged.size() < position) {
      Response page = club.given().get(path);
      paged.addAll(page.<List<String>>path("events.id"));
      assertThat(page.<Integer>path("position")).isEqualTo(paged.size());
      path = page.header("Link").substring(1, page.header("Link").indexOf('>'));
    }
    assertThat(paged).isEqualTo(ids);
    club.given()
        .get(path)
        .then()
        .statusCode(200)
        .body("events.size()", equalTo(0))
        .body("position", equalTo(position))
        .header("Link", containsString("after=" + position));
    club.get("/events?after=" + (position + 1))
        .then()
        .statusCode(400)
        .body("errors.parameter", contains("after"));
  }

  /** What comes while somebody turns pages neither hides nor doubles what was there. */
  @Test
  void newItemsDoNotDisturbPages(Club growing) {
    IntStream.range(0, 6).forEach(i -> growing.record(Said.dog("d-" + (2 * i))));
    String link = growing.get("/dogs?limit=3").header("Link");
    growing.record(Said.dog("d-1"), Said.dog("d-5"));

    growing
        .given()
        .get(link.substring(1, link.indexOf('>')))
        .then()
        .body("dogs.dog", contains("d-4", "d-5", "d-6"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "/dogs?limit=0|limit",
        "/dogs?limit=1001|limit",
        "/dogs?limit=ten|limit",
        "/dogs?limit=|limit",
        "/dogs?limit=1&limit=2|limit",
        "/dogs?limit=99999999999999999999|limit",
        "/dogs?cursor=|cursor",
        "/dogs?cursor=%21|cursor",
        "/dogs?cursor=AA|cursor",
        "/dogs?cursor=anVuaXBlcg==|cursor",
        "/waiting?cursor=anVuaXBlcg|cursor",
        "/sessions?cursor=KzEwMDAwMDAtMDEtMDFUMDA6MDA6MDBaIGE|cursor",
        "/dogs/juniper/reps?cursor=MjAyNi0wNS0wNFQxODowMDowMFog|cursor",
        "/dogs?asOf=yesterday|asOf",
        "/dogs?asOf=2026-05-04|asOf",
        "/dogs?asOf=2026-05-04T18:00:00|asOf",
        "/dogs?asOf=2026-05-04T18:00Z|asOf",
        "/dogs?asOf=2026-02-30T18:00:00Z|asOf",
        "/dogs?asOf=2026-05-04T24:00:00Z|asOf",
        "/dogs?asOf=2026-05-04T18:00:00-00:00|asOf",
        "/dogs?asOf=2026-05-04T18:00:00%2B19:00|asOf",
        "/dogs?asOf=%2B999999999-05-04T18:00:00Z|asOf",
        "/dogs?knownAt=1770-05-04T18:00:00Z|knownAt",
        "/dogs?knownAt=2026-05-04T18:00:00+01:00|knownAt",
        "/dogs?as_of=2026-05-04T18:00:00Z|as_of",
        "/events?asOf=2026-05-04T18:00:00Z|asOf",
        "/events?after=-1|after",
        "/dogs?limit=%FF|limit",
        "/digest?asOf=2026-05-04T18:00:00Z|asOf",
        "/dogs/juniper?limit=1|limit",
        "/sessions/s-0/reps?cursor=YQ|cursor",
        "/sessions/s-0/setups?limit=0|limit",
        "/classes/c-0/members?cursor=KzEw|cursor",
        "/reps/r-1?limit=1|limit",
        "/access-keys?asOf=2026-05-04T18:00:00Z|asOf"
      })
  void parametersThatAreNoneAreRefusedByName(String path, String parameter) {
    club.get(path).then().statusCode(400).body("errors.parameter", contains(parameter));
  }

  @Test
  void theUnencodedPlusIsExplained() {
    club.get("/dogs?asOf=2026-05-04T18:00:00+01:00")
        .then()
        .statusCode(400)
        .body("errors[0].detail", containsString("%2B"));
  }

  @Test
  void allFaultyParametersAreNamedAtOnce() {
    club.get("/dogs?limit=0&cursor=%21&asOf=x&knownAt=y&z=1")
        .then()
        .statusCode(400)
        .body("errors.parameter", containsInAnyOrder("limit", "cursor", "asOf", "knownAt", "z"));
  }

  @Test
  void manyAndLongParametersKeepToTheBoundsOfAnAnswer() {
    StringBuilder query = new StringBuilder("/dogs?" + "n".repeat(500) + "=1");
    IntStream.range(0, 150).forEach(i -> query.append("&p").append(i).append("=1"));

    club.get(query.toString()).then().statusCode(400).body("errors.size()", equalTo(100));
  }

  /** What no client library would send. */
  @ParameterizedTest
  @ValueSource(strings = {"limit=%zz", "limit", "=", "%FF=1", "limit=1=1", "a%00b=1", "é=1"})
  void whatIsNoQueryIsRefused(String query) {
    RawHttp answer =
        RawHttp.exchange(
            club.service().port(),
            "GET %s?%s HTTP/1.1\r\nHost: localhost\r\nAuthorization: Bearer %s\r\n\r\n"
                .formatted(club.path("/dogs"), query, club.accessKey()));

    assertThat(answer.status()).isEqualTo(400);
    assertThat(answer.text()).contains("urn:poleward:problem:invalid");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2026-05-04T18:00:00Z",
        "2026-05-04t18:00:00z",
        "2026-05-04T18:00:00.123456789Z",
        "2026-05-04T18:00:00%2B00:00",
        "2026-05-04T18:00:00-18:00",
        "1900-01-01T00:00:00Z",
        "2199-12-31T23:59:59.999999999Z"
      })
  void timesOfTheContractAreUnderstood(String time) {
    club.get("/dogs?asOf=" + time).then().statusCode(200);
    club.get("/waiting?asOf=" + time + "&knownAt=" + time).then().statusCode(200);
  }
}
