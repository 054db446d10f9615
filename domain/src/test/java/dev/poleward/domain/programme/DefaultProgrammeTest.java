package dev.poleward.domain.programme;

import static dev.poleward.domain.programme.Written.stageOf;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.programme.MovingOnRule.KOfN;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What the default programme covers. */
class DefaultProgrammeTest {

  private final Programme programme = DefaultProgramme.programme();

  private List<Stage> stagesBefore(int poles, LeadIn leadIn) {
    return programme.stages().stream()
        .filter(stage -> stage.ground().line().poles() == poles)
        .filter(stage -> stage.ground().leadIn() == leadIn)
        .toList();
  }

  private static Set<Double> anglesOf(List<Stage> stages) {
    return stages.stream()
        .flatMap(stage -> stage.rungs().stream())
        .map(rung -> rung.angle().degrees())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static void assertRoundTheClock(List<Stage> stages) {
    Set<Double> angles = anglesOf(stages);

    assertThat(angles).contains(0.0, 90.0, -90.0);
    assertThat(angles).anyMatch(angle -> angle > 120).anyMatch(angle -> angle < -120);
    assertThat(angles).allMatch(angle -> angles.contains(0.0 - angle));
  }

  @Test
  void threeAndFourPolesWithoutALeadInRoundTheClock() {
    assertThat(anglesOf(stagesBefore(3, LeadIn.NONE))).contains(0.0, 90.0, -90.0);
    assertRoundTheClock(stagesBefore(4, LeadIn.NONE));
  }

  @Test
  void aJumpBackChainedRoundTheClock() {
    List<Stage> jump = stagesBefore(4, LeadIn.JUMP);

    assertRoundTheClock(jump);
    assertThat(jump)
        .allSatisfy(
            stage -> assertThat(stage.backChainSteps()).containsExactly(BackChainStep.values()));
  }

  @Test
  void aTunnelStraightOnAndThenTurnedToAtLeast90OnBothSides() {
    Stage straight = stageOf(programme, "tunnel-straight");
    Stage turned = stageOf(programme, "tunnel-turned");

    assertThat(anglesOf(List.of(straight))).containsExactly(0.0);
    assertThat(turned.prerequisites()).containsExactly("tunnel-straight");
    assertThat(turned.entries()).isInstanceOf(Entries.Turned.class);
    assertThat(anglesOf(List.of(turned))).contains(90.0, -90.0);
    assertThat(turned.rungs().stream().filter(rung -> rung.angle().degrees() > 0)).hasSize(6);
  }

  /** Alongside and rear crosses with the dog on either side, distance, recall, send [C]. */
  @Test
  void theTunnelListsAllHandlingsAndPressureComesLast() {
    for (String id : List.of("tunnel-straight", "tunnel-turned")) {
      assertThat(stageOf(programme, id).handlings())
          .extracting(Handling::manoeuvre)
          .containsExactly(
              Manoeuvre.ALONGSIDE,
              Manoeuvre.ALONGSIDE,
              Manoeuvre.REAR_CROSS,
              Manoeuvre.REAR_CROSS,
              Manoeuvre.LATERAL_DISTANCE,
              Manoeuvre.LATERAL_DISTANCE,
              Manoeuvre.RECALL,
              Manoeuvre.SEND);
    }
    assertThat(stageOf(programme, "tunnel-pressure").prerequisites())
        .containsExactly("tunnel-turned");
  }

  @Test
  void sixAndTwelveAreProbesOfTwoInThreeStraightOn() {
    for (int poles : List.of(6, 12)) {
      assertThat(stagesBefore(poles, LeadIn.NONE))
          .singleElement()
          .satisfies(
              stage -> {
                assertThat(stage.terms().kind()).isEqualTo(StageKind.PROBE);
                assertThat(stage.terms().rule())
                    .isInstanceOfSatisfying(
                        KOfN.class,
                        rule -> assertThat(List.of(rule.k(), rule.n())).containsExactly(2, 3));
                assertThat(anglesOf(List.of(stage))).containsExactly(0.0);
              });
    }
  }

  @Test
  void insideAStageWhatIsMeasuredForTheDogDecides() {
    assertThat(programme.stages()).allMatch(stage -> stage.terms().order() == StageOrder.MEASURED);
  }

  /** So few verdicts that they can be had in months, whatever the number of drills. */
  @Test
  void itIsWalkable() {
    assertThat(programme.stages().stream().mapToInt(stage -> stage.pools().size()).sum())
        .isLessThanOrEqualTo(60);
    assertThat(programme.drills()).hasSizeLessThanOrEqualTo(250);
  }

  @Test
  void itsDocumentCouldBePublished() {
    assertThat(Written.sound(DefaultProgramme.document())).isEqualTo(programme);
    assertThat(Written.sound(DocumentWriting.of(programme))).isEqualTo(programme);
    assertThat(programme.cleanTarget()).isCloseTo(0.9, within(1e-12));
  }
}
