package dev.poleward.service.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import dev.poleward.domain.history.GeneratedHistory;
import dev.poleward.service.Club;
import dev.poleward.service.RunningService;
import dev.poleward.service.SharedService;
import io.restassured.response.Response;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What is known about a club is a function of the set of its events: in whatever order they come,
 * how often, and split over which requests, every answer is the same to the byte.
 */
@ExtendWith(SharedService.class)
class AnyOrderTest {

  private static final Map<String, List<String>> LISTS =
      Map.of(
          "dogs", List.of("d-1", "d-2", "d-3", "d-4"),
          "handlers", List.of("h-1", "h-2"),
          "grounds", List.of("g-1", "g-2"),
          "classes", List.of("c-1", "c-2"),
          "programmes", List.of("p-1", "p-2"),
          "devices", List.of("t-1", "t-2"),
          "sessions", List.of("s-1", "s-2"));

  private final RunningService service;

  AnyOrderTest(RunningService service) {
    this.service = service;
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void theOrderIsOfNoAccount(long seed) {
    Random random = new Random(seed);
    List<String> events =
        GeneratedHistory.of(seed).events().stream().map(GeneratedEvents::written).toList();
    Club inOrder = service.newClub();
    Club muddled = service.newClub();
    record(inOrder, events);
    send(muddled, events, random);

    for (String view : views(random)) {
      assertThat(answers(muddled, view))
          .as("seed %d, view %s", seed, view)
          .isEqualTo(answers(inOrder, view));
    }
  }

  private static void record(Club club, List<String> events) {
    Response answer = club.sendAll(events);
    assertThat(answer.<List<Object>>path("refused")).isEmpty();
    assertThat(answer.<Integer>path("accepted")).isEqualTo(events.size());
  }

  /** Shuffled, some of them more than once, alone or in batches of any size. */
  private static void send(Club club, List<String> events, Random random) {
    List<String> rest = new ArrayList<>(events);
    for (int repeats = random.nextInt(events.size()); repeats > 0; repeats--) {
      rest.add(events.get(random.nextInt(events.size())));
    }
    Collections.shuffle(rest, random);
    int accepted = 0;
    while (!rest.isEmpty()) {
      if (random.nextInt(3) == 0) {
        accepted += club.send(rest.removeFirst()).statusCode() == 201 ? 1 : 0;
        continue;
      }
      List<String> batch = rest.subList(0, 1 + random.nextInt(Math.min(30, rest.size())));
      accepted += club.sendAll(batch).<Integer>path("accepted");
      batch.clear();
    }
    assertThat(accepted).isEqualTo(events.size());
  }

  private static List<String> views(Random random) {
    String asOf = "asOf=" + GeneratedHistory.anyTime(random);
    String knownAt = "knownAt=" + GeneratedHistory.anyRecordingTime(random);
    return List.of("", "?" + asOf, "?" + knownAt, "?" + asOf + "&" + knownAt);
  }

  /** Everything that the club answers in a view, its own id aside. */
  private static Map<String, String> answers(Club club, String view) {
    Map<String, String> answers = new LinkedHashMap<>();
    ask(answers, club, "/digest", "", "*/*");
    ask(answers, club, "", view, "*/*");
    ask(answers, club, "/waiting", view, "*/*");
    LISTS.forEach(
        (list, ids) -> {
          ask(answers, club, "/" + list, view, "*/*");
          ids.forEach(id -> ask(answers, club, "/" + list + "/" + id, view, "*/*"));
        });
    for (String dog : LISTS.getOrDefault("dogs", List.of())) {
      ask(answers, club, "/dogs/" + dog + "/reps", view, "application/json");
      ask(answers, club, "/dogs/" + dog + "/reps", view, "text/csv");
    }
    for (String group : LISTS.getOrDefault("classes", List.of())) {
      askForRunningOrder(answers, club, "/classes/" + group + "/running-order");
    }
    return answers;
  }

  private static void askForRunningOrder(Map<String, String> answers, Club club, String path) {
    Response answer =
        club.given()
            .header("Content-Type", "application/json")
            .body(Said.json("{'time':'2026-05-04T17:00:00Z'}"))
            .post(club.path(path));
    assertThat(answer.statusCode()).as(path).isIn(200, 404);
    answers.put(path, answer.statusCode() + " " + answer.asString().replace(club.id(), "club"));
  }

  private static void ask(
      Map<String, String> answers, Club club, String path, String view, String accept) {
    Response answer = club.given().header("Accept", accept).get(club.path(path + view));
    assertThat(answer.statusCode()).as(path + view).isIn(200, 404);
    answers.put(
        path + " " + accept,
        answer.statusCode() + " " + answer.asString().replace(club.id(), "club"));
  }

  /** Events in the feed lie in the order in which they came, and are the same all the same. */
  @ParameterizedTest
  @ValueSource(longs = {11, 12})
  void theFeedHoldsTheSameEvents(long seed) throws IOException {
    List<String> events =
        GeneratedHistory.of(seed).events().stream().map(GeneratedEvents::written).toList();
    Club inOrder = service.newClub();
    Club muddled = service.newClub();
    record(inOrder, events);
    send(muddled, events, new Random(seed));

    assertThat(feed(muddled)).containsExactlyInAnyOrderElementsOf(feed(inOrder));
    Club again = service.newClub();
    record(again, feed(muddled));
    assertThat(answers(again, "")).isEqualTo(answers(inOrder, ""));
  }

  private static List<String> feed(Club club) throws IOException {
    List<String> events = new ArrayList<>();
    new ObjectMapper()
        .readTree(club.get("/events?after=2&limit=1000").asString())
        .path("events")
        .forEach(each -> events.add(each.toString()));
    return events;
  }
}
