package dev.poleward.service.http;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.service.Club;
import dev.poleward.service.RunningService;
import dev.poleward.service.SharedService;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** What is measured, and that it moves. */
@ExtendWith(SharedService.class)
class MetricsTest {

  private final RunningService service;
  private final Club club;

  MetricsTest(RunningService service, Club club) {
    this.service = service;
    this.club = club;
  }

  private String metrics() {
    return service
        .stranger()
        .get("/metrics")
        .then()
        .statusCode(200)
        .contentType("text/plain")
        .extract()
        .asString();
  }

  /** The sum of all samples of that name with all those labels. */
  private static double sum(String metrics, String name, String... labels) {
    List<String> samples =
        metrics
            .lines()
            .filter(line -> line.startsWith(name + "{") || line.startsWith(name + " "))
            .filter(line -> Arrays.stream(labels).allMatch(line::contains))
            .toList();
    assertThat(samples).as(name).isNotEmpty();
    return samples.stream()
        .mapToDouble(line -> Double.parseDouble(line.substring(line.lastIndexOf(' ') + 1)))
        .sum();
  }

  @Test
  void trafficShows() {
    club.record(Said.dog("juniper"));
    club.get("/dogs/juniper");
    club.get("/dogs/nobody");
    club.send("{}");
    service.stranger().get(club.path(""));
    String before = metrics();

    club.record(Said.session("s-1", "18:00:00"), Said.dog("bracken"));
    club.get("/dogs/bracken");
    club.get("/dogs/nobody");
    club.send("{");
    service.stranger().get(club.path(""));
    service.stranger().get("/nowhere");
    String after = metrics();

    String count = "http_server_requests_seconds_count";
    String dog = "route=\"/v1/clubs/{club}/dogs/{dog}\"";
    assertThat(sum(after, count, "GET", dog, "200") - sum(before, count, "GET", dog, "200"))
        .isEqualTo(1);
    assertThat(sum(after, count, dog, "404") - sum(before, count, dog, "404")).isEqualTo(1);
    assertThat(sum(after, "http_server_requests_seconds_bucket", dog, "le=\"+Inf\"")).isPositive();
    String appends = "poleward_journal_append_seconds_count";
    assertThat(sum(after, appends, "durable")).isGreaterThan(sum(before, appends, "durable"));
    String applied = "poleward_projection_applied_total";
    assertThat(sum(after, applied) - sum(before, applied)).isGreaterThanOrEqualTo(2);
    String refusals = "poleward_refusals_total";
    for (String reason : List.of("invalid", "not-found", "unauthenticated")) {
      String label = "reason=\"" + reason + "\"";
      assertThat(sum(after, refusals, label)).isGreaterThan(sum(before, refusals, label));
    }
  }

  /** Whoever looks for holes shows in the timings, on whatever paths and with whatever methods. */
  @Test
  void whatLeadsNowhereIsTimedUnderNoRoute() {
    probe();
    String before = metrics();

    probe();
    String after = metrics();

    String count = "http_server_requests_seconds_count";
    String none = "route=\"none\"";
    for (String[] labels :
        new String[][] {
          {"method=\"GET\"", "status=\"404\""},
          {"method=\"PUT\"", "status=\"405\""},
          {"method=\"HEAD\"", "status=\"404\""}
        }) {
      assertThat(
              sum(after, count, none, labels[0], labels[1])
                  - sum(before, count, none, labels[0], labels[1]))
          .as(String.join(" ", labels))
          .isEqualTo(1);
    }
    assertThat(sum(after, "http_server_requests_seconds_sum", none)).isPositive();
    assertThat(after).doesNotContain("SNIFF");
  }

  private void probe() {
    service.stranger().get("/nowhere").then().statusCode(404);
    service.stranger().head("/nowhere").then().statusCode(404);
    service.stranger().put("/health/live").then().statusCode(405);
    RawHttp.exchange(service.port(), "SNIFF /nowhere HTTP/1.1\r\nHost: localhost\r\n\r\n");
  }

  @Test
  void theRowsAreNotBehind() {
    club.record(Said.dog("juniper"));

    assertThat(sum(metrics(), "poleward_projection_lag")).isZero();
    assertThat(sum(metrics(), "poleward_projection_passed_over_total")).isZero();
  }

  /** Labels are few, whatever people ask for: ids are no labels. */
  @Test
  void idsAreNoLabels() {
    club.get("/dogs/dog-in-no-label");
    service.stranger().get("/nowhere-in-no-label");

    assertThat(metrics()).doesNotContain("in-no-label").doesNotContain(club.id());
  }
}
