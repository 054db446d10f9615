package dev.poleward.load.training;

import java.time.Instant;
import java.util.SplittableRandom;

/**
 * One training session of one dog: tells what happens in it, half a minute apart, for as long as
 * somebody asks. For one thread.
 */
public final class Session {

  private static final String[] MANOEUVRES = {
    "alongside", "front-cross", "blind-cross", "recall", "send", "pressure"
  };
  private static final String[] OUTCOMES = {
    "clean", "clean", "clean", "clean", "missed-entry", "popped-out", "no-attempt"
  };
  private static final int[] ANGLES = {-75, -60, -45, -30, -15, 0, 15, 30, 45, 60, 75, 90};
  private static final long STEP_SECONDS = 30;

  private final SplittableRandom random;
  private final Ids ids;
  private final String dog;
  private final String session;
  private Instant now;

  /** A session of a dog that begins then. */
  public Session(SplittableRandom random, String dog, Instant begins) {
    this.random = random;
    this.ids = new Ids(random);
    this.dog = dog;
    this.now = begins;
    this.session = ids.at(begins);
  }

  private Instant later() {
    now = now.plusSeconds(STEP_SECONDS);
    return now;
  }

  private Sending sending(String type, String data) {
    Instant time = later();
    return new Sending(ids.at(time), type, time, data);
  }

  /** When it is now. */
  public Instant now() {
    return now;
  }

  public Sending opened() {
    return sending(
        "session.opened.v1",
        "{\"humidity\":62,\"session\":\"" + session + "\",\"surface\":\"grass\"}");
  }

  public Sending closed() {
    return sending("session.closed.v1", "{\"session\":\"" + session + "\"}");
  }

  /** The poles are put up in one way or another. */
  public Sending setup() {
    return sending(
        "setup.changed.v1",
        "{\"session\":\"%s\",\"setup\":{\"angle\":%d,\"leadIn\":\"tunnel\",\"leadInDistance\":4.7,\"poles\":%d,\"spacing\":0.6}}"
            .formatted(session, one(ANGLES), 4 + 2 * random.nextInt(5)));
  }

  /** The dog weaves. The id of the rep is the id of the event. */
  public Sending rep() {
    Instant time = later();
    String id = ids.at(time);
    boolean toy = random.nextBoolean();
    String data =
        "{\"dog\":\""
            + dog
            + "\",\"dogSide\":\""
            + (random.nextBoolean() ? "left" : "right")
            + "\",\"drive\":"
            + (1 + random.nextInt(3))
            + ",\"help\":\"none\",\"manoeuvre\":\""
            + one(MANOEUVRES)
            + "\",\"outcome\":\""
            + one(OUTCOMES)
            + "\",\"rep\":\""
            + id
            + "\",\"rewards\":[{\"at\":\""
            + (toy ? "exit" : "gap")
            + "\",\"count\":1,\"delivery\":\""
            + (toy ? "thrown" : "placed")
            + "\",\"kind\":\""
            + (toy ? "toy" : "food")
            + "\"}],\"session\":\""
            + session
            + "\",\"stride\":\"single\"}";
    return new Sending(id, "rep.logged.v1", time, data);
  }

  /** Somebody looks again and says something else of a rep. */
  public Sending amended(Sending rep) {
    return sending(
        "rep.amended.v1",
        "{\"drive\":%d,\"outcome\":\"%s\",\"rep\":\"%s\"}"
            .formatted(1 + random.nextInt(3), one(OUTCOMES), rep.id()));
  }

  /** An event was a mistake. */
  public Sending withdrawn(Sending event) {
    return sending(
        "event.withdrawn.v1",
        "{\"event\":\"%s\",\"reason\":\"Logged twice by mistake.\"}".formatted(event.id()));
  }

  private String one(String[] of) {
    return of[random.nextInt(of.length)];
  }

  private int one(int[] of) {
    return of[random.nextInt(of.length)];
  }
}
