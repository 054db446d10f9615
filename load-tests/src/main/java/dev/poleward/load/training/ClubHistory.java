package dev.poleward.load.training;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.SplittableRandom;

/**
 * Everything that happens in a club from its first dog on: sessions of one dog after the other,
 * with two setups each, corrections and mistakes. Without end. For one thread.
 */
public final class ClubHistory {

  private static final Instant BEGIN = Instant.parse("2024-03-04T17:00:00Z");
  private static final Duration BETWEEN_SESSIONS = Duration.ofHours(4);

  /**
   * What kind of club.
   *
   * @param dogs how many
   * @param repsInSession of each session
   * @param amendedPercent how many reps are amended
   * @param withdrawnPercent how many reps are withdrawn
   */
  public record Shape(int dogs, int repsInSession, int amendedPercent, int withdrawnPercent) {

    /** Ten dogs, 20 reps a session, a few corrections. */
    public static final Shape USUAL = new Shape(10, 20, 1, 1);
  }

  private final SplittableRandom random;
  private final Shape shape;
  private final Queue<Sending> told = new ArrayDeque<>();
  private Instant now = BEGIN;
  private int sessions;

  /** A club; the same seed gives the same history. */
  public ClubHistory(long seed, Shape shape) {
    this.random = new SplittableRandom(seed);
    this.shape = shape;
    for (int i = 0; i < shape.dogs(); i++) {
      told.add(dog(random, dogName(i), now));
      now = now.plusSeconds(1);
    }
  }

  /** Id of a club's dog. */
  public static String dogName(int number) {
    return "dog-" + number;
  }

  /** A dog comes to the club. */
  public static Sending dog(SplittableRandom random, String dog, Instant time) {
    return new Sending(
        new Ids(random).at(time),
        "dog.registered.v1",
        time,
        "{\"born\":\"2022-05-01\",\"callName\":\"%s\",\"dog\":\"%s\",\"withersHeight\":0.47}"
            .formatted(dog, dog));
  }

  /** What happens next. */
  public Sending next() {
    Sending next = told.poll();
    while (next == null) {
      tellSession();
      next = told.poll();
    }
    return next;
  }

  /** What happens in the next {@code count} events. */
  public List<Sending> next(int count) {
    List<Sending> events = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      events.add(next());
    }
    return events;
  }

  /** What happens up to the end of {@code count} more sessions. */
  public List<Sending> nextSessions(int count) {
    for (int i = 0; i < count; i++) {
      tellSession();
    }
    return next(told.size());
  }

  private void tellSession() {
    Session session = new Session(random, dogName(sessions % shape.dogs()), now);
    sessions++;
    told.add(session.opened());
    told.add(session.setup());
    for (int i = 0; i < shape.repsInSession(); i++) {
      if (i == shape.repsInSession() / 2) {
        told.add(session.setup());
      }
      Sending rep = session.rep();
      told.add(rep);
      int chance = random.nextInt(100);
      if (chance < shape.amendedPercent()) {
        told.add(session.amended(rep));
      } else if (chance < shape.amendedPercent() + shape.withdrawnPercent()) {
        told.add(session.withdrawn(rep));
      }
    }
    told.add(session.closed());
    now = session.now().plus(BETWEEN_SESSIONS);
  }
}
