package dev.poleward.domain.report;

import static dev.poleward.domain.history.Tell.classFormed;
import static dev.poleward.domain.history.Tell.dogRegistered;
import static dev.poleward.domain.history.Tell.joined;
import static dev.poleward.domain.history.Tell.rep;
import static dev.poleward.domain.history.Tell.setup;
import static dev.poleward.domain.history.Tell.setupAt;
import static dev.poleward.domain.history.Tell.tunnelAt;
import static dev.poleward.domain.report.ReportedClass.EVENING;
import static dev.poleward.domain.report.ReportedClass.closed;
import static dev.poleward.domain.report.ReportedClass.evening;
import static dev.poleward.domain.report.ReportedClass.on;
import static dev.poleward.domain.report.ReportedClass.reportedClass;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.report.NotKnown.Matter;
import java.time.Duration;
import org.junit.jupiter.api.Test;

/** What stood how long in the sessions of a class. */
class EquipmentTest {

  private static ReportedClass club() {
    return reportedClass(
        classFormed(EVENING).at(-9),
        dogRegistered("juniper").at(-8),
        joined(EVENING, "juniper").at(-7),
        evening("s-1").at(0));
  }

  private static EquipmentUse use(ReportedClass club) {
    return club.report(0, 3).page().orElseThrow().equipment();
  }

  @Test
  void aSetupStandsUntilTheNextOneOnItsPolesOrTheEnd() {
    ReportedClass club =
        club()
            .and(
                setupAt(45).at(2),
                setupAt(0, "second").at(3),
                rep("r-1").at(5),
                // Told again, it goes on standing.
                setupAt(45).at(10),
                rep("r-2").at(11),
                setupAt(-45).at(20),
                rep("r-3").at(25),
                closed("s-1").at(40));

    EquipmentUse use = use(club);

    assertThat(use.setUp()).isEqualTo(3);
    assertThat(use.changes()).isEqualTo(1);
    assertThat(use.unknown()).isZero();
    assertThat(use.setups())
        .containsExactly(
            new EquipmentUse.OfSetup(tunnelAt(0), 1, Duration.ofMinutes(37), 0, 0),
            new EquipmentUse.OfSetup(tunnelAt(-45), 1, Duration.ofMinutes(20), 0, 1),
            new EquipmentUse.OfSetup(tunnelAt(45), 1, Duration.ofMinutes(18), 0, 2));
    assertThat(use.stood()).isEqualTo(Duration.ofMinutes(75));
  }

  @Test
  void theLastRepEndsASessionThatNobodyClosedAndOneThatWentOn() {
    EquipmentUse open = use(club().and(setupAt(45).at(2), rep("r-1").at(12)));
    EquipmentUse late = use(club().and(setupAt(45).at(2), closed("s-1").at(5), rep("r-1").at(12)));

    assertThat(open.stood()).isEqualTo(Duration.ofMinutes(10));
    assertThat(late.stood()).isEqualTo(Duration.ofMinutes(10));
  }

  @Test
  void whereNobodyKnowsTheEndNothingIsMadeUp() {
    ReportedClass club = club().and(setupAt(45).at(2));

    assertThat(use(club).stood()).isZero();
    assertThat(use(club).unknown()).isEqualTo(1);
    assertThat(club.report(0, 3).page().orElseThrow().notKnown())
        .contains(new NotKnown(Matter.EQUIPMENT_TIME, 1));
  }

  @Test
  void theSameSetupOfTwoSessionsIsOne() {
    ReportedClass club =
        club()
            .and(
                setupAt(45).at(2),
                closed("s-1").at(12),
                evening("s-2").at(on(1, 0)),
                setup("s-2", tunnelAt(45)).at(on(1, 1)),
                closed("s-2").at(on(1, 31)));

    assertThat(use(club).setups())
        .containsExactly(new EquipmentUse.OfSetup(tunnelAt(45), 2, Duration.ofMinutes(40), 0, 0));
    assertThat(use(club).changes()).isZero();
  }
}
