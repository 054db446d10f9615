package dev.poleward.service.http;

import static dev.poleward.service.http.Said.event;
import static dev.poleward.service.http.Said.json;

import dev.poleward.service.Club;
import io.restassured.response.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A class of three dogs, and what is asked of it. */
final class MondayClass {

  static final String ORDER = "/classes/monday/running-order";

  /** Six in the evening, as the club has it. */
  static final String SIX = "'time':'2026-05-04T17:00:00Z'";

  static final String AT_30 =
      "{'poles':4,'spacing':0.6,'leadIn':'tunnel','leadInDistance':5,'angle':30}";
  static final String AT_60 =
      "{'poles':4,'spacing':0.6,'leadIn':'tunnel','leadInDistance':5,'clock':'2:00'}";

  private MondayClass() {}

  static void meet(Club club) {
    List<String> events = new ArrayList<>();
    events.add(
        event(
            "form-monday",
            "class.formed.v1",
            "2026-01-10T11:00:00Z",
            "{'class':'monday','name':'Monday beginners'}"));
    for (String dog : List.of("juniper", "moss", "fern")) {
      events.add(
          event(
              "dog-" + dog,
              "dog.registered.v1",
              "2026-01-10T10:00:00Z",
              "{'dog':'%s','callName':'%s','born':'2021-03-01'}".formatted(dog, dog)));
      events.add(joins(dog));
    }
    club.record(events.toArray(String[]::new));
  }

  static String joins(String dog) {
    return event(
        "join-" + dog,
        "class.joined.v1",
        "2026-01-11T18:00:00Z",
        "{'class':'monday','dog':'%s'}".formatted(dog));
  }

  static Response asks(Club club, String body) {
    return club.given()
        .header("Content-Type", "application/json")
        .body(json(body))
        .post(club.path(ORDER));
  }

  /** A dog that is to run five reps over each of the setups. */
  static String drills(String dog, String... setups) {
    return "{'dog':'%s','drills':[%s]}"
        .formatted(
            dog,
            List.of(setups).stream()
                .map("{'setup':%s,'reps':5}"::formatted)
                .collect(Collectors.joining(",")));
  }
}
