package dev.poleward.domain.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import dev.poleward.domain.event.Help;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.Handling;
import dev.poleward.domain.programme.RunUp;
import dev.poleward.domain.programme.Rung;
import dev.poleward.domain.record.PlacedRep;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class FaultReviewTest {

  private static final Instant FROM = Instant.parse("2026-05-01T00:00:00Z");
  private static final Instant UNTIL = Instant.parse("2026-06-01T00:00:00Z");

  private final List<PlacedRep> reps = new ArrayList<>();

  private FaultReviewTest ran(
      int times, double degrees, Manoeuvre manoeuvre, Outcome outcome, Help help) {
    Drill drill =
        new Drill(
            4,
            new RunUp(LeadIn.NONE, null, null),
            new Rung(new EntryAngle(degrees)),
            new Handling(manoeuvre, null, null));
    for (int i = 0; i < times; i++) {
      reps.add(Ran.of(drill, outcome, help, FROM.plusSeconds(60L * reps.size())));
    }
    return this;
  }

  private FaultReviewTest ran(int times, double degrees, Manoeuvre manoeuvre, Outcome outcome) {
    return ran(times, degrees, manoeuvre, outcome, Help.NONE);
  }

  private FaultReview review() {
    return FaultReview.of(reps, FROM, UNTIL);
  }

  @Test
  void aGroupOfOneFaultyRepDoesNotStandOut() {
    ran(19, 45, Manoeuvre.ALONGSIDE, Outcome.CLEAN);
    ran(1, -45, Manoeuvre.SEND, Outcome.MISSED_ENTRY);

    assertThat(review().angles().groups()).noneMatch(FaultGroup::standsOut);
    assertThat(review().manoeuvres().groups()).noneMatch(FaultGroup::standsOut);
    assertThat(review().lines().getFirst().spread().places())
        .noneMatch(EvenSpread.Place::standsOut);
  }

  @Test
  void faultsAreTheSideThatLagsAndTheFirstPole() {
    ran(20, 45, Manoeuvre.ALONGSIDE, Outcome.CLEAN);
    ran(12, -45, Manoeuvre.SEND, Outcome.CLEAN);
    ran(8, -45, Manoeuvre.SEND, Outcome.MISSED_ENTRY);
    ran(5, -45, Manoeuvre.SEND, Outcome.VOID);
    ran(3, -45, Manoeuvre.SEND, Outcome.POPPED_OUT, Help.GUIDE);

    FaultReview review = review();

    assertThat(review.all().reps()).isEqualTo(40);
    assertThat(review.all().faults()).isEqualTo(Map.of(Outcome.MISSED_ENTRY, 8));
    assertThat(review.helped()).isEqualTo(3);
    assertThat(review.angles().groups())
        .extracting(FaultGroup::of, FaultGroup::reps, FaultGroup::faulty, FaultGroup::standsOut)
        .containsExactly(
            tuple(new AngleBand(EntrySide.POLE, 30, 60), 20, 0, false),
            tuple(new AngleBand(EntrySide.GAP, 30, 60), 20, 8, true));
    assertThat(review.manoeuvres().groups())
        .extracting(FaultGroup::of)
        .containsExactlyInAnyOrder(Manoeuvre.ALONGSIDE, Manoeuvre.SEND);
    assertThat(review.lines()).hasSize(1);
    assertThat(review.lines().getFirst().spread().places())
        .extracting(EvenSpread.Place::faults)
        .containsExactly(8, 0, 0, 0);
    assertThat(review.lines().getFirst().spread().chance()).isLessThan(0.001);
  }

  @Test
  void faultsWithoutAPoleAreCountedApart() {
    ran(5, 0, Manoeuvre.SEND, Outcome.CLEAN).ran(2, 0, Manoeuvre.SEND, Outcome.POPPED_OUT);

    FaultsOfLine line = review().lines().getFirst();

    assertThat(line.withoutPole()).isEqualTo(2);
    assertThat(line.spread().chance()).isEqualTo(1);
  }

  @Test
  void withoutRepsThereIsNothingToSay() {
    FaultReview review = review();

    assertThat(review.all().reps()).isZero();
    assertThat(review.lines()).isEmpty();
    assertThat(review.angles().groups()).isEmpty();
    assertThat(review.angles().chance()).isNull();
  }

  @Test
  void anHourOfTheClockEachAndStraightOnByItself() {
    assertThat(AngleBand.of(new EntryAngle(0))).isEqualTo(new AngleBand(EntrySide.BOTH, 0, 0));
    assertThat(AngleBand.of(new EntryAngle(30))).isEqualTo(new AngleBand(EntrySide.POLE, 0, 30));
    assertThat(AngleBand.of(new EntryAngle(-31))).isEqualTo(new AngleBand(EntrySide.GAP, 30, 60));
    assertThat(AngleBand.of(new EntryAngle(179)))
        .isEqualTo(new AngleBand(EntrySide.POLE, 150, 180));
  }

  /**
   * Five lots of 300: NIST/SEMATECH e-Handbook 7.4.5, chi-square 12.131 on 4 degrees of freedom
   * [M].
   */
  @Test
  void theChanceOfFaultsByGroupIsPearsons() {
    int[] faulty = {36, 46, 42, 63, 38};
    FaultGroups.Collecting<Integer> lots = new FaultGroups.Collecting<>();
    for (int lot = 0; lot < faulty.length; lot++) {
      for (int i = 0; i < 300; i++) {
        lots.add(lot, i < faulty[lot] ? Outcome.POPPED_OUT : Outcome.CLEAN);
      }
    }

    // Survival of chi-square with 4 degrees of freedom: exp(-x/2) (1 + x/2), exact.
    double half = 12.131 / 2;
    assertThat(lots.done().chance()).isCloseTo(Math.exp(-half) * (1 + half), within(1e-5));
  }

  @Test
  void ofFewRepsNoChanceIsTold() {
    ran(6, 45, Manoeuvre.ALONGSIDE, Outcome.CLEAN).ran(4, -45, Manoeuvre.SEND, Outcome.NO_ATTEMPT);

    assertThat(review().angles().chance()).isNull();
    assertThat(review().angles().groups()).hasSize(2);
  }
}
