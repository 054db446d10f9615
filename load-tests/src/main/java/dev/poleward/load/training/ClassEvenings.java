package dev.poleward.load.training;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * A class with some dogs that meets once a week: each dog has some turns, and the poles are turned
 * now and then. For one thread.
 */
public final class ClassEvenings {

  private static final Duration WEEK = Duration.ofDays(7);
  private static final int[] ANGLES = {-60, -45, -30, 0, 30, 45, 60};
  private static final int TURNS_TO_A_SETUP = 6;

  private final SplittableRandom random;
  private final Ids ids;
  private final String group;
  private final List<String> dogs;

  /** A class of dogs that are registered. */
  public ClassEvenings(long seed, String group, List<String> dogs) {
    this.random = new SplittableRandom(seed);
    this.ids = new Ids(random);
    this.group = group;
    this.dogs = List.copyOf(dogs);
  }

  /** It is formed, and all dogs join. */
  public List<Sending> formed(Instant time) {
    List<Sending> events = new ArrayList<>();
    events.add(
        sending(
            "class.formed.v1", time, "{\"class\":\"%s\",\"name\":\"Evening\"}".formatted(group)));
    for (String dog : dogs) {
      events.add(
          sending(
              "class.joined.v1", time, "{\"class\":\"%s\",\"dog\":\"%s\"}".formatted(group, dog)));
    }
    return events;
  }

  /** One evening after the other, a week apart. */
  public List<Sending> weeks(int count, Instant first, int repsEach) {
    List<Sending> events = new ArrayList<>();
    for (int week = 0; week < count; week++) {
      addEvening(events, first.plus(WEEK.multipliedBy(week)), repsEach);
    }
    return events;
  }

  private void addEvening(List<Sending> events, Instant begins, int repsEach) {
    String session = ids.at(begins);
    Instant time = begins;
    events.add(
        sending(
            "session.opened.v1",
            time,
            "{\"class\":\"%s\",\"session\":\"%s\"}".formatted(group, session)));
    List<String> present = new ArrayList<>();
    for (String dog : dogs) {
      boolean isPresent = random.nextInt(10) > 0;
      events.add(
          sending(
              "session.attended.v1",
              time,
              "{\"dog\":\"%s\",\"present\":%b,\"session\":\"%s\"}"
                  .formatted(dog, isPresent, session)));
      if (isPresent) {
        present.add(dog);
      }
    }
    int turns = 0;
    for (int round = 0; round < repsEach; round++) {
      for (String dog : present) {
        time = time.plusSeconds(40);
        if (turns++ % TURNS_TO_A_SETUP == 0) {
          events.add(setup(session, time));
        }
        events.add(rep(session, dog, time));
      }
    }
    events.add(
        sending("session.closed.v1", time.plusSeconds(60), "{\"session\":\"" + session + "\"}"));
  }

  private Sending setup(String session, Instant time) {
    return sending(
        "setup.changed.v1",
        time,
        "{\"session\":\"%s\",\"setup\":{\"angle\":%d,\"leadIn\":\"tunnel\",\"leadInDistance\":4.7,\"poles\":4,\"spacing\":0.6}}"
            .formatted(session, ANGLES[random.nextInt(ANGLES.length)]));
  }

  private Sending rep(String session, String dog, Instant time) {
    String id = ids.at(time);
    String outcome = random.nextInt(5) > 0 ? "clean" : "missed-entry";
    return new Sending(
        id,
        "rep.logged.v1",
        time,
        "{\"dog\":\"%s\",\"dogSide\":\"%s\",\"manoeuvre\":\"alongside\",\"outcome\":\"%s\",\"rep\":\"%s\",\"session\":\"%s\"}"
            .formatted(dog, random.nextBoolean() ? "left" : "right", outcome, id, session));
  }

  private Sending sending(String type, Instant time, String data) {
    return new Sending(ids.at(time), type, time, data);
  }
}
