package dev.poleward.load.training;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Dogs that know what they run: two sessions a week over three bare poles, nine of ten reps clean,
 * so that they have moved on and come back to it after days. For one thread.
 */
public final class OtherDogs {

  private static final Duration BETWEEN_SESSIONS = Duration.ofHours(84);
  private static final int REPS_IN_SESSION = 10;
  private static final int[] ANGLES = {0, 30, -30, 60, -60, 90, -90};
  private static final String[] HANDLINGS = {
    "\"dogSide\":\"left\",\"manoeuvre\":\"alongside\"",
    "\"dogSide\":\"right\",\"manoeuvre\":\"alongside\"",
    "\"manoeuvre\":\"recall\""
  };

  private final SplittableRandom random;
  private final Ids ids;
  private final Instant begin;
  private final Instant end;

  /**
   * Dogs to come.
   *
   * @param reps of each
   * @param end of the last session, about
   */
  public OtherDogs(long seed, int reps, Instant end) {
    this.random = new SplittableRandom(seed);
    this.ids = new Ids(random);
    this.begin = end.minus(BETWEEN_SESSIONS.multipliedBy(Math.ceilDiv(reps, REPS_IN_SESSION)));
    this.end = end;
  }

  /** Id of one of them. */
  public static String name(int number) {
    return "other-" + number;
  }

  /** All that one of them has run. */
  public List<Sending> all(int number) {
    List<Sending> events = new ArrayList<>();
    String dog = name(number);
    events.add(ClubHistory.dog(random, dog, begin));
    for (Instant at = begin; at.isBefore(end); at = at.plus(BETWEEN_SESSIONS)) {
      String session = ids.at(at);
      events.add(sending("session.opened.v1", at, "{\"session\":\"%s\"}".formatted(session)));
      for (int i = 0; i < REPS_IN_SESSION; i++) {
        Instant time = at.plusSeconds(60L + 30L * i);
        if (i % (REPS_IN_SESSION / 2) == 0) {
          events.add(
              sending(
                  "setup.changed.v1",
                  time.minusSeconds(1),
                  "{\"session\":\"%s\",\"setup\":{\"angle\":%d,\"leadIn\":\"none\",\"poles\":3,\"spacing\":0.6}}"
                      .formatted(session, ANGLES[random.nextInt(ANGLES.length)])));
        }
        events.add(rep(session, dog, time));
      }
    }
    return events;
  }

  private Sending rep(String session, String dog, Instant time) {
    String id = ids.at(time);
    return new Sending(
        id,
        "rep.logged.v1",
        time,
        "{\"dog\":\"%s\",%s,\"outcome\":\"%s\",\"rep\":\"%s\",\"session\":\"%s\"}"
            .formatted(
                dog,
                HANDLINGS[random.nextInt(HANDLINGS.length)],
                random.nextInt(10) > 0 ? "clean" : "missed-entry",
                id,
                session));
  }

  private Sending sending(String type, Instant time, String data) {
    return new Sending(ids.at(time), type, time, data);
  }
}
