package dev.poleward.domain.planning;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.Handling;
import dev.poleward.domain.programme.RunUp;
import dev.poleward.domain.programme.Rung;
import org.junit.jupiter.api.Test;

/** An hour further each time [C]. */
class ReachTest {

  private static final RunUp BARE = new RunUp(LeadIn.NONE, null, null);
  private static final RunUp TUNNEL = new RunUp(LeadIn.TUNNEL, null, null);
  private static final RunUp ALONE = new RunUp(LeadIn.JUMP, BackChainStep.POLES_ONLY, null);

  private final Reach reach = new Reach();

  private double of(int poles, RunUp runUp, double degrees) {
    return reach.of(
        new Drill(
            poles,
            runUp,
            new Rung(new EntryAngle(degrees)),
            new Handling(Manoeuvre.ALONGSIDE, DogSide.LEFT, null)));
  }

  private void clean(int poles, LeadIn leadIn, double degrees) {
    reach.ranClean(poles, leadIn, null, new EntryAngle(degrees));
  }

  @Test
  void aDogThatDidNothingGoesNoFartherThanAnHour() {
    assertThat(of(3, BARE, 90)).isEqualTo(30);
  }

  @Test
  void itGoesAnHourFurtherThanItWasCleanOnThatSideAlone() {
    clean(4, LeadIn.NONE, 45);
    clean(4, LeadIn.NONE, 20);
    clean(4, LeadIn.NONE, 0);

    assertThat(of(4, BARE, 135)).isEqualTo(75);
    assertThat(of(4, BARE, -135)).isEqualTo(30);
  }

  @Test
  void morePolesAndLeadInsSayWhatFewerAndNoneDo() {
    clean(6, LeadIn.TUNNEL, 90);

    assertThat(of(6, TUNNEL, 135)).isEqualTo(120);
    assertThat(of(4, TUNNEL, 135)).isEqualTo(120);
    assertThat(of(4, BARE, 135)).isEqualTo(120);
    assertThat(of(4, ALONE, 135)).isEqualTo(120);
  }

  @Test
  void onNewGroundItGoesAsFarAsWithLessButNoSharperThanSixtyDegrees() {
    clean(3, LeadIn.NONE, 50);
    assertThat(of(4, BARE, 90)).isEqualTo(50);
    assertThat(of(3, TUNNEL, 90)).isEqualTo(50);

    clean(3, LeadIn.NONE, 90);
    assertThat(of(4, BARE, 90)).isEqualTo(60);
  }
}
