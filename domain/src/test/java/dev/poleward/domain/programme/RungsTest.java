package dev.poleward.domain.programme;

import static dev.poleward.domain.programme.Written.ALONGSIDE;
import static dev.poleward.domain.programme.Written.onlyStage;
import static dev.poleward.domain.programme.Written.stageWith;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.layout.PoleLine;
import dev.poleward.domain.programme.Entries.Turned;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rungs of a stage, one after the other. */
class RungsTest {

  private static final double INCH = 0.0254;
  private static final PoleLine FOUR = new PoleLine(4, 24 * INCH);
  private static final long SEED = 20_260_504;

  private static Turned turned(double start, double end, TurnStep step) {
    return new Turned(start, end, step, EntrySide.BOTH);
  }

  /** Four poles at 24 inches, turned to 90 degrees by so many inches of the last pole [D]. */
  @ParameterizedTest
  @CsvSource({"6, 4.776, 19, 38, 4.03", "12, 9.560, 10, 20, 3.96"})
  void turningByAChordOfTheLastPole(
      double inches, double degreesEach, int perSide, int setups, double lastStep) {
    Turned entries = turned(0, 90, new TurnStep.Chord(inches * INCH));

    List<Rung> turnedRungs = entries.rungs(FOUR).stream().filter(each -> each.size() > 0).toList();
    List<Double> sizes = entries.sizes(FOUR);

    assertThat(sizes.get(1)).isCloseTo(degreesEach, within(5e-4));
    assertThat(sizes).hasSize(perSide + 1);
    assertThat(entries.rungsPerSide(FOUR)).isEqualTo(perSide);
    assertThat(turnedRungs).hasSize(setups);
    assertThat(sizes.getLast()).isEqualTo(90);
    assertThat(sizes.getLast() - sizes.get(sizes.size() - 2)).isCloseTo(lastStep, within(5e-3));
  }

  @Test
  void theLineIsTurnedToEitherSideBeforeItIsTurnedFurther() {
    assertThat(turned(0, 20, new TurnStep.Degrees(8)).rungs(FOUR))
        .extracting(each -> each.angle().degrees())
        .containsExactly(0.0, 8.0, -8.0, 16.0, -16.0, 20.0, -20.0);
  }

  @Test
  void aStepThatFitsLeavesNoSliver() {
    assertThat(turned(15, 90, new TurnStep.Degrees(15)).sizes(FOUR))
        .containsExactly(15.0, 30.0, 45.0, 60.0, 75.0, 90.0);
    assertThat(turned(0, 0.9, new TurnStep.Degrees(0.3)).sizes(FOUR)).hasSize(4);
  }

  @Test
  void oneSideAloneMayBeAskedFor() {
    Turned gap = new Turned(0, 30, new TurnStep.Degrees(15), EntrySide.GAP);

    assertThat(gap.rungs(FOUR))
        .extracting(each -> each.angle().degrees())
        .containsExactly(0.0, -15.0, -30.0);
  }

  @Test
  void clockPositionsComeByTheSizeOfTheAngleWhateverTheOrderOfWriting() {
    Stage stage =
        onlyStage(
            stageWith("s", "none", "{'clocks':['9:00','1:30','12:00','10:30','3:00']}", ALONGSIDE));

    assertThat(stage.rungs())
        .extracting(each -> each.angle().degrees())
        .containsExactly(0.0, 45.0, -45.0, 90.0, -90.0);
  }

  @Test
  void aHandlingEndsWhereItStopsMakingSense() {
    Stage stage =
        onlyStage(
            stageWith(
                "s",
                "tunnel",
                "{'rungs':{'end':90,'stepDegrees':45}}",
                "[{'manoeuvre':'send'},{'manoeuvre':'recall','untilAngle':45}]"));

    assertThat(stage.drills())
        .extracting(
            each -> each.rung().angle().degrees() + " " + Part.written(each.handling().manoeuvre()))
        .containsExactly(
            "0.0 send",
            "0.0 recall",
            "45.0 send",
            "45.0 recall",
            "-45.0 send",
            "-45.0 recall",
            "90.0 send",
            "-90.0 send");
  }

  @Test
  void aJumpIsAddedBackwardsAndTheWrapsToEitherSideAreJudgedTogether() {
    Stage stage =
        onlyStage(
            stageWith(
                "s",
                "jump",
                "{'clocks':['1:00']}",
                ALONGSIDE,
                "'backChainSteps':['straight','wrap','poles-only']"));

    assertThat(stage.pools())
        .extracting(pool -> pool.step() + " " + pool.drills().size())
        .containsExactly("POLES_ONLY 1", "WRAP 2", "STRAIGHT 1");
  }

  /** Whatever the line and the steps, sizes ascend to the end and both sides come in turns. */
  @Test
  void bothSidesOfAnAngleComeBeforeTheNextOne() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int i = 0; i < 2_000; i++) {
      PoleLine line = new PoleLine(2 + random.nextInt(11), random.nextDouble(0.4, 1));
      double start = random.nextBoolean() ? 0 : random.nextDouble(0, 90);
      double end = start + random.nextDouble(0, 179 - start);
      TurnStep step =
          random.nextBoolean()
              ? new TurnStep.Degrees(random.nextDouble(0.5, 90))
              : new TurnStep.Chord(random.nextDouble(0.1, line.longestChord()));
      Turned entries = turned(start, end, step);

      List<Rung> rungs = entries.rungs(line);

      assertThat(rungs).as("%s on %s", entries, line).isSorted().doesNotHaveDuplicates();
      assertThat(rungs.getFirst().size()).isEqualTo(end - start > 1e-6 ? start : end);
      assertThat(rungs.getLast().size()).isEqualTo(end);
      assertThat(rungs.stream().filter(each -> each.side() == EntrySide.POLE).count())
          .isEqualTo((long) entries.rungsPerSide(line));
      assertInTurns(rungs);
    }
  }

  private static void assertInTurns(List<Rung> rungs) {
    Set<EntrySide> passed = new HashSet<>();
    double size = -1;
    for (Rung rung : rungs) {
      if (rung.size() != size) {
        assertThat(passed).isNotEqualTo(Set.of(EntrySide.POLE)).isNotEqualTo(Set.of(EntrySide.GAP));
        passed.clear();
        size = rung.size();
      }
      passed.add(rung.side());
    }
    assertThat(passed).isNotEqualTo(Set.of(EntrySide.POLE)).isNotEqualTo(Set.of(EntrySide.GAP));
  }
}
