package dev.poleward.domain.running;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.poleward.domain.layout.Approach;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.layout.Moves;
import dev.poleward.domain.layout.Pieces;
import dev.poleward.domain.layout.Setup;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Metres carried, by arithmetic [D]. */
class SwungPolesTest {

  private final Carrying carrying = new SwungPoles();

  private static Setup setup(int poles, LeadIn leadIn, double distance, double angle) {
    return new Setup(
        poles, 0.6, leadIn, distance, new Approach(new EntryAngle(angle), null), null, null, null);
  }

  @Test
  void theLineSwingsAboutPoleOneWhereThatIsLessThanCarryingTheLeadIn() {
    // Poles 2 to 4 on chords of 0.6, 1.2 and 1.8 times 2 sin 15 degrees; the tunnel 5 times that.
    assertThat(carrying.metres(setup(4, LeadIn.TUNNEL, 5, 0), setup(4, LeadIn.TUNNEL, 5, 30)))
        .isCloseTo(3.6 * 2 * Math.sin(Math.toRadians(15)), within(1e-9));
    // Twelve poles are 39.6 metres of radius in all, and the tunnel is carried.
    assertThat(carrying.metres(setup(12, LeadIn.TUNNEL, 5, -15), setup(12, LeadIn.TUNNEL, 5, 15)))
        .isCloseTo(5 * 2 * Math.sin(Math.toRadians(15)), within(1e-9));
  }

  @Test
  void whatIsNotNeededGoesToPoleOneAndComesFromThere() {
    assertThat(carrying.metres(setup(4, LeadIn.TUNNEL, 5, 0), setup(6, LeadIn.TUNNEL, 5, 0)))
        .isCloseTo(2.4 + 3.0, within(1e-9));
    // A jump is two wings, 1.2 apart.
    double wings = 2 * Math.hypot(6, 0.6);
    assertThat(carrying.metres(setup(4, LeadIn.TUNNEL, 5, 0), setup(4, LeadIn.JUMP, 6, 0)))
        .isCloseTo(5 + wings, within(1e-9));
    assertThat(carrying.metres(null, setup(4, LeadIn.JUMP, 6, 90)))
        .isCloseTo(3.6 + wings, within(1e-9));
    assertThat(carrying.metres(setup(4, LeadIn.TUNNEL, 5, 0), setup(4, LeadIn.TUNNEL, 4, 0)))
        .isCloseTo(1, within(1e-9));
  }

  @Test
  void thereAndBackAreAlikeAndNothingIsNothing() {
    Setup one = setup(4, LeadIn.TUNNEL, 5, 45);
    Setup other = setup(6, LeadIn.JUMP, 6, -30);
    assertThat(carrying.metres(one, other)).isEqualTo(carrying.metres(other, one));
    assertThat(carrying.metres(one, one)).isZero();
  }

  /** Against the assignment of pieces to their nearest places, which is solved in another way. */
  @Test
  void whereNothingIsBroughtOrTakenAwayItIsWhatMovesCarry() {
    for (LeadIn leadIn : List.of(LeadIn.TUNNEL, LeadIn.JUMP)) {
      for (int poles : List.of(3, 4, 12)) {
        for (double angle = -165; angle <= 165; angle += 15) {
          Setup from = setup(poles, leadIn, 5, 30);
          Setup to = setup(poles, leadIn, 5.5, angle);
          assertThat(carrying.metres(from, to))
              .as("%d poles, %s, to %s degrees", poles, leadIn, angle)
              .isCloseTo(
                  Moves.between(Pieces.of(from, 5, 1.2), Pieces.of(to, 5, 1.2)).metres(),
                  within(2 * poles * Moves.IN_PLACE));
        }
      }
    }
  }
}
