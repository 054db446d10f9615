package dev.poleward.domain.judgement;

import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.DrillOfStage;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.programme.RungPool;
import dev.poleward.domain.programme.Stage;
import dev.poleward.domain.record.PlacedRep;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** What a dog runs, a minute apart, until told that days pass. */
final class Course {

  static final Instant BEGUN = Instant.parse("2026-03-02T17:00:00Z");

  private final Programme programme;
  private final List<PlacedRep> reps = new ArrayList<>();
  private Instant now = BEGUN;

  Course(Programme programme) {
    this.programme = programme;
  }

  /** So many reps of a pool, its drills in turn. */
  Course run(String stage, int pool, int count, boolean clean) {
    List<Drill> drills = pool(stage, pool).drills();
    for (int i = 0; i < count; i++) {
      run(drills.get(i % drills.size()), clean);
    }
    return this;
  }

  Course run(Drill drill, boolean clean) {
    reps.add(Ran.of(drill, clean, now));
    now = now.plus(Duration.ofMinutes(1));
    return this;
  }

  /** Every pool of a stage until it is moved on from. */
  Course learn(String stage) {
    for (int pool = 0; pool < stage(stage).pools().size(); pool++) {
      run(stage, pool, 20, true);
    }
    return this;
  }

  Course daysPass(int days) {
    now = now.plus(Duration.ofDays(days));
    return this;
  }

  Instant now() {
    return now;
  }

  List<PlacedRep> reps() {
    return reps;
  }

  Stage stage(String id) {
    return programme.stage(id).orElseThrow();
  }

  RungPool pool(String stage, int pool) {
    return stage(stage).pools().get(pool);
  }

  DrillOfStage drill(String stage, int pool, int drill) {
    return new DrillOfStage(stage, pool(stage, pool).drills().get(drill));
  }

  /** Where the dog stands now. */
  DogStanding standing() {
    return reading().standing(now, ClubRetention.UNKNOWN);
  }

  StandingReading reading() {
    StandingReading reading = StandingReading.begun(programme, null);
    reps.forEach(reading::read);
    return reading;
  }
}
