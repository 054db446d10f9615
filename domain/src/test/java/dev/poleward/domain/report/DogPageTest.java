package dev.poleward.domain.report;

import static dev.poleward.domain.history.Tell.dogRegistered;
import static dev.poleward.domain.history.Tell.joined;
import static dev.poleward.domain.history.Tell.sessionOpened;
import static dev.poleward.domain.report.ReportedClass.EVENING;
import static dev.poleward.domain.report.ReportedClass.day;
import static dev.poleward.domain.report.ReportedClass.follows;
import static dev.poleward.domain.report.ReportedClass.on;
import static dev.poleward.domain.report.ReportedClass.stage;
import static dev.poleward.domain.report.ReportedClass.withGrid;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.AimEvent.HomeworkSet;
import dev.poleward.domain.event.AimEvent.TrialRun;
import dev.poleward.domain.event.DogEvent.DogRested;
import dev.poleward.domain.event.DogTraits;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.history.Happening;
import dev.poleward.domain.judgement.NextRung;
import dev.poleward.domain.judgement.Verdict;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.mastery.SideComparison;
import dev.poleward.domain.mastery.Threshold;
import dev.poleward.domain.programme.ProgrammeInForce;
import dev.poleward.domain.report.NotKnown.Matter;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What the page of a dog says. */
class DogPageTest {

  private static ReportedClass club() {
    return club(LocalDate.parse("2022-01-01"));
  }

  private static ReportedClass club(@Nullable LocalDate born) {
    return withGrid(
            List.of(
                stage("front", List.of(), "12:00", "1:00", "11:00"),
                stage("side", List.of("front"), "3:00", "9:00")))
        .and(
            dogRegistered("juniper", new DogTraits(born, null, null, null, null)).at(-8),
            joined(EVENING, "juniper").at(-7));
  }

  private static Happening assigned(int day) {
    return follows("juniper", on(day, -1));
  }

  private static List<Matter> notKnown(DogPage page) {
    return page.notKnown().stream().map(NotKnown::matter).toList();
  }

  @Test
  void whatWasFollowedIsToldForBothEnds() {
    // Given
    ReportedClass club =
        club()
            .and(assigned(3))
            .ran("juniper", "s-1", 4, 0, 0, 5, 0)
            .ran("juniper", "s-1", 5, 0, 30, 5, 0)
            .ran("juniper", "s-1", 6, 0, -30, 5, 0);

    // When
    DogPage page = club.page("juniper", 2, 7);
    DogPage before = club.page("juniper", 0, 2);

    // Then
    assertThat(page.begin().followed()).isInstanceOf(ProgrammeInForce.Unassigned.class);
    assertThat(page.end().followed()).isInstanceOf(ProgrammeInForce.Assigned.class);
    assertThat(page.end().standing().current().orElseThrow().stage().id()).isEqualTo("side");
    assertThat(page.season().stages())
        .extracting(done -> done.stage().id())
        .containsExactly("front");
    assertThat(page.season().movedOn())
        .extracting(done -> done.pool().rung().angle().degrees())
        .containsExactly(0.0, 30.0, -30.0);
    assertThat(page.season().movedOn().getFirst().day()).isEqualTo(day(4));
    assertThat(before.end().followed()).isInstanceOf(ProgrammeInForce.Unassigned.class);
    assertThat(notKnown(before)).contains(Matter.PROGRAMME, Matter.REPS);
    assertThat(notKnown(page)).doesNotContain(Matter.PROGRAMME);
  }

  @Test
  void theThresholdIsToldAgainstThatOfBefore() {
    ReportedClass club =
        club()
            .ran("juniper", "s-1", 0, 0, 30, 2, 0)
            .ran("juniper", "s-1", 3, 0, 30, 19, 1)
            .ran("juniper", "s-1", 3, 60, 90, 3, 17)
            .ran("juniper", "s-1", 3, 120, -30, 20, 0)
            .ran("juniper", "s-1", 3, 180, -90, 20, 0);

    DogPage page = club.page("juniper", 2, 4);

    assertThat(page.season().before().sides())
        .extracting(side -> side.threshold())
        .containsOnly(new Threshold.NotEnoughReps());
    assertThat(page.season().after().sides().getFirst().threshold())
        .isInstanceOfSatisfying(
            Threshold.Estimated.class, it -> assertThat(it.degrees()).isBetween(31.0, 89.0));
    // Never an extrapolation as a number.
    assertThat(page.season().after().sides().getLast().threshold())
        .isNotInstanceOf(Threshold.Estimated.class);
  }

