package dev.poleward.service.demo;

import static dev.poleward.service.demo.Telling.data;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Some months of an invented club: six dogs of different temper, each advancing by its own results.
 * The same first day and length give the same events to the letter. For one thread.
 */
final class Season {

  /** Where the club is. */
  static final ZoneId ZONE = ZoneId.of("Europe/Lisbon");

  private static final long SEED = 20_260_504L;

  /** Its class. */
  static final String CLASS = "evening";

  private static final int PROBE_WEEKS = 4;
  private static final int NOTES_FORGOTTEN_WEEKS = 3;

  /** Its dogs begin on four poles. */
  private static final String FIRST_STAGE = "four-bare";

  /** The young dog comes so late, as a part of the season. */
  private static final double YOUNG_COMES = 0.4;

  private final LocalDate firstDay;
  private final int weeks;
  private final SplittableRandom chance = new SplittableRandom(SEED);
  private final Mishaps mishaps = new Mishaps(chance.split());
  private final Telling telling = new Telling();
  private final List<DogInTraining> dogs;
  private final Gate gate;

  private Season(LocalDate firstDay, int weeks) {
    this.firstDay = firstDay;
    this.weeks = weeks;
    this.gate = new Gate(telling, at(0, 9, 30));
    this.dogs = DemoDog.all().stream().map(dog -> DogInTraining.of(dog, SEED)).toList();
  }

  /**
   * What happened, in the order in which it was told.
   *
   * @param firstDay the day on which the club registered
   * @param weeks how long the season is; it ends on the day before {@code weeks} are over
   */
  static List<ObjectNode> of(LocalDate firstDay, int weeks) {
    Season season = new Season(firstDay, weeks);
    season.register();
    for (int week = 0; week < weeks; week++) {
      season.week(week);
    }
    season.afterwards();
    return season.telling.events();
  }

  /** The id of the session that the class had in a week, the first being 1. */
  static String classSession(int week) {
    return "s-%02d-class".formatted(week);
  }

  private OffsetDateTime at(int day, int hour, int minute) {
    return firstDay.plusDays(day).atTime(hour, minute).atZone(ZONE).toOffsetDateTime();
  }

  private void office(String type, OffsetDateTime time, ObjectNode data) {
    telling.tell(Source.OFFICE, type, time, data);
  }

  private void register() {
    OffsetDateTime time = at(0, 9, 30);
    office(
        "ground.registered.v1",
        time,
        data()
            .put("ground", "lower-field")
            .put("length", 40)
            .put("width", 25)
            .put("surface", "grass"));
    office("device.enrolled.v1", time, data().put("device", Gate.ID).put("kind", "timer"));
    office("device.assigned.v1", time, data().put("device", Gate.ID).put("ground", "lower-field"));
    handler(DemoDog.ODA, "Oda Fenwick");
    handler(DemoDog.RUBEN, "Ruben Tideway");
    handler(DemoDog.ILSE, "Ilse Marrow");
    ObjectNode limits = data();
    limits.putObject("careLimits").put("gapsPerSession", 60);
    office("club.settings-changed.v1", time, limits);
    office(
        "class.formed.v1",
        time,
        data().put("class", CLASS).put("name", "Evening class").put("instructor", DemoDog.ODA));
    office("programme.published.v1", time, DemoProgramme.document());
    for (DogInTraining dog : dogs) {
      if (!dog.dog().isYoung()) {
        comes(dog.dog(), time);
      }
    }
  }

  private void handler(String id, String name) {
    office("handler.registered.v1", at(0, 9, 30), data().put("handler", id).put("name", name));
  }

  private void comes(DemoDog dog, OffsetDateTime time) {
    ObjectNode data =
        data()
            .put("dog", dog.id())
            .put("callName", dog.callName())
            .put("born", firstDay.minusMonths(dog.monthsOld()).toString())
            .put("withersHeight", dog.withersHeight())
            .put("heatRisk", "none")
            .put("guest", dog.guest());
    data.putArray("handlers").add(dog.handler());
    office("dog.registered.v1", time, data);
    office("class.joined.v1", time, data().put("class", CLASS).put("dog", dog.id()));
    office(
        "programme.assigned.v1",
        time,
        data()
            .put("dog", dog.id())
            .put("programme", DemoProgramme.ID)
            .put("startStage", FIRST_STAGE));
  }

  private int youngComes() {
    return (int) (weeks * YOUNG_COMES);
  }

  /** The club is away in two weeks of a long season. */
  private boolean isHoliday(int week) {
    return week == 8 || week == 17;
  }

  /** Bracken is rested for two weeks. */
  private boolean isRested(DogInTraining dog, int week) {
    return dog.dog().id().equals("bracken") && (week == 12 || week == 13);
  }

