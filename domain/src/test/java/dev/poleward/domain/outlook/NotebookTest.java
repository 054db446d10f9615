package dev.poleward.domain.outlook;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.judgement.ClubRetention;
import dev.poleward.domain.judgement.HandledRep;
import dev.poleward.domain.judgement.RungJudgement;
import dev.poleward.domain.judgement.SlipWatch;
import dev.poleward.domain.judgement.StandingReading;
import dev.poleward.domain.judgement.Verdict;
import dev.poleward.domain.learner.Population;
import dev.poleward.domain.learner.Temper;
import dev.poleward.domain.outlook.Curriculum.Exercise;
import dev.poleward.domain.outlook.Curriculum.Pool;
import dev.poleward.domain.programme.DefaultProgramme;
import dev.poleward.domain.programme.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class NotebookTest {

  @Test
  void probesAndPressureAreNotOnTheWay() {
    assertThat(Curriculum.of(Walkable.PROGRAMME).stages())
        .extracting(Stage::id)
        .containsExactly("three", "four", "tunnel");
    assertThat(Curriculum.of(DefaultProgramme.programme()).stages())
        .extracting(Stage::id)
        .doesNotContain("six-probe", "twelve-probe", "tunnel-pressure");
  }

  /** Poles alone from where the jump will be have been shown without a lead-in. */
  @Test
  void aRepCountsWhereverItsDrillIsAskedFor() {
    Curriculum curriculum = Curriculum.of(DefaultProgramme.programme());
    for (Pool pool : curriculum.pools()) {
      for (Exercise exercise : pool.drills()) {
        assertThat(exercise.countsFor())
            .anyMatch(place -> curriculum.pools().get(place.pool()).equals(pool));
      }
    }
    assertThat(curriculum.pools())
        .anyMatch(pool -> pool.drills().stream().anyMatch(each -> each.countsFor().size() > 1));
  }

  /** The trainer's notes and the service's judgement are one and the same, but for slips. */
  @Test
  void passesWhatTheJudgementMovesOnFrom() {
    Curriculum curriculum = Curriculum.of(Walkable.PROGRAMME);
    Pool pool = curriculum.pools().getFirst();
    Stage stage = curriculum.stages().get(pool.stage());
    SplittableRandom random = new SplittableRandom(9);
    int passed = 0;
    for (int dog = 0; dog < 300; dog++) {
      Notebook notebook = Notebook.begun(curriculum);
      List<HandledRep> reps = new ArrayList<>();
      boolean movedOn = false;
      for (int rep = 0; rep < 25 && !movedOn; rep++) {
        Exercise exercise = pool.drills().get(random.nextInt(pool.drills().size()));
        boolean clean = random.nextDouble() < 0.75;
        notebook.read(exercise, clean);
        reps.add(new HandledRep(exercise.drill().handling(), clean));
        movedOn =
            RungJudgement.of(pool.handlings(), stage.terms().rule(), SlipWatch.USUAL, reps)
                    .verdict()
                instanceof Verdict.MoveOn;
        assertThat(notebook.isPassed(0)).isEqualTo(movedOn);
      }
      passed += movedOn ? 1 : 0;
    }
    assertThat(passed).isBetween(50, 299);
  }

  @Test
  void goesOnFromWhereADogStands() {
    for (int seed = 0; seed < 20; seed++) {
      Temper temper = Population.CLUB.draw(new SplittableRandom(seed));
      Schooling schooling = Walkable.after(8, temper, seed);
      Notebook notes = schooling.notebook();
      Notebook anew =
          Notebook.of(
              notes.curriculum(),
              Walkable.standing(schooling, null).standing(Walkable.BEGIN, ClubRetention.UNKNOWN));

      SplittableRandom random = new SplittableRandom(seed);
      for (int rep = 0; rep < 40; rep++) {
        for (int pool = 0; pool < notes.curriculum().pools().size(); pool++) {
          assertThat(anew.isPassed(pool)).isEqualTo(notes.isPassed(pool));
        }
        Pool pool = notes.curriculum().pools().get(random.nextInt(12));
        Exercise exercise = pool.drills().getFirst();
        boolean clean = random.nextDouble() < 0.9;
        anew.read(exercise, clean);
        notes.read(exercise, clean);
      }
    }
  }

  @Test
  void whatCameBeforeTheStartCountsAsDone() {
    Notebook notebook =
        Notebook.of(
            Curriculum.of(Walkable.PROGRAMME),
            StandingReading.begun(Walkable.PROGRAMME, "tunnel")
                .standing(Walkable.BEGIN, ClubRetention.UNKNOWN));

    assertThat(notebook.stage()).isEqualTo(2);
    assertThat(notebook.isFinished()).isFalse();
  }
}
