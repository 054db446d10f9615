package dev.poleward.service.http;

import static dev.poleward.service.http.Said.at;
import static dev.poleward.service.http.Said.dog;
import static dev.poleward.service.http.Said.event;
import static dev.poleward.service.http.Said.rep;
import static dev.poleward.service.http.Said.session;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsInAnyOrder;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasKey;
import static org.hamcrest.Matchers.not;

import dev.poleward.service.Club;
import dev.poleward.service.SharedService;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The door for many events at once. */
@ExtendWith(SharedService.class)
class BatchTest {

  private final Club club;

  BatchTest(Club club) {
    this.club = club;
  }

  @Test
  void everyItemIsAnsweredForItself() {
    club.record(session("s-1", "18:00:00"), dog("juniper"));

    club.sendAll(
            List.of(
                rep("r-1", "s-1", "juniper", "18:05:00", ""), // new
                rep("r-2", "s-9", "juniper", "18:06:00", ""), // waits
                session("s-1", "18:00:00"), // repeated
                session("s-1", "18:00:01"), // contradicted
                rep("r-3", "s-1", "juniper", "18:07:00", ",'drive':4,'extra':1"), // faulty
                rep("r-4", "s-1", "juniper", "18:08:00", ""), // new
                rep("r-4", "s-1", "juniper", "18:08:00", ""), // repeated within the batch
                rep("r-4", "s-1", "juniper", "18:08:00", ",'drive':1"), // contradicted within it
                "17",
                event("e-1", "plan.issued.v1", at("18:00:00"), "{}")))
        .then()
        .statusCode(200)
        .body("accepted", equalTo(3))
        .body("repeated", equalTo(2))
        .body("waiting", equalTo(1))
        .body("pending", equalTo(0))
        .body(
            "contradicted",
            equalTo(
                List.of(Map.of("index", 3, "id", "open-s-1"), Map.of("index", 7, "id", "log-r-4"))))
        .body("refused.index", contains(4, 8, 9))
        .body(
            "refused[0].problem.errors.pointer",
            containsInAnyOrder("/4/data/drive", "/4/data/extra"))
        .body("refused[0].problem", not(hasKey("instance")))
        .body("refused[0].problem.status", equalTo(400))
        .body("refused[1].problem.errors.pointer", contains("/8"))
        .body("refused[2].problem.errors.pointer", contains("/9/type"));

    club.get("/dogs/juniper/reps").then().body("reps.rep", contains("r-1", "r-4"));
    club.get("/events/log-r-4")
        .then()
        .body("repeated", equalTo(1))
        .body("contradictedCount", equalTo(1));
  }

  /** What comes later in the same body is known, as if it had come before. */
  @Test
  void nothingWaitsForWhatComesAlong() {
    club.sendAll(
            List.of(
                rep("r-1", "s-1", "juniper", "18:05:00", ""),
                dog("juniper"),
                session("s-1", "18:00:00")))
        .then()
        .statusCode(200)
        .body("accepted", equalTo(3))
        .body("waiting", equalTo(0));
  }

  @Test
  void anEmptyBatchIsFine() {
    club.sendAll(List.of())
        .then()
        .statusCode(200)
        .body("accepted", equalTo(0))
        .body("refused", empty());
  }

  @ParameterizedTest
  @ValueSource(strings = {"{}", "17", "null", "\"text\""})
  void whatIsNoArrayIsRefusedAsAWhole(String body) {
    club.given()
        .contentType(Club.BATCH)
        .body(body)
        .post(club.path("/events"))
        .then()
        .statusCode(400)
        .body("errors.pointer", contains(""));
  }

  @Test
  void aThousandFitAndOneMoreDoesNot() {
    List<String> reps =
        IntStream.rangeClosed(1, 1_001)
            .mapToObj(
                rep ->
                    rep(
                        "r-" + rep,
                        "s-1",
                        "juniper",
                        "18:%02d:%02d".formatted(rep / 60, rep % 60),
                        ""))
            .toList();

    club.sendAll(reps)
        .then()
        .statusCode(413)
        .body("type", equalTo("urn:poleward:problem:too-large"))
        .body("detail", containsString("1,000"));
    club.get("/digest").then().body("events", equalTo(0));

    club.sendAll(reps.subList(0, 1_000))
        .then()
        .statusCode(200)
        .body("accepted", equalTo(1_000))
        .body("waiting", equalTo(1_000));
    assertThat(club.sendAll(reps.subList(0, 1_000)).<Integer>path("repeated")).isEqualTo(1_000);
  }

  @Test
  void anItemForWantOfAScopeHoldsNothingBack() {
    club.withKey("writer", "'records:write'")
        .sendAll(List.of(dog("juniper"), session("s-1", "18:00:00")))
        .then()
        .statusCode(200)
        .body("accepted", equalTo(1))
        .body("refused.index", contains(0))
        .body("refused[0].problem.status", equalTo(403))
        .body("refused[0].problem.detail", containsString("club:manage"));
  }

  /** Beside hundreds of faults, the answer keeps to its bounds. */
  @Test
  void faultsAreNamedTheFirstHundred() {
    StringBuilder extras = new StringBuilder();
    IntStream.range(0, 300).forEach(i -> extras.append(",'extra%d':1".formatted(i)));

    club.sendAll(List.of(rep("r-1", "s-1", "juniper", "18:00:00", extras.toString())))
        .then()
        .statusCode(200)
        .body("refused[0].problem.errors.size()", equalTo(100));
  }
}