  private void week(int week) {
    int begin = 7 * week;
    if (week == youngComes()) {
      dogs.stream()
          .map(DogInTraining::dog)
          .filter(DemoDog::isYoung)
          .forEach(dog -> comes(dog, at(begin, 10, 0)));
    }
    if (week == 12) {
      office(
          "dog.rested.v1",
          at(begin, 10, 0),
          data()
              .put("dog", "bracken")
              .put("reason", "Short in stride after the session.")
              .put("until", firstDay.plusDays(begin + 14L).toString()));
      office(
          "dog.cleared.v1",
          at(begin + 13, 12, 0),
          data().put("dog", "bracken").put("by", "veterinarian"));
    }
    if (isHoliday(week)) {
      return;
    }
    own(week, DemoDog.ODA, Source.ODAS_PHONE, at(begin + 1, 18, 0));
    own(week, DemoDog.RUBEN, Source.RUBENS_PHONE, at(begin + 3, 18, 30));
    classEvening(week, at(begin + 6, 17, 0));
  }

  /** A handler's own evening with the dogs of the club that are theirs. */
  private void own(int week, String handler, String phone, OffsetDateTime time) {
    String session = "s-%02d-%s".formatted(week + 1, handler.substring(2));
    Evening evening = Evening.opened(telling, chance, mishaps, session, null, phone, null, time);
    for (DogInTraining dog : here(week)) {
      if (dog.dog().handler().equals(handler) && !dog.dog().guest()) {
        evening.turn(dog, dog.dog().repsATurn(), probes(dog, week));
      }
    }
    mishaps.correct(telling, evening.close());
  }

  private void classEvening(int week, OffsetDateTime time) {
    String session = classSession(week + 1);
    Evening evening =
        Evening.opened(telling, chance, mishaps, session, CLASS, Source.TABLET, gate, time);
    List<DogInTraining> there = new ArrayList<>();
    for (DogInTraining dog : here(week)) {
      boolean present = chance.nextInt(12) > 0;
      if (isNoted(dog, week)) {
        evening.attends(dog, present);
      }
      if (present) {
        there.add(dog);
      }
    }
    there.forEach(dog -> evening.turn(dog, dog.dog().repsATurn(), false));
    mishaps.correct(telling, evening.close());
  }

  /** Now and then nobody remembers to tick off the guest. */
  private static boolean isNoted(DogInTraining dog, int week) {
    return !dog.dog().guest() || week % NOTES_FORGOTTEN_WEEKS != NOTES_FORGOTTEN_WEEKS - 1;
  }

  private List<DogInTraining> here(int week) {
    return dogs.stream()
        .filter(dog -> !dog.dog().isYoung() || week >= youngComes())
        .filter(dog -> !isRested(dog, week))
        .toList();
  }

  private boolean probes(DogInTraining dog, int week) {
    return week % PROBE_WEEKS == PROBE_WEEKS - 1 && !dog.dog().isYoung();
  }

  /** What else people told, and what nobody can place yet. */
  private void afterwards() {
    int lastDay = 7 * weeks - 1;
    office(
        "goal.set.v1",
        at(lastDay, 9, 0),
        data().put("dog", "sorrel").put("by", firstDay.plusWeeks(weeks + 8L).toString()));
    ObjectNode homework =
        data().put("dog", "juniper").put("due", firstDay.plusWeeks(weeks + 2L).toString());
    homework
        .putArray("drills")
        .add(
            data()
                .put("poles", 4)
                .put("leadIn", "none")
                .put("clock", "2:00")
                .put("manoeuvre", "alongside")
                .put("dogSide", "right")
                .put("reps", 6));
    office("homework.set.v1", at(lastDay, 9, 2), homework);
    office(
        "load.noted.v1",
        at(lastDay, 9, 5),
        data().put("dog", "juniper").put("kind", "hike").put("minutes", 90));
    office(
        "trial.run.v1",
        at(lastDay, 11, 0),
        data()
            .put("dog", "sorrel")
            .put("poles", 6)
            .put("outcome", "clean")
            .put("seconds", 1.71)
            .put("angle", -30));
    String session = classSession(weeks);
    // A visitor whom nobody has registered, and a session that nobody has opened.
    for (int rep = 1; rep <= 2; rep++) {
      telling.tell(
          Source.TABLET,
          "rep.logged.v1",
          at(lastDay, 17, rep),
          data()
              .put("rep", "visitor-" + rep)
              .put("session", session)
              .put("dog", "fennel")
              .put("manoeuvre", "alongside")
              .put("dogSide", "left")
              .put("outcome", "clean"));
    }
    telling.tell(
        Source.RUBENS_PHONE,
        "rep.logged.v1",
        at(lastDay, 8, 0),
        data()
            .put("rep", "at-the-beach")
            .put("session", "s-beach")
            .put("dog", "pebble")
            .put("manoeuvre", "recall")
            .put("outcome", "clean"));
  }
}
