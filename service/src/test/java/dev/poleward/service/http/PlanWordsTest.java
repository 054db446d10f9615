package dev.poleward.service.http;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.judgement.ClubRetention;
import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.StandingReading;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.mastery.Estimate;
import dev.poleward.domain.planning.PlanBlock;
import dev.poleward.domain.planning.SessionPlan;
import dev.poleward.domain.programme.DefaultProgramme;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.DrillMatch;
import dev.poleward.domain.programme.DrillOfStage;
import dev.poleward.domain.programme.Rung;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlanWordsTest {

  private static final String STAGE = "four-bare";
  private static final Instant BEGUN = Instant.parse("2026-05-04T18:00:00Z");

  /** On four poles the dog passed all that is no sharper than 60 degrees. */
  private static DogStanding standing() {
    StandingReading reading = StandingReading.begun(DefaultProgramme.programme(), STAGE);
    Instant time = BEGUN;
    for (int round = 0; round < 20; round++) {
      for (DrillOfStage drill : reading.programme().drills()) {
        if (drill.stage().equals(STAGE) && drill.drill().rung().size() <= 60) {
          time = time.plus(Duration.ofMinutes(1));
          reading.read(new DrillMatch.Counts(List.of(drill)), true, time);
        }
      }
    }
    return reading.standing(time, ClubRetention.UNKNOWN);
  }

  private static String wordsFrom(double degrees) {
    DrillOfStage straight =
        DefaultProgramme.programme().drills().stream()
            .filter(each -> each.stage().equals(STAGE))
            .findFirst()
            .orElseThrow();
    Drill drill =
        new Drill(
            straight.drill().poles(),
            straight.drill().runUp(),
            new Rung(new EntryAngle(degrees)),
            straight.drill().handling());
    PlanBlock block =
        new PlanBlock(
            new DrillOfStage(STAGE, drill),
            2,
            PlanBlock.Purpose.WORK,
            new Estimate(0.78, 0.6, 0.9),
            null);
    return new PlanWords(standing()).reasons(new SessionPlan(List.of(block))).getFirst();
  }

  @Test
  void aSteppingStoneSaysWhereItLeads() {
    assertThat(wordsFrom(72.5))
        .isEqualTo(
            "On the way to 90° on the pole side (3:00): from here about 78% can be expected clean.");
    assertThat(wordsFrom(-75)).startsWith("On the way to 90° on the gap side (9:00)");
  }

  @Test
  void aStoneJustShortOfARungCountsThere() {
    assertThat(wordsFrom(87.5))
        .startsWith("On the way to 90° on the pole side (3:00), so near that it counts there:");
  }

  @Test
  void aStoneOnARungThatIsPassedIsNoTestOfIt() {
    assertThat(wordsFrom(60)).startsWith("On the way to 90° on the pole side (3:00)");
  }

  @Test
  void aRungThatIsOpenIsTested() {
    assertThat(wordsFrom(90)).doesNotContain("On the way").contains("about 78%");
  }
}
