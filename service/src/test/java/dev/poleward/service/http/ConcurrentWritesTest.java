package dev.poleward.service.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;

import dev.poleward.service.Club;
import dev.poleward.service.RunningService;
import dev.poleward.service.SharedService;
import io.restassured.response.Response;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Many at once: what is done once is done once, and everybody reads what they wrote. */
@ExtendWith(SharedService.class)
class ConcurrentWritesTest {

  private static final int AT_ONCE = 12;

  private final RunningService service;
  private final Club club;

  ConcurrentWritesTest(RunningService service, Club club) {
    this.service = service;
    this.club = club;
  }

  private static List<Response> atOnce(IntFunction<Response> request)
      throws InterruptedException, ExecutionException {
    CountDownLatch ready = new CountDownLatch(AT_ONCE);
    List<Future<Response>> running = new ArrayList<>();
    try (ExecutorService threads = Executors.newVirtualThreadPerTaskExecutor()) {
      for (int i = 0; i < AT_ONCE; i++) {
        int each = i;
        running.add(
            threads.submit(
                () -> {
                  ready.countDown();
                  ready.await();
                  return request.apply(each);
                }));
      }
    }
    List<Response> answers = new ArrayList<>();
    for (Future<Response> each : running) {
      answers.add(each.get());
    }
    return answers;
  }

  private static List<Integer> statuses(List<Response> answers) {
    return answers.stream().map(Response::statusCode).sorted().toList();
  }

  private static List<Integer> onceAndElse(int once, int otherwise) {
    List<Integer> statuses = new ArrayList<>(Collections.nCopies(AT_ONCE - 1, otherwise));
    statuses.add(once);
    return statuses.stream().sorted().toList();
  }

  @Test
  void oneEventIsNewOnce() throws Exception {
    List<Response> answers = atOnce(_ -> club.send(Said.dog("juniper")));

    assertThat(statuses(answers)).isEqualTo(onceAndElse(201, 200));
    club.get("/events/dog-juniper").then().body("repeated", equalTo(AT_ONCE - 1));
  }

  @Test
  void ofManyContentsOneStands() throws Exception {
    List<Response> answers =
        atOnce(i -> club.send(Said.dog("juniper").replace("me\":\"juniper", "me\":\"Name " + i)));

    assertThat(statuses(answers)).isEqualTo(onceAndElse(201, 409));
    club.get("/events/dog-juniper").then().body("contradictedCount", equalTo(AT_ONCE - 1));
  }

  @Test
  void everybodyReadsWhatTheyWrote() throws Exception {
    List<Response> answers =
        atOnce(
            i -> {
              club.send(Said.dog("dog-" + i)).then().statusCode(201);
              return club.get("/dogs/dog-" + i);
            });

    assertThat(statuses(answers)).containsOnly(200);
    club.get("/digest").then().body("events", equalTo(AT_ONCE));
  }

  @Test
  void personalMembersOfManyEventsAreUnderOneKey() throws Exception {
    List<Response> answers =
        atOnce(
            i ->
                club.send(
                    Said.rep("r-" + i, "s", "d", "18:00:00", ",'handler':'h-1','note':'Note'")));

    assertThat(statuses(answers)).containsOnly(201);
    assertThat(statuses(atOnce(_ -> forget()))).containsOnly(200);
    assertThat(club.get("/events").asString()).doesNotContain("Note");
  }

  private Response forget() {
    return club.given().delete(club.path("/handlers/h-1/personal-data"));
  }

  @Test
  void aKeyIsMadeOnceAndShownOnce() throws Exception {
    List<Response> answers =
        atOnce(
            _ ->
                club.given()
                    .contentType("application/json")
                    .body(Said.json("{'id':'i-1','key':'phone','scopes':['records:read']}"))
                    .post(club.path("/access-keys")));

    assertOneKeyThatWorks(answers, club.id(), 200);
  }

  @Test
  void ofManyKeysOfOneIdOneIsMade() throws Exception {
    List<Response> answers =
        atOnce(
            i ->
                club.given()
                    .contentType("application/json")
                    .body(
                        Said.json(
                            "{'id':'i-%d','key':'phone','scopes':['records:read']}".formatted(i)))
                    .post(club.path("/access-keys")));

    assertOneKeyThatWorks(answers, club.id(), 409);
  }

  @Test
  void aClubRegistersOnce() throws Exception {
    String id = "at-once-" + club.id();

    assertOneKeyThatWorks(atOnce(_ -> register(id, "i-1", "Same")), id, 200);
  }

  @Test
  void ofManyClubsOfOneIdOneStands() throws Exception {
    String id = "one-of-many-" + club.id();

    assertOneKeyThatWorks(atOnce(i -> register(id, "i-" + i, "Name " + i)), id, 409);
  }

  private Response register(String id, String event, String name) {
    return service
        .as(service.hostKey())
        .contentType("application/json")
        .body(
            Said.json(
                "{'id':'%s','club':'%s','name':'%s','timeZone':'Europe/Lisbon'}"
                    .formatted(event, id, name)))
        .post("/v1/clubs");
  }

  private void assertOneKeyThatWorks(List<Response> answers, String id, int others) {
    assertThat(statuses(answers)).isEqualTo(onceAndElse(201, others));
    String accessKey =
        answers.stream()
            .filter(each -> each.statusCode() == 201)
            .findFirst()
            .orElseThrow()
            .path("accessKey");
    new Club(service, id, accessKey).get("/digest").then().statusCode(200);
  }
}
