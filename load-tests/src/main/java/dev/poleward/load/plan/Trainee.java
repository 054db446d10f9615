package dev.poleward.load.plan;

import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.event.Reward;
import dev.poleward.domain.event.RewardKind;
import dev.poleward.domain.event.RewardPlace;
import dev.poleward.domain.judgement.ClubRetention;
import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.RungJudgement;
import dev.poleward.domain.judgement.StandingReading;
import dev.poleward.domain.learner.Expected;
import dev.poleward.domain.learner.SimulatedDog;
import dev.poleward.domain.learner.Temper;
import dev.poleward.domain.outlook.Curriculum;
import dev.poleward.domain.outlook.RecordedDog;
import dev.poleward.domain.programme.DrillOfStage;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.record.PlacedRep;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.SplittableRandom;

/**
 * A simulated dog with its record. Its true skill stays its own: a trainer sees what came of its
 * reps, and what the judgement makes of them.
 */
public final class Trainee {

  private static final Instant BEGUN = Instant.parse("2026-01-06T18:00:00Z");
  private static final Duration BETWEEN_REPS = Duration.ofSeconds(45);

  /** For a clean rep. Alike for every trainer. */
  private static final List<Reward> PAID =
      List.of(new Reward(RewardKind.FOOD, RewardPlace.EXIT, 2, null));

  private final RecordedDog dog;
  private final StandingReading reading;
  private Instant now = BEGUN;
  private int clean;
  private int sessions;

  /**
   * A dog before its first session.
   *
   * @param luck what chance decides by
   */
  public Trainee(Temper temper, Programme programme, long luck) {
    this.dog = new RecordedDog("dog", new SimulatedDog(temper), new SplittableRandom(luck));
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
    PlacedRep rep = dog.run(drill.drill(), now, "s-" + sessions, PAID);
    boolean isClean = rep.outcome() == Outcome.CLEAN;
    reading.read(rep);
    clean += isClean ? 1 : 0;
    return isClean;
  }

  /** The dog's true chance of a clean rep, were it fresh. No trainer may know. */
  double chanceWhenFresh(DrillOfStage drill) {
    SimulatedDog twin = dog.dog().copy();
    twin.restUntil(now);
    return twin.chanceOfClean(Curriculum.task(drill.drill()));
  }

  /** The same for its next rep, in the mood that it will be in. */
  double chance(DrillOfStage drill) {
    Expected next =
        dog.dog()
            .copy()
            .observed(Curriculum.task(drill.drill()), Outcome.CLEAN, true, now.plus(BETWEEN_REPS));
    return next.entry() * next.through();
  }

  boolean isDrill(DrillOfStage drill) {
    return reading.programme().drills().contains(drill);
  }

  RungJudgement judgement(DrillOfStage drill) {
    return reading.judgement(drill);
  }

  /** Where it stands in the programme. */
  public DogStanding standing() {
    return reading.standing(now, ClubRetention.UNKNOWN);
  }

  /** Its record, which goes on; ascending by time. */
  public List<PlacedRep> reps() {
    return dog.reps();
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
}
