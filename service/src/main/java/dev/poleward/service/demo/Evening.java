package dev.poleward.service.demo;

import static dev.poleward.service.demo.Telling.data;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.event.Help;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.learner.Attempt;
import dev.poleward.domain.learner.Task;
import java.time.OffsetDateTime;
import java.util.Objects;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/** One session of the season: dogs take turns, and what happens is told. For one thread. */
final class Evening {

  private static final double SPACING = 0.6;
  private static final double JUMP_DISTANCE = 5;
  private static final double TUNNEL_DISTANCE = 4.7;
  private static final double JUMP_HEIGHT = 0.3;
  private static final int SECONDS_TO_MOVE = 75;
  private static final int MISSES_TO_HELP = 2;

  /** One rep in so many is nobody's fault but a pole's or the handler's. */
  private static final int VOID_ONE_IN = 60;

  private final Telling telling;
  private final SplittableRandom chance;
  private final Mishaps mishaps;
  private final String session;
  private final String source;
  private final @Nullable Gate gate;
  private OffsetDateTime time;
  private @Nullable ObjectNode standing;

  private Evening(
      Telling telling,
      SplittableRandom chance,
      Mishaps mishaps,
      String session,
      String source,
      @Nullable Gate gate,
      OffsetDateTime time) {
    this.telling = telling;
    this.chance = chance;
    this.mishaps = mishaps;
    this.session = session;
    this.source = source;
    this.gate = gate;
    this.time = time;
  }

  /**
   * Opens a session.
   *
   * @param heldBy the class whose session it is; null for a handler's own
   * @param source what tells of it and of what stands
   * @param gate what times it; null where nothing does
   */
  static Evening opened(
      Telling telling,
      SplittableRandom chance,
      Mishaps mishaps,
      String session,
      @Nullable String heldBy,
      String source,
      @Nullable Gate gate,
      OffsetDateTime time) {
    ObjectNode data =
        data()
            .put("session", session)
            .put("ground", "lower-field")
            .put("temperature", 9 + chance.nextInt(14))
            .put("humidity", 45 + chance.nextInt(40))
            .put("surface", "grass");
    if (heldBy != null) {
      data.put("class", heldBy);
    }
    telling.tell(source, "session.opened.v1", time, data);
    if (gate != null) {
      gate.switchOn(time);
    }
    return new Evening(telling, chance, mishaps, session, source, gate, time);
  }

  /** Says whether a dog of the class is there. */
  void attends(DogInTraining dog, boolean present) {
    telling.tell(
        source,
        "session.attended.v1",
        time.plusSeconds(30),
        data().put("session", session).put("dog", dog.dog().id()).put("present", present));
  }

  /** A dog's turn: it begins and ends with something that it can do. */
  void turn(DogInTraining dog, int reps, boolean probe) {
    time = time.plusMinutes(2);
    run(dog, dog.course().easy());
    int missesRunning = 0;
    for (int rep = 2; rep < reps; rep++) {
      Task task = dog.course().next();
      if (missesRunning >= MISSES_TO_HELP) {
        // What was helped says nothing about the rung.
        run(dog, task.helped(rep % 2 == 0 ? Help.GUIDE : Help.CUE));
        missesRunning = 0;
        continue;
      }
      Attempt attempt = run(dog, task);
      if (attempt == null) {
        continue;
      }
      dog.course().ran(attempt.entryMade());
      missesRunning = attempt.entryMade() ? 0 : missesRunning + 1;
    }
    if (!dog.dog().isYoung()) {
      run(dog, dog.course().ahead());
    }
    run(dog, dog.course().easy());
    if (probe) {
      run(dog, Course.probe());
    }
  }

  /** Closes it, and says when. */
  OffsetDateTime close() {
    time = time.plusMinutes(3);
    telling.tell(source, "session.closed.v1", time, data().put("session", session));
    return time;
  }

  /** One rep; null when it was void, which the dog learns nothing from. */
  private @Nullable Attempt run(DogInTraining dog, Task task) {
    time = time.plusSeconds(25 + chance.nextInt(30));
    stand(task, dog);
    ObjectNode rep = rep(dog, task);
    if (chance.nextInt(VOID_ONE_IN) == 0) {
      rep.put("outcome", "void").put("note", "A pole fell.");
      mishaps.log(telling, dog, rep, time);
      return null;
    }
    Attempt attempt = dog.learner().attempt(task, time.toInstant(), dog.luck());
    rep.put("outcome", Words.of(attempt.outcome())).put("drive", attempt.drive());
    if (attempt.atPole() != null) {
      rep.put("atPole", attempt.atPole());
    }
    int pieces = RewardPlan.pay(rep, attempt, dog.course(), chance);
    dog.learner().rewarded(pieces);
    if (gate != null && attempt.seconds() != null) {
      gate.time(attempt.seconds(), time);
    }
    mishaps.log(telling, dog, rep, time);
    return attempt;
  }

  private void stand(Task task, DogInTraining dog) {
    ObjectNode wanted = setup(task, dog);
    if (Objects.equals(wanted, standing)) {
      return;
    }
    time = time.plusSeconds(SECONDS_TO_MOVE);
    ObjectNode data = data().put("session", session);
    data.set("setup", wanted);
    telling.tell(source, "setup.changed.v1", time, data);
    standing = wanted;
    time = time.plusSeconds(20);
  }

  private static ObjectNode setup(Task task, DogInTraining dog) {
    ObjectNode setup =
        data()
            .put("poles", task.poles())
            .put("spacing", SPACING)
            .put("leadIn", Words.of(task.leadIn()));
    switch (task.leadIn()) {
      case NONE -> {
        // Nothing is moved between clock positions: the rep says where the dog started.
      }
      case JUMP -> {
        setup.put("leadInDistance", JUMP_DISTANCE).put("jumpHeight", JUMP_HEIGHT);
        setup.put("clock", task.angle().clock().orElseThrow().toString());
      }
      case TUNNEL ->
          setup.put("leadInDistance", TUNNEL_DISTANCE).put("angle", task.angle().degrees());
    }
    if (dog.dog().isYoung()) {
      setup.putArray("aids").add("guide wires");
    }
    return setup;
  }

  private ObjectNode rep(DogInTraining dog, Task task) {
    ObjectNode rep =
        data()
            .put("session", session)
            .put("dog", dog.dog().id())
            .put("handler", dog.dog().handler())
            .put("manoeuvre", Words.of(task.manoeuvre()));
    if (task.dogSide() != null) {
      rep.put("dogSide", Words.of(task.dogSide()));
    }
    if (task.leadIn() == LeadIn.NONE) {
      rep.put("clock", task.angle().clock().orElseThrow().toString());
    }
    if (task.backChainStep() != null) {
      rep.put("backChainStep", Words.of(task.backChainStep()));
    }
    if (task.backChainStep() == BackChainStep.WRAP) {
      rep.put("jumpTurn", chance.nextBoolean() ? "left" : "right");
    }
    if (task.help() != Help.NONE) {
      rep.put("help", Words.of(task.help()));
    }
    switch (task.manoeuvre()) {
      case LATERAL_DISTANCE -> rep.put("lateralDistance", 2 + chance.nextInt(3));
      case SEND -> rep.put("handlerAt", "at the lead-in");
      case REAR_CROSS, FRONT_CROSS, BLIND_CROSS -> rep.put("crossAt", "entry");
      case ALONGSIDE, RECALL, PRESSURE -> {
        // Nothing more to say of it.
      }
    }
    return rep;
  }
}
