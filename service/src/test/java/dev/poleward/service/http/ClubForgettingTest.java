package dev.poleward.service.http;

import static dev.poleward.service.http.Said.event;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.lessThan;
import static org.hamcrest.Matchers.not;

import dev.poleward.service.Club;
import dev.poleward.service.RunningService;
import dev.poleward.service.SharedService;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * What a club's dogs have forgotten shows in what is expected of a dog of which little is known.
 */
@ExtendWith(SharedService.class)
class ClubForgettingTest {

  private static final Instant BEGUN = Instant.parse("2026-05-04T17:00:00Z");
  private static final String VIEW = "?asOf=2026-07-20T21:00:00Z";
  private static final String JUNIPER = "/dogs/juniper/progress" + VIEW;
  private static final List<String> OTHERS = List.of("alder", "bramble", "clover", "dock");

  /** Juniper came to the drill so many days before the day of the view. */
  private static final int JUNIPERS_DAY = 62;

  private final RunningService service;

  ClubForgettingTest(RunningService service) {
    this.service = service;
  }

  private static String on(int day, int minute) {
    return BEGUN.plus(day, ChronoUnit.DAYS).plus(minute, ChronoUnit.MINUTES).toString();
  }

  /** One drill that five clean reps in a row make solid, and juniper, who made it so. */
  private static List<String> begun() {
    List<String> events = new ArrayList<>();
    events.add(
        event(
            "e-programme",
            "programme.published.v1",
            on(-1, 0),
            "{'programme':'straight','version':1,'name':'Straight','rule':{'method':'run','length':5},"
                + "'stages':[{'stage':'bare','poles':4,'leadIn':'none','entries':{'clocks':['12:00']},"
                + "'handlings':[{'manoeuvre':'alongside'}]}]}"));
    events.add(event("e-session", "session.opened.v1", on(-1, 0), "{'session':'s-1'}"));
    events.addAll(learned("juniper", "", JUNIPERS_DAY));
    return events;
  }

  private static List<String> learned(String dog, String traits, int day) {
    List<String> events = new ArrayList<>();
    events.add(
        event(
            "e-" + dog,
            "dog.registered.v1",
            on(-1, 0),
            "{'dog':'%s','callName':'%s'%s}".formatted(dog, dog, traits)));
    events.add(
        event(
            "e-follows-" + dog,
            "programme.assigned.v1",
            on(-1, 0),
            "{'dog':'%s','programme':'straight'}".formatted(dog)));
    for (int i = 0; i < 5; i++) {
      events.add(ran(dog, day, i, "clean"));
    }
    return events;
  }

  private static String ran(String dog, int day, int minute, String outcome) {
    String name = "%s-%d-%d".formatted(dog, day, minute);
    return event(
        "e-" + name,
        "rep.logged.v1",
        on(day, minute),
        ("{'rep':'%s','session':'s-1','dog':'%s','manoeuvre':'alongside','outcome':'%s',"
                + "'setup':{'poles':4,'spacing':0.6,'leadIn':'none','angle':0}}")
            .formatted(name, dog, outcome));
  }

  /** Comes back to the drill on the 10th day and then every ten days, five times in all. */
  private static List<String> comesBack(String dog, String traits, String outcome) {
    List<String> events = new ArrayList<>(learned(dog, traits, 0));
    for (int day = 10; day <= 50; day += 10) {
      events.add(ran(dog, day, 0, outcome));
      for (int i = 1; i <= 7; i++) {
        events.add(ran(dog, day, i, "clean"));
      }
    }
    return events;
  }

  private static List<String> clubOf(String traits, String outcome) {
    List<String> events = begun();
    OTHERS.forEach(dog -> events.addAll(comesBack(dog, traits, outcome)));
    return events;
  }

  private Club clubThat(List<String> events) {
    Club club = service.newClub();
    club.record(events.toArray(String[]::new));
    return club;
  }

  @Test
  void aNewDogInAClubThatForgetsIsDueSooner() {
    Club alone = clubThat(begun());
    Club forgets = clubThat(clubOf("", "missed-entry"));

    alone
        .get(JUNIPER)
        .then()
        .statusCode(200)
        .body("forgetting.dueAfterDays", equalTo(30))
        .body("forgetting.clubDogs", equalTo(0))
        .body("rungs[0].state", equalTo("solid"));
    forgets
        .get(JUNIPER)
        .then()
        .statusCode(200)
        .body("forgetting.dueAfterDays", equalTo(0))
        .body("forgetting.returns", equalTo(0))
        .body("forgetting.ownShare", equalTo(0))
        .body("forgetting.clubDogs", equalTo(4))
        .body("forgetting.clubReturns", equalTo(20))
        .body("rungs[0].state", equalTo("due"))
        .body("next.why", hasItem("due"));
  }

