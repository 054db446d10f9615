package dev.poleward.domain.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.poleward.domain.layout.TurningTable.TurnedRung;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Turning the line in even steps. */
class TurningTableTest {

  private static final PoleLine FOUR = new PoleLine(4, 24 * FeetAndInches.INCH);

  /** Four poles at 24 in to 90 degrees, the last pole moving 6 or 12 in a time [D]. */
  @ParameterizedTest
  @CsvSource({"6, 4.776, 19, 38, 4.03", "12, 9.560, 10, 20, 3.96"})
  void fourPolesToARightAngle(
      double inches, double degreesEach, int rungs, int setups, double lastStep) {
    double each = FOUR.turnOfChord(inches * FeetAndInches.INCH);

    TurningTable table = TurningTable.of(FOUR, each, 90);

    assertThat(table.degreesEach()).isCloseTo(degreesEach, within(5e-4));
    assertThat(table.rungs()).hasSize(rungs);
    assertThat(table.setups()).isEqualTo(setups);
    assertThat(table.lastStep()).isCloseTo(lastStep, within(0.005));
    assertThat(table.rungs().getLast().degrees()).isEqualTo(90);
    assertThat(table.rungs().getFirst().lastPoleMoves())
        .isCloseTo(inches * FeetAndInches.INCH, within(1e-9));
  }

  /** 2.59 m at 45 degrees and 3.66 m at 90 from side to side [D]. */
  @Test
  void theSwingFromSideToSideGrows() {
    TurningTable table = TurningTable.of(FOUR, 45, 90);

    assertThat(table.rungs().stream().map(TurnedRung::degrees)).containsExactly(45.0, 90.0);
    assertThat(table.rungs().getFirst().swing()).isCloseTo(2.59, within(0.005));
    assertThat(table.rungs().getLast().swing()).isCloseTo(3.66, within(0.005));
  }

  /** Straight on, 45 one way, 45 the other, 90 one way, 90 the other; chords by arithmetic [D]. */
  @Test
  void whatIsCarriedIsEveryMoveOfTheLastPole() {
    double half = FOUR.longestChord();
    double expected =
        half
            * (Math.sin(Math.toRadians(22.5))
                + Math.sin(Math.toRadians(45))
                + Math.sin(Math.toRadians(67.5))
                + Math.sin(Math.toRadians(90)));

    assertThat(TurningTable.of(FOUR, 45, 90).carried(FOUR)).isCloseTo(expected, within(1e-9));
  }

  @Test
  void aStepThatDividesTheWholeLeavesNoRest() {
    TurningTable table = TurningTable.of(FOUR, 0.1, 0.3);

    assertThat(table.rungs()).hasSize(3);
    assertThat(table.lastStep()).isCloseTo(0.1, within(1e-9));
  }

  @Test
  void tooManyRungsAreRefused() {
    assertThatThrownBy(() -> TurningTable.of(FOUR, 0.1, 90))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> TurningTable.of(FOUR, 1, 0))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