  @Test
  void theSideThatLagsIsToldWithItsLimits() {
    ReportedClass club =
        club()
            .ran("juniper", "s-1", 1, 0, 30, 38, 2)
            .ran("juniper", "s-1", 1, 60, 60, 2, 38)
            .ran("juniper", "s-1", 1, 120, -60, 38, 2)
            .ran("juniper", "s-1", 1, 180, -120, 2, 38);

    assertThat(club.page("juniper", 0, 2).sides())
        .isInstanceOfSatisfying(
            SideComparison.Lags.class,
            it -> {
              assertThat(it.side()).isEqualTo(EntrySide.POLE);
              assertThat(it.behind()).isNotNull();
            });
    assertThat(club().page("juniper", 0, 2).sides())
        .isEqualTo(new SideComparison.CannotTell(SideComparison.Why.NOT_ENOUGH_REPS, null));
  }

  @Test
  void aDogIsStuckWhereTwiceWhatWouldHaveDoneDidNotDo() {
    ReportedClass club = club().and(assigned(0));
    for (int day = 1; day <= 3; day++) {
      // Three clean, one missed: never five in a row, over ten reps of three days.
      club.ran("juniper", "s-1", day, 0, 0, 3, 1);
    }
    ReportedClass fewer = club().and(assigned(0)).ran("juniper", "s-1", 1, 0, 0, 9, 3);

    DogPage page = club.page("juniper", 0, 5);

    assertThat(page.stuck()).hasSize(1);
    WorkedRung stuck = page.stuck().getFirst();
    assertThat(stuck.since()).isEqualTo(day(1));
    assertThat(stuck.reps()).isEqualTo(12);
    assertThat(stuck.days()).isEqualTo(3);
    assertThat(stuck.enough()).isEqualTo(5);
    assertThat(stuck.standing().judgement().verdict()).isNotInstanceOf(Verdict.MoveOn.class);
    assertThat(club.report(0, 5).page().orElseThrow().stuckOn())
        .singleElement()
        .satisfies(
            on -> {
              assertThat(on.stuck()).containsExactly("juniper");
              assertThat(on.programme()).isEqualTo("grid");
              assertThat(on.worked()).isEqualTo(1);
            });
    // On two days, or a single one, nobody is stuck yet.
    assertThat(club.page("juniper", 0, 2).stuck()).isEmpty();
    assertThat(fewer.page("juniper", 0, 5).stuck()).isEmpty();
    // It was stuck in the days before; in these it did not work on it.
    assertThat(club.page("juniper", 4, 5).stuck()).isEmpty();
    assertThat(club.page("juniper", 3, 5).stuck()).hasSize(1);
  }

  @Test
  void homeworkThatIsSetComesBeforeWhatFollows() {
    Happening homework =
        Happening.of(new HomeworkSet("juniper", List.of(Map.of("poles", 4L)), day(8)))
            .as("h-1")
            .at(on(1, 0));
    ReportedClass club = club().and(assigned(0));

    assertThat(club.page("juniper", 0, 5).atHome())
        .isInstanceOfSatisfying(
            AtHome.Proposed.class,
            it -> {
              assertThat(it.refresh()).isEmpty();
              assertThat(it.next())
                  .extracting(NextRung::why)
                  .containsOnly(NextRung.Reason.FRONTIER);
            });
    assertThat(club.and(homework).page("juniper", 0, 5).atHome())
        .isInstanceOfSatisfying(
            AtHome.Homeworks.class,
            it -> assertThat(it.homework().getFirst().set().id()).isEqualTo("h-1"));
    assertThat(club.page("juniper", 0, 0).homework()).isEmpty();
    assertThat(club.page("juniper", 0, 5).homework()).hasSize(1);
    // Its day is over.
    assertThat(club.page("juniper", 0, 9).atHome()).isInstanceOf(AtHome.Proposed.class);
    assertThat(club.page("juniper", 9, 12).homework()).isEmpty();

    club.and(Happening.of(new DogRested("juniper", "lame", null)).at(on(2, 0)));
    assertThat(club.page("juniper", 0, 5).atHome()).isEqualTo(new AtHome.Rest());
    assertThat(club.page("juniper", 0, 1).atHome()).isInstanceOf(AtHome.Homeworks.class);
  }

