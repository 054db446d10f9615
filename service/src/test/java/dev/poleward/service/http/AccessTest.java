package dev.poleward.service.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;

import dev.poleward.service.Club;
import dev.poleward.service.RunningService;
import dev.poleward.service.SharedService;
import dev.poleward.service.http.PlainRequest.Answered;
import io.restassured.response.Response;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.ExtendWith;

/** Who comes in where: tried on every route that there is, so that none can be forgotten. */
@ExtendWith(SharedService.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class AccessTest {

  /** Opens every route that needs no more than a club's key. */
  private static final String EVERY_SCOPE =
      "'records:read','records:write','timing:push','club:manage'";

  private final RunningService service;
  private final PlainRequest stranger;
  private final Club club;
  private final Club other;

  AccessTest(RunningService service, Club club, Club other) {
    this.service = service;
    this.stranger = PlainRequest.to(service);
    this.club = EveryRoute.planned(EveryRoute.furnished(club));
    this.other = other;
  }

  private String secretChanged() {
    String key = club.accessKey();
    char last = key.charAt(key.length() - 1);
    return key.substring(0, key.length() - 1) + (last == 'a' ? 'b' : 'a');
  }

  @Test
  void noKeyAndNoValidKeyOpenNothing() {
    String secret = "x".repeat(43);
    List<String> headers =
        List.of(
            "",
            "Bearer",
            "Bearer ",
            "Basic " + club.accessKey(),
            club.accessKey(),
            "Bearer " + secretChanged(),
            "Bearer pw_" + club.id() + "_nobody_" + secret,
            "Bearer pw_nowhere_first_" + secret,
            "Bearer pw_host_host_" + secret,
            "Bearer nonsense",
            "Bearer " + club.accessKey() + "x".repeat(2_000),
            "Bearer " + service.hostKey().substring(1));
    for (String route : EveryRoute.ofClubs(service)) {
      for (String header : headers) {
        Answered answer = EveryRoute.take(route, club.id(), stranger.with("Authorization", header));

        assertThat(answer.status()).as("%s with %s", route, header).isEqualTo(401);
        assertThat(answer.header("WWW-Authenticate")).isEqualTo("Bearer");
        assertThat(answer.body()).contains("\"urn:poleward:problem:unauthenticated\"");
        revealsNothing(answer);
      }
    }
    assertThat(service.stranger().get(club.path("")).statusCode()).isEqualTo(401);
  }

  /** Whether there is such a club or not, the answer is the same. */
  @Test
  void anotherClubsKeyOpensNothingAndTellsNothing() {
    for (String route : EveryRoute.ofClubs(service)) {
      Answered known = EveryRoute.take(route, club.id(), with(other));
      Answered unknown = EveryRoute.take(route, "nowhere", with(other));

      assertThat(known.status()).as(route).isEqualTo(403);
      assertThat(known.body()).contains("\"urn:poleward:problem:forbidden\"");
      revealsNothing(known);
      assertThat(known.body().replace(club.id(), "nowhere")).isEqualTo(unknown.body());
      assertThat(unknown.status()).isEqualTo(403);
    }
    other.get("/digest").then().body("events", equalTo(0));
  }

  /** Waiting for another club's event is no way to learn of it. */
  @Test
  void nothingIsAwaitedForStrangers() {
    Response answer =
        other.given().header("Poleward-Wait-For", "dog-juniper").get(club.path("/dogs"));

    answer.then().statusCode(403);
  }

  /** A cursor of one club is only a place in a list of another. */
  @Test
  void cursorsAreNoKeys() {
    String link = club.get("/events?limit=1").header("Link");
    String path = link.substring(1, link.indexOf('>')).replace(club.id(), other.id());

    assertThat(other.given().get(path).asString()).doesNotContain("juniper");
  }

  @Test
  void everyRouteNamesTheScopesThatOpenIt() {
    Club reader = club.withKey("reader", "'records:read'");
    Club writer = club.withKey("writer", "'records:write'");
    Club timer = club.withKey("timer", "'timing:push'");
    Club manager = club.withKey("manager", "'club:manage'");
    for (String route : EveryRoute.ofClubs(service)) {
      List<String> scopes = new ArrayList<>();
      FlatContract.scopes(route).forEach(scope -> scopes.add(scope.textValue()));
      assertThat(scopes).as(route).isNotEmpty();
      opens(reader, route, scopes.contains("records:read"));
      opens(writer, route, scopes.contains("records:write"));
      opens(timer, route, scopes.contains("timing:push"));
      opens(manager, route, scopes.contains("club:manage"));
    }
  }

  private void opens(Club who, String route, boolean expected) {
    if (expected && !route.startsWith("GET ")) {
      return; // tried where it is used: taken here it would change what the next one sees
    }
    Answered answer = EveryRoute.take(route, club.id(), with(who));
    assertThat(answer.status()).as("%s %s", who.accessKey(), route).isEqualTo(expected ? 200 : 403);
    if (!expected) {
      revealsNothing(answer);
    }
  }

  @Test
  void theHostKeyOpensEveryClubOnEveryRoute() {
    PlainRequest host = stranger.as(service.hostKey());
    for (String route : EveryRoute.reads(service)) {
      assertThat(EveryRoute.take(route, club.id(), host).status()).as(route).isEqualTo(200);
    }
    Club asHost = other.as(service.hostKey());
    asHost.record(Said.dog("of-the-host"));
    asHost.withKey("by-the-host", EVERY_SCOPE).get("/dogs/of-the-host").then().statusCode(200);
  }

  @Test
  void theHostIsToldThatThereIsNoSuchClub() {
    PlainRequest host = stranger.as(service.hostKey());
    for (String route : EveryRoute.ofClubs(service)) {
      assertThat(EveryRoute.take(route, "nowhere", host).status()).as(route).isEqualTo(404);
    }
  }

  @Test
  void onlyTheHostRegistersClubs() {
    var request =
        service
            .as(club.accessKey())
            .contentType("application/json")
            .body(Said.json("{'id':'i','club':'mine','name':'Mine','timeZone':'Europe/Lisbon'}"));

    request.post("/v1/clubs").then().statusCode(403);
  }

  @Test
  void whatIsOpenToEverybodyNamesNobody() {
    for (String path : List.of("/health/live", "/health/ready", "/metrics")) {
      Response answer = service.stranger().get(path);

      answer.then().statusCode(200);
      assertThat(answer.asString()).doesNotContain(club.id()).doesNotContain("juniper");
    }
  }

  private PlainRequest with(Club key) {
    return stranger.as(key.accessKey());
  }

  private static void revealsNothing(Answered refusal) {
    assertThat(refusal.header("ETag")).isNull();
    assertThat(refusal.header("Link")).isNull();
    assertThat(refusal.header("Location")).isNull();
    assertThat(FlatBody.tree(refusal.body()).path("detail").textValue())
        .doesNotContain("juniper")
        .doesNotContain("h-1");
  }
}