  @Test
  void itIsSaidHowMuchIsTheDogsOwn() {
    Club forgets = clubThat(clubOf("", "missed-entry"));

    forgets
        .get("/dogs/alder/progress" + VIEW)
        .then()
        .body("forgetting.returns", equalTo(5))
        .body("forgetting.clubDogs", equalTo(3))
        .body("forgetting.clubReturns", equalTo(15))
        .body("forgetting.ownShare", greaterThan(0.2f))
        .body("forgetting.ownShare", lessThan(1f));
  }

  /** One expectation, wherever a dog is judged. */
  @Test
  void theOverviewAndTheClassReportAndThePlanSayTheSame() {
    for (String outcome : List.of("missed-entry", "clean")) {
      List<String> events = clubOf("", outcome);
      events.add(
          event("e-class", "class.formed.v1", on(-1, 0), "{'class':'evening','name':'Evening'}"));
      events.add(
          event("e-joins", "class.joined.v1", on(-1, 0), "{'class':'evening','dog':'juniper'}"));
      Club club = clubThat(events);
      boolean isDue = outcome.equals("missed-entry");

      club.get(JUNIPER).then().body("rungs[0].state", equalTo(isDue ? "due" : "solid"));
      club.get("/overview" + VIEW)
          .then()
          .statusCode(200)
          .body("dogs.find { it.dog == 'juniper' }.due", equalTo(isDue ? 1 : 0));
      club.get("/classes/evening/report" + VIEW)
          .then()
          .statusCode(200)
          .body("dogs[0].due.size()", equalTo(isDue ? 1 : 0));
      club.given()
          .header("Content-Type", "application/json")
          .body("{\"id\":\"p-1\",\"time\":\"2026-07-20T21:00:00Z\",\"budget\":{\"reps\":8}}")
          .post(club.path("/dogs/juniper/plans"))
          .then()
          .statusCode(201)
          .body("drills.purpose", isDue ? hasItem("refresh") : not(hasItem("refresh")));
    }
  }

  @Test
  void guestsSayNothing() {
    clubThat(clubOf(",'guest':true", "missed-entry"))
        .get(JUNIPER)
        .then()
        .body("forgetting.dueAfterDays", equalTo(30))
        .body("forgetting.clubDogs", equalTo(0));
  }

  /**
   * Asked after every event, in an order that has everything come late, corrected and moved about,
   * the club answers as one that was told all at once in another order and is asked for the first
   * time.
   */
  @Test
  void whatWasAskedBeforeDoesNotShow() {
    List<String> events = clubOf("", "missed-entry");
    events.addAll(comesBack("elder", ",'guest':true", "missed-entry"));
    events.addAll(comesBack("fern", "", "clean"));
    List<String> news = new ArrayList<>();
    for (String late : List.of("e-alder-20-0", "e-follows-dock", "e-bramble", "e-session")) {
      events.stream().filter(each -> each.contains("\"" + late + "\"")).forEach(news::add);
    }
    assertThat(news).hasSize(4);
    events.removeAll(news);
    news.add(ran("clover", 55, 0, "missed-entry"));
    news.add(ran("juniper", 66, 0, "missed-entry"));
    news.add(
        event(
            "e-corrected", "rep.amended.v1", on(70, 0), "{'rep':'clover-30-0','outcome':'clean'}"));
    news.add(event("e-given", "rep.amended.v1", on(70, 0), "{'rep':'fern-30-0','dog':'alder'}"));
    news.add(
        event(
            "e-withdrawn",
            "event.withdrawn.v1",
            on(70, 0),
            "{'event':'e-bramble-30-0','reason':'Logged by mistake.'}"));
    news.add(event("e-no-guest", "dog.amended.v1", on(70, 0), "{'dog':'elder','guest':false}"));
    news.add(event("e-merged", "dog.merged.v1", on(70, 0), "{'dog':'fern','into':'dock'}"));
    Club asked = clubThat(events);
    List<String> known = new ArrayList<>(events);
    Random random = new Random(11);
    for (String said : news) {
      asked.record(said);
      known.add(said);
      Collections.shuffle(known, random);
      Club fresh = clubThat(known);

      for (String dog : List.of("juniper", "alder", "clover")) {
        for (String view : List.of(VIEW, "?asOf=2026-06-25T21:00:00Z")) {
          String path = "/dogs/" + dog + "/progress" + view;
          assertThat(asked.get(path).asString())
              .as("%s after %s", path, said)
              .isEqualTo(fresh.get(path).asString());
        }
      }
    }
    asked.get(JUNIPER).then().body("forgetting.clubDogs", equalTo(5));
  }
}
