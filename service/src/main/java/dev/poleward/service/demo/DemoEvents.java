package dev.poleward.service.demo;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Two months of an invented club, made up from a seed: the same seed and start give the same
 * events. For one thread.
 */
final class DemoEvents {

  static final String CLUB = "saltmarsh";

  private static final int WEEKS = 8;
  private static final int SESSIONS_A_WEEK = 2;
  private static final int REPS_A_DOG = 8;
  private static final List<String> MANOEUVRES =
      List.of("alongside", "alongside", "recall", "send", "rear-cross", "lateral-distance");
  private static final List<Integer> ANGLES = List.of(0, 15, 30, 45, 60, 75, 90);

  /**
   * An invented dog.
   *
   * @param poleLimit degrees at which it makes half of its entries on the pole side
   * @param gapLimit the same on the gap side
   */
  private record Dog(String id, String name, String handler, int poleLimit, int gapLimit) {}

  private static final List<Dog> DOGS =
      List.of(
          new Dog("juniper", "Juniper", "h-oda", 85, 60),
          new Dog("bracken", "Bracken", "h-oda", 55, 70),
          new Dog("pebble", "Pebble", "h-ruben", 45, 40),
          new Dog("sorrel", "Sorrel", "h-ruben", 95, 90));

  private final Random random;
  private final OffsetDateTime begin;
  private final List<ObjectNode> events = new ArrayList<>();
  private int reps;

  private DemoEvents(long seed, OffsetDateTime begin) {
    this.random = new Random(seed);
    this.begin = begin;
  }

  /** The club's events, from {@code begin} on for eight weeks. */
  static List<ObjectNode> of(long seed, OffsetDateTime begin) {
    DemoEvents demo = new DemoEvents(seed, begin);
    demo.register();
    for (int week = 0; week < WEEKS; week++) {
      for (int session = 0; session < SESSIONS_A_WEEK; session++) {
        demo.session(week, session);
      }
    }
    return demo.events;
  }

  private void register() {
    add("ground.registered.v1", begin, data().put("ground", "lower-field").put("surface", "grass"));
    add("handler.registered.v1", begin, data().put("handler", "h-oda").put("name", "Oda Fenwick"));
    add(
        "handler.registered.v1",
        begin,
        data().put("handler", "h-ruben").put("name", "Ruben Tideway"));
    for (Dog dog : DOGS) {
      ObjectNode data = data().put("dog", dog.id()).put("callName", dog.name());
      data.putArray("handlers").add(dog.handler());
      add("dog.registered.v1", begin, data);
    }
    add(
        "class.formed.v1",
        begin,
        data().put("class", "evening").put("name", "Evening class").put("instructor", "h-oda"));
    for (Dog dog : DOGS) {
      add("class.joined.v1", begin, data().put("class", "evening").put("dog", dog.id()));
    }
  }

  private void session(int week, int ofWeek) {
    OffsetDateTime opened = begin.plusWeeks(week).plusDays(1 + 3L * ofWeek);
    String session = "s-%d-%d".formatted(week + 1, ofWeek + 1);
    add(
        "session.opened.v1",
        opened,
        data()
            .put("session", session)
            .put("ground", "lower-field")
            .put("class", "evening")
            .put("temperature", 12 + random.nextInt(10)));
    OffsetDateTime time = opened;
    for (int size : List.of(angle(week), angle(week))) {
      int angle = random.nextBoolean() ? size : -size;
      time = time.plusMinutes(5);
      add("setup.changed.v1", time, setup(session, angle));
      for (Dog dog : DOGS) {
        time = reps(session, dog, angle, week, time);
      }
    }
    add("session.closed.v1", time.plusMinutes(2), data().put("session", session));
  }

  private static ObjectNode setup(String session, int angle) {
    ObjectNode data = data().put("session", session);
    data.putObject("setup")
        .put("poles", 4)
        .put("spacing", 0.6)
        .put("leadIn", "tunnel")
        .put("leadInDistance", 5)
        .put("angle", angle);
    return data;
  }

  /** The poles are turned a little further each week. */
  private int angle(int week) {
    return ANGLES.get(Math.min(ANGLES.size() - 1, random.nextInt(week + 2)));
  }

  private OffsetDateTime reps(String session, Dog dog, int angle, int week, OffsetDateTime begun) {
    OffsetDateTime time = begun;
    for (int i = 0; i < REPS_A_DOG / 2; i++) {
      time = time.plusSeconds(20 + random.nextInt(30));
      String manoeuvre = MANOEUVRES.get(random.nextInt(MANOEUVRES.size()));
      ObjectNode data =
          data()
              .put("rep", "r-%04d".formatted(++reps))
              .put("session", session)
              .put("dog", dog.id())
              .put("manoeuvre", manoeuvre)
              .put("outcome", outcome(dog, angle, week))
              .put("handler", dog.handler());
      if (!manoeuvre.equals("recall")) {
        data.put("dogSide", random.nextBoolean() ? "left" : "right");
      }
      data.putArray("rewards").addObject().put("kind", "toy").put("at", "exit");
      add("rep.logged.v1", time, data);
    }
    return time;
  }

  private String outcome(Dog dog, int angle, int week) {
    int limit = (angle >= 0 ? dog.poleLimit() : dog.gapLimit()) + 3 * week;
    double made = 1 / (1 + Math.exp((Math.abs(angle) - limit) / 12.0));
    if (random.nextDouble() < made) {
      return random.nextInt(12) == 0 ? "popped-out" : "clean";
    }
    return random.nextInt(8) == 0 ? "no-attempt" : "missed-entry";
  }

  private static ObjectNode data() {
    return JsonNodeFactory.instance.objectNode();
  }

  private void add(String type, OffsetDateTime time, ObjectNode data) {
    ObjectNode event =
        JsonNodeFactory.instance
            .objectNode()
            .put("specversion", "1.0")
            .put("id", "demo-%05d".formatted(events.size() + 1))
            .put("source", "/demo")
            .put("type", type)
            .put("time", DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(time));
    event.set("data", data);
    events.add(event);
  }
}
