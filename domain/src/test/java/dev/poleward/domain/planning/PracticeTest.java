package dev.poleward.domain.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.LeadIn;
import org.junit.jupiter.api.Test;

/** By hand from the definition [D]. */
class PracticeTest {

  private static double bell(double degrees, double width) {
    return Math.exp(-degrees * degrees / (2 * width * width));
  }

  private static Practice after(double degrees, boolean clean) {
    Practice practice = new Practice();
    practice.ran(new EntryAngle(degrees), Manoeuvre.RECALL, LeadIn.TUNNEL, clean);
    return practice;
  }

  private static double at(Practice practice, double degrees) {
    return practice.at(new EntryAngle(degrees));
  }

  @Test
  void oneCleanRepCountsOnceAtItsAngleAndInPartAtItsNeighbours() {
    Practice practice = after(45, true);

    assertThat(at(practice, 45)).isEqualTo(1);
    assertThat(at(practice, 60)).isCloseTo(bell(15, 16), within(1e-12));
    assertThat(at(practice, 30)).isCloseTo(bell(15, 30), within(1e-12));
    assertThat(at(practice, 172.5)).isCloseTo(bell(127.5, 16), within(1e-12));
  }

  @Test
  void itReachesFartherTowardsStraightOnThanAwayFromIt() {
    Practice practice = after(45, true);

    for (double away = 7.5; away <= 45; away += 7.5) {
      assertThat(at(practice, 45 - away)).isGreaterThan(at(practice, 45 + away));
    }
  }

  @Test
  void theOtherSideGainsNothingButStraightOn() {
    Practice practice = after(45, true);

    assertThat(at(practice, -45)).isZero();
    assertThat(at(practice, -7.5)).isZero();
    assertThat(at(practice, 0)).isCloseTo(bell(45, 30), within(1e-12));
    assertThat(at(after(0, true), 15)).isEqualTo(at(after(0, true), -15));
    assertThat(at(after(0, true), 15)).isCloseTo(bell(15, 16), within(1e-12));
  }

  @Test
  void aMissCountsForSevenTenths() {
    assertThat(at(after(45, false), 45)).isEqualTo(0.7);
    assertThat(after(45, false).with(Manoeuvre.RECALL)).isEqualTo(0.7);
    assertThat(after(45, false).from(LeadIn.TUNNEL)).isEqualTo(0.7);
    assertThat(after(45, false).inAll()).isEqualTo(0.7);
  }

  @Test
  void repsAddUpForEachManoeuvreAndLeadInApart() {
    Practice practice = after(45, true);
    practice.ran(new EntryAngle(-30), Manoeuvre.SEND, LeadIn.JUMP, true);

    assertThat(practice.with(Manoeuvre.RECALL)).isEqualTo(1);
    assertThat(practice.with(Manoeuvre.ALONGSIDE)).isZero();
    assertThat(practice.from(LeadIn.JUMP)).isEqualTo(1);
    assertThat(practice.from(LeadIn.NONE)).isZero();
    assertThat(practice.inAll()).isEqualTo(2);
  }

  @Test
  void betweenTwoKnotsItLiesOnTheStraightLine() {
    Practice practice = after(45, true);

    assertThat(at(practice, 48.75))
        .isCloseTo((at(practice, 45) + at(practice, 52.5)) / 2, within(1e-12));
  }
}
