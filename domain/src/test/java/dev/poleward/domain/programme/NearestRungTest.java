package dev.poleward.domain.programme;

import static dev.poleward.domain.programme.LaidOut.run;
import static dev.poleward.domain.programme.LaidOut.setup;
import static dev.poleward.domain.programme.Written.programmeOf;
import static dev.poleward.domain.programme.Written.sound;
import static dev.poleward.domain.programme.Written.stageWith;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.programme.DrillMatch.Counts;
import dev.poleward.domain.programme.DrillMatch.Helped;
import dev.poleward.domain.programme.DrillMatch.NoDrill;
import dev.poleward.domain.programme.DrillMatch.Voided;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which rung an approach belongs to: one rule for stages and for drills. */
class NearestRungTest {

  /** Straight on, then every 10 degrees on both sides; a tolerance of 5, so that rungs meet. */
  private final Stage both = stage("{'end':60,'stepDegrees':10}");

  /** From 3 to 23 degrees on the pole side alone. */
  private final Stage pole = stage("{'start':3,'end':23,'stepDegrees':10,'sides':'pole'}");

  private static Stage stage(String rungs) {
    return programme(rungs).stages().getFirst();
  }

  private static Programme programme(String rungs) {
    return sound(
        programmeOf(
            "",
            stageWith("only", "none", "{'rungs':" + rungs + "}", "[{'manoeuvre':'alongside'}]")));
  }

  private static Optional<Double> rungOf(Stage stage, double degrees) {
    return stage.rungOf(new EntryAngle(degrees)).map(rung -> rung.angle().degrees());
  }

  @ParameterizedTest
  @CsvSource({
    // Straight on takes both sides.
    "0, 0",
    "4.9, 0",
    "-4.9, 0",
    // Nearest on its own side.
    "5.1, 10",
    "-5.1, -10",
    "14, 10",
    "-26, -30",
    // Half way the smaller angle wins, on either side.
    "5, 0",
    "-5, 0",
    "15, 10",
    "-55, -50"
  })
  void theNearestOnTheSameSideWinsAndOfTwoTheSmaller(double degrees, double rung) {
    assertThat(rungOf(both, degrees)).contains(rung);
  }

  @Test
  void theToleranceHoldsAtItsBorderAndNotBeyond() {
    assertThat(rungOf(both, 65)).contains(60.0);
    assertThat(rungOf(both, 65.00001)).isEmpty();
    assertThat(rungOf(both, -65)).contains(-60.0);
    assertThat(rungOf(both, -65.00001)).isEmpty();
  }

  /** However near it is: the two sides are never pooled, and straight on is no side's. */
  @Test
  void anApproachFromTheOtherSideBelongsToNone() {
    assertThat(rungOf(pole, 1)).contains(3.0);
    assertThat(rungOf(pole, -1)).isEmpty();
    assertThat(rungOf(pole, 0)).isEmpty();
  }

  /** Reps are put to drills by the same rule: any angle, any grid. */
  @Test
  void drillsAndStagesAgree() {
    SplittableRandom random = new SplittableRandom(20_261_129);
    for (String rungs :
        List.of(
            "{'end':60,'stepDegrees':10}",
            "{'end':41,'stepDegrees':7}",
            "{'start':3,'end':23,'stepDegrees':10,'sides':'pole'}")) {
      Programme programme = programme(rungs);
      DrillMatching matching = DrillMatching.of(programme);
      for (int i = 0; i < 500; i++) {
        double degrees = random.nextInt(-700, 701) / 10.0;
        Optional<Rung> matched =
            switch (matching.match(run(setup(4, LeadIn.NONE, degrees), rep -> rep))) {
              case Counts(List<DrillOfStage> drills) ->
                  Optional.of(drills.getFirst().drill().rung());
              case Helped _, Voided _, NoDrill _ -> Optional.empty();
            };
        assertThat(programme.stages().getFirst().rungOf(new EntryAngle(degrees)))
            .as("%s from %s", rungs, degrees)
            .isEqualTo(matched);
      }
    }
  }
}
