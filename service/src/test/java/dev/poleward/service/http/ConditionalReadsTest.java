package dev.poleward.service.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.hamcrest.Matchers.equalTo;

import dev.poleward.service.Club;
import dev.poleward.service.RunningService;
import dev.poleward.service.SharedService;
import dev.poleward.service.http.PlainRequest.Answered;
import io.restassured.response.Response;
import java.util.HashSet;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.ExtendWith;

/** Reads are marked, and not sent again while nothing changed. */
@ExtendWith(SharedService.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ConditionalReadsTest {

  private final RunningService service;
  private final Club club;

  ConditionalReadsTest(RunningService service, Club club) {
    this.service = service;
    this.club = EveryRoute.planned(EveryRoute.furnished(club));
  }

  private Response read(String route, String tag) {
    return club.given().header("If-None-Match", tag).get(EveryRoute.path(route, club.id()));
  }

  @Test
  void everyReadIsMarkedAndNotSentAgainUntilSomethingIsRecorded() {
    for (String route : EveryRoute.reads(service)) {
      String path = EveryRoute.path(route, club.id());
      PlainRequest request = PlainRequest.to(service).as(club.accessKey());
      Answered first = request.get(path);
      String tag = Objects.requireNonNull(first.header("ETag"), route);
      assertThat(tag).as(route).matches("W/\"[^\"]+\"");
      assertThat(first.status()).isEqualTo(200);
      assertThat(first.header("Cache-Control")).isEqualTo("private, no-cache");
      assertThat(first.header("Vary")).isEqualTo("Accept, Accept-Encoding, Authorization");

      String strong = tag.substring("W/".length());
      for (String has : new String[] {tag, strong, "\"other\", " + tag, "*"}) {
        Answered again = request.with("If-None-Match", has).get(path);

        assertThat(again.status()).as("%s with %s", route, has).isEqualTo(304);
        assertThat(again.header("ETag")).isEqualTo(tag);
        assertThat(again.header("Content-Type")).isNull();
        assertThat(again.body()).isEmpty();
      }
      Answered other = request.with("If-None-Match", "\"other\"").get(path);
      assertThat(other.status()).isEqualTo(200);
      assertThat(other.header("ETag")).isEqualTo(tag);
    }
  }

  @Test
  void somethingNewIsSent() {
    for (String path : new String[] {"", "/digest", "/events", "/dogs", "/dogs/juniper/reps"}) {
      String tag = club.get(path).header("ETag");
      club.record(Said.dog("dog-" + Math.floorMod(path.hashCode(), 1_000)));

      club.given().header("If-None-Match", tag).get(club.path(path)).then().statusCode(200);
    }
  }

  @Test
  void aTagIsGoodForOneQuestionInOneFormAlone() {
    String reps = club.path("/dogs/juniper/reps");
    Set<String> tags = new HashSet<>();
    tags.add(club.given().get(reps).header("ETag"));
    tags.add(club.given().header("Accept", "text/csv").get(reps).header("ETag"));
    tags.add(club.given().get(reps + "?limit=1").header("ETag"));
    tags.add(club.as(service.hostKey()).given().get(reps).header("ETag"));
    tags.add(club.get("/dogs/juniper").header("ETag"));
    assertThat(tags).hasSize(5);

    String json =
        club.given().header("Accept", "application/json, text/csv;q=0.5").get(reps).header("ETag");
    club.given()
        .header("Accept", "text/csv")
        .header("If-None-Match", json)
        .get(reps)
        .then()
        .statusCode(200);
  }

  /** What would be refused is refused, whatever somebody says to have. */
  @Test
  void refusalsAreNotHiddenBehindATag() {
    String tag = club.get("/dogs").header("ETag");

    for (String has : new String[] {tag, "*"}) {
      read("GET /v1/clubs/{club}/dogs/nobody", has).then().statusCode(404);
      read("GET /v1/clubs/{club}/dogs?limit=0", has).then().statusCode(400);
      read("GET /v1/clubs/{club}/events/e-lost", has).then().statusCode(404);
    }
    Club pupil = club.withKey("pupil", "'records:read'", "'dogs':['juniper']");
    for (String has : new String[] {club.get("/events").header("ETag"), "*"}) {
      pupil.given().header("If-None-Match", has).get(club.path("/events")).then().statusCode(403);
    }
  }

  /** A fate changes with what is no news to anybody else. */
  @Test
  void aRepetitionChangesTheFateAndNothingElse() {
    String fate = club.get("/events/dog-juniper").header("ETag");
    String digest = club.get("/digest").header("ETag");
    club.send(Said.dog("juniper")).then().statusCode(200);

    read("GET /v1/clubs/{club}/events/dog-juniper", fate)
        .then()
        .statusCode(200)
        .body("repeated", equalTo(1));
    read("GET /v1/clubs/{club}/digest", digest).then().statusCode(304);
  }

  /** One tag for both, since a tag goes with the answer and not with its bytes: so it is weak. */
  @Test
  void compressedOrNotItIsTheSameAnswer() {
    for (String path : new String[] {club.path("/dogs/juniper/progress"), "/docs/docs.css"}) {
      RawHttp plain = raw(path, "Accept: */*");
      RawHttp zipped = raw(path, "Accept-Encoding: gzip");
      String tag = plain.header("etag");

      assertThat(plain.header("content-encoding")).isEmpty();
      assertThat(zipped.header("content-encoding")).isEqualTo("gzip");
      assertThat(zipped.header("vary")).contains("Accept-Encoding");
      assertThat(tag).startsWith("W/").isEqualTo(zipped.header("etag"));
      for (String accepted : new String[] {"Accept: */*", "Accept-Encoding: gzip"}) {
        RawHttp again = raw(path, accepted + "\r\nIf-None-Match: " + tag);

        assertThat(again.status()).isEqualTo(304);
        assertThat(again.header("etag")).isEqualTo(tag);
      }
    }
  }

  private RawHttp raw(String path, String headers) {
    return RawHttp.exchange(
        service.port(),
        "GET %s HTTP/1.1\r\nHost: localhost\r\nAuthorization: Bearer %s\r\n%s\r\n\r\n"
            .formatted(path, club.accessKey(), headers));
  }

  @Test
  void oddTagsAreNoFailures() {
    for (String odd : new String[] {"", "\"", ",,,", "W/", "é", "\"" + "x".repeat(2_000) + "\""}) {
      assertThatCode(() -> read("GET /v1/clubs/{club}/dogs", odd).then().statusCode(200))
          .doesNotThrowAnyException();
    }
  }

  @Test
  void headIsGetWithoutABody() {
    for (String route : EveryRoute.reads(service)) {
      String path = EveryRoute.path(route, club.id());
      PlainRequest request = PlainRequest.to(service).as(club.accessKey());
      Answered get = request.get(path);
      Answered head = request.send("HEAD", path);

      assertThat(head.status()).as(route).isEqualTo(200);
      assertThat(head.header("ETag")).isNotNull().isEqualTo(get.header("ETag"));
      assertThat(head.header("Content-Type")).isEqualTo(get.header("Content-Type"));
      assertThat(head.body()).isEmpty();
      assertThat(PlainRequest.to(service).send("HEAD", path).status()).isEqualTo(401);
    }
    assertThat(club.given().head(club.path("/dogs/nobody")).statusCode()).isEqualTo(404);
    assertThat(service.stranger().head("/health/ready").statusCode()).isEqualTo(200);
  }
}