  @Test
  void nothingIsProposedThatAgeForbids() {
    ReportedClass club =
        club(null)
            .and(assigned(0))
            .ran("juniper", "s-1", 1, 0, 0, 5, 0)
            .ran("juniper", "s-1", 1, 10, 30, 5, 0)
            .ran("juniper", "s-1", 1, 20, -30, 5, 0);

    DogPage page = club.page("juniper", 0, 2);

    assertThat(page.atHome())
        .isInstanceOfSatisfying(
            AtHome.Proposed.class,
            it -> {
              assertThat(it.next()).isEmpty();
              assertThat(it.heldBack()).isEqualTo(2);
            });
    assertThat(notKnown(page)).contains(Matter.AGE);
  }

  @Test
  void loadIsHeldAgainstTheLimitsOfTheDog() {
    ReportedClass club =
        club()
            .ran("juniper", "s-1", 0, 0, 0, 30, 0)
            .and(sessionOpened("s-2").at(on(4, 0)))
            .ran("juniper", "s-2", 4, 0, 90, 31, 0);

    DogPage page = club.page("juniper", 3, 5);

    // 31 reps over four poles: 93 gaps; limits are 90 gaps and 10 sharp bends a session.
    assertThat(page.load().sessionsOver()).isEqualTo(1);
    assertThat(page.load().mostGaps().orElseThrow().load().gaps()).isEqualTo(93);
    assertThat(page.load().mostSharpBends()).isEqualTo(31);
    // The week began before the report.
    assertThat(page.load().heaviestWeek().orElseThrow().load().gaps()).isEqualTo(183);
    assertThat(page.load().weeksOver()).isZero();
    assertThat(page.season().total().gaps()).isEqualTo(93);
  }

  @Test
  void aDogWithoutRepsHasAPageThatSaysSo() {
    DogPage page = club(null).page("juniper", 0, 5);

    assertThat(page.reps()).isEqualTo(new RepTally(0, 0, 0, 0));
    assertThat(page.faults().all().reps()).isZero();
    assertThat(page.load().mostGaps()).isEmpty();
    assertThat(page.rewards()).isEmpty();
    assertThat(notKnown(page))
        .containsExactly(Matter.REPS, Matter.AGE, Matter.PROGRAMME, Matter.REWARDS);
  }

  @Test
  void fewRepsAndThoseOfNoDrillAreSaid() {
    ReportedClass club = club().and(assigned(0)).ran("juniper", "s-1", 1, 0, 150, 2, 1);

    DogPage page = club.page("juniper", 0, 5);

    assertThat(page.notKnown())
        .contains(new NotKnown(Matter.FEW_REPS, 3), new NotKnown(Matter.DRILL_OF_REPS, 3));
    assertThat(page.faults().all().faults()).containsEntry(Outcome.MISSED_ENTRY, 1);
  }

  @Test
  void trialsOfTheDaysAreTold() {
    ReportedClass club =
        club()
            .and(
                Happening.of(new TrialRun("juniper", 12, Outcome.CLEAN, null, 3.0, null))
                    .at(on(1, 0)),
                Happening.of(new TrialRun("juniper", 12, Outcome.POPPED_OUT, 7, null, null))
                    .at(on(4, 0)));

    assertThat(club.page("juniper", 3, 5).trials())
        .extracting(trial -> trial.event().outcome())
        .containsExactly(Outcome.POPPED_OUT);
    assertThat(club.page("juniper", 0, 5).season().total().cleanTrials()).isEqualTo(1);
  }
}
