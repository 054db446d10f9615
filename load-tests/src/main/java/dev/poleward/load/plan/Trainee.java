package dev.poleward.load.plan;

import dev.poleward.domain.event.Help;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.event.RepDetails;
import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.RungJudgement;
import dev.poleward.domain.judgement.StandingReading;
import dev.poleward.domain.layout.Approach;
import dev.poleward.domain.layout.Setup;
import dev.poleward.domain.learner.Attempt;
import dev.poleward.domain.learner.SimulatedDog;
import dev.poleward.domain.learner.Task;
import dev.poleward.domain.learner.Temper;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.DrillOfStage;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.record.Moment;
import dev.poleward.domain.record.PlacedRep;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * A simulated dog with its record. Its true skill stays its own: a trainer sees what came of its
 * reps, and what the judgement makes of them.
 */
public final class Trainee {

  private static final Instant BEGUN = Instant.parse("2026-01-06T18:00:00Z");
  private static final Duration BETWEEN_REPS = Duration.ofSeconds(45);

  /** Pieces for a clean rep; a miss is not rewarded. Alike for every trainer. */
  private static final int PIECES = 2;

  private final SimulatedDog dog;
  private final SplittableRandom luck;
  private final StandingReading reading;
  private final List<PlacedRep> reps = new ArrayList<>();
  private Instant now = BEGUN;
  private int clean;
  private int sessions;

  /**
   * A dog before its first session.
   *
   * @param luck what chance decides by
   */
  public Trainee(Temper temper, Programme programme, long luck) {
    this.dog = new SimulatedDog(temper);
    this.luck = new SplittableRandom(luck);
    this.reading = StandingReading.begun(programme, null);
  }

  /** Twice a week: three days on, then four. */
  public void nextSession() {
    now =
        BEGUN
            .plus(Duration.ofDays(7L * (sessions / 2)))
            .plus(sessions % 2 == 0 ? Duration.ZERO : Duration.ofDays(3));
    sessions++;
  }

  boolean run(DrillOfStage drill) {
    now = now.plus(BETWEEN_REPS);
    Attempt attempt = dog.attempt(task(drill.drill()), now, luck);
    boolean isClean = attempt.outcome() == Outcome.CLEAN;
    dog.rewarded(isClean ? PIECES : 0);
    PlacedRep rep = placed(drill.drill(), attempt);
    reps.add(rep);
    reading.read(rep);
    clean += isClean ? 1 : 0;
    return isClean;
  }

  boolean isDrill(DrillOfStage drill) {
    return reading.programme().drills().contains(drill);
  }

  RungJudgement judgement(DrillOfStage drill) {
    return reading.judgement(drill);
  }

  /** Where it stands in the programme. */
  public DogStanding standing() {
    return reading.standing(now);
  }

  /** Its record, which goes on; ascending by time. */
  public List<PlacedRep> reps() {
    return reps;
  }

  Instant now() {
    return now;
  }

  int sessions() {
    return sessions;
  }

  int clean() {
    return clean;
  }

  private static Task task(Drill drill) {
    return new Task(
        drill.rung().angle(),
        drill.poles(),
        drill.runUp().leadIn(),
        drill.runUp().step(),
        drill.handling().manoeuvre(),
        drill.handling().dogSide(),
        Help.NONE);
  }

  private PlacedRep placed(Drill drill, Attempt attempt) {
    return new PlacedRep(
        new Moment(now, "e"),
        "r",
        "s-" + sessions,
        "dog",
        drill.handling().manoeuvre(),
        attempt.outcome(),
        new RepDetails(
            drill.handling().dogSide(),
            drill.runUp().step(),
            drill.runUp().turn(),
            null,
            null,
            null,
            null,
            null,
            null,
            attempt.atPole(),
            null,
            null,
            null,
            null,
            attempt.drive(),
            null),
        drill.rung().angle(),
        new Setup(
            drill.poles(),
            0.6,
            drill.runUp().leadIn(),
            null,
            new Approach(drill.rung().angle(), null),
            null,
            null,
            null),
        null,
        null,
        List.of(),
        List.of());
  }
}
