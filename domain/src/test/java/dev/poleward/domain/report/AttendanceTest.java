package dev.poleward.domain.report;

import static dev.poleward.domain.history.Tell.attended;
import static dev.poleward.domain.history.Tell.classFormed;
import static dev.poleward.domain.history.Tell.dogRegistered;
import static dev.poleward.domain.history.Tell.joined;
import static dev.poleward.domain.history.Tell.left;
import static dev.poleward.domain.history.Tell.merged;
import static dev.poleward.domain.history.Tell.sessionOpened;
import static dev.poleward.domain.report.ReportedClass.EVENING;
import static dev.poleward.domain.report.ReportedClass.evening;
import static dev.poleward.domain.report.ReportedClass.on;
import static dev.poleward.domain.report.ReportedClass.reportedClass;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.report.NotKnown.Matter;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Who was there, and who is reported at all. */
class AttendanceTest {

  private static ReportedClass club() {
    return reportedClass(
        classFormed(EVENING).at(-9),
        dogRegistered("bramble").at(-8),
        dogRegistered("juniper").at(-8),
        dogRegistered("sorrel").at(-8),
        joined(EVENING, "bramble").at(-7),
        joined(EVENING, "juniper").at(-7));
  }

  private static ClassSession session(ClassReport report, int which) {
    return report.page().orElseThrow().sessions().get(which);
  }

  private static List<String> dogs(ClassReport report) {
    return report.dogs().stream().map(DogPage::dog).toList();
  }

  @Test
  void whoRanWasThereWhateverWasNotedOrNot() {
    // Given
    ReportedClass club =
        club()
            .and(
                evening("s-1").at(0),
                attended("s-1", "juniper", false).at(1),
                evening("s-2").at(on(1, 0)),
                attended("s-2", "bramble", true).at(on(1, 1)),
                attended("s-2", "juniper", false).at(on(1, 1)))
            .ran("juniper", "s-1", 0, 5, 0, 1, 1);

    // When
    ClassReport report = club.report(0, 1);

    // Then
    assertThat(session(report, 0).members())
        .containsExactly(
            new Attendance("bramble", Presence.UNKNOWN, null, 0),
            new Attendance("juniper", Presence.PRESENT, false, 2));
    assertThat(session(report, 1).members())
        .containsExactly(
            new Attendance("bramble", Presence.PRESENT, true, 0),
            new Attendance("juniper", Presence.ABSENT, false, 0));
    assertThat(report.page().orElseThrow().notKnown())
        .contains(new NotKnown(Matter.ATTENDANCE, 1))
        .contains(new NotKnown(Matter.CONTRADICTED_ATTENDANCE, 1));
    assertThat(club.page("juniper", 0, 1).attended())
        .extracting(each -> each.attendance().presence())
        .containsExactly(Presence.PRESENT, Presence.ABSENT);
  }

  @Test
  void membersAreThoseOfTheDays() {
    ReportedClass club =
        club()
            .and(
                left(EVENING, "bramble").at(on(2, 60)),
                joined(EVENING, "sorrel").at(on(5, 0)),
                evening("s-1").at(on(2, 0)),
                evening("s-2").at(on(3, 0)),
                evening("s-3").at(on(5, -60)))
            .ran("bramble", "s-2", 3, 5, 0, 1, 0);

    assertThat(dogs(club.report(0, 4))).containsExactly("bramble", "juniper");
    assertThat(dogs(club.report(3, 4))).containsExactly("juniper");
    assertThat(dogs(club.report(3, 5))).containsExactly("juniper", "sorrel");
    assertThat(dogs(club.report(0, 9))).containsExactly("bramble", "juniper", "sorrel");

    ClassReport report = club.report(0, 9);
    // It left after that evening, and came as a visitor the next; it joined on the third.
    assertThat(session(report, 0).members())
        .extracting(Attendance::dog)
        .containsExactly("bramble", "juniper");
    assertThat(session(report, 1).members()).extracting(Attendance::dog).containsExactly("juniper");
    assertThat(session(report, 1).visitors())
        .extracting(Attendance::dog)
        .containsExactly("bramble");
    assertThat(session(report, 2).members())
        .extracting(Attendance::dog)
        .containsExactly("juniper", "sorrel");
  }

  @Test
  void aMergedDogIsReportedOnce() {
    ReportedClass club =
        club()
            .and(
                dogRegistered("juniper-2").at(-6),
                joined(EVENING, "juniper-2").at(-5),
                evening("s-1").at(0),
                attended("s-1", "juniper-2", true).at(1),
                merged("juniper-2", "juniper").at(on(7, 0)))
            .ran("juniper", "s-1", 0, 5, 0, 2, 0)
            .ran("juniper-2", "s-1", 0, 15, 0, 3, 0);

    assertThat(dogs(club.report(0, 1))).containsExactly("bramble", "juniper");
    assertThat(club.page("juniper", 0, 1).reps()).isEqualTo(new RepTally(5, 5, 0, 0));
    assertThat(session(club.report(0, 1), 0).members().getLast())
        .isEqualTo(new Attendance("juniper", Presence.PRESENT, true, 5));
  }

  @Test
  void onlySessionsOfTheClassOpenedInTheDaysAreListed() {
    ReportedClass club =
        club()
            .and(
                evening("s-0").at(on(0, 0)),
                evening("s-1").at(on(1, 0)),
                sessionOpened("s-own").at(on(1, 5)),
                evening("s-1").at(on(1, 9)),
                evening("s-2").at(on(3, 0)))
            .ran("juniper", "s-own", 1, 10, 0, 4, 0)
            .ran("juniper", "s-1", 1, 20, 0, 1, 1);

    ClassPage page = club.report(1, 2).page().orElseThrow();

    assertThat(page.sessions()).extracting(ClassSession::session).containsExactly("s-1");
    assertThat(page.reps()).isEqualTo(new RepTally(2, 1, 0, 0));
    assertThat(page.membersReps()).isEqualTo(new RepTally(6, 5, 0, 0));
  }

  @Test
  void anEmptyClassSaysSo() {
    ReportedClass club = reportedClass(classFormed(EVENING).at(-9));

    ClassReport report = club.report(0, 5);

    assertThat(report.dogs()).isEmpty();
    assertThat(report.page().orElseThrow().reps().cleanShare()).isNull();
    assertThat(report.page().orElseThrow().notKnown())
        .extracting(NotKnown::matter)
        .containsExactly(Matter.SESSIONS, Matter.MEMBERS);
    assertThat(ClassReport.whole("morning", club.sources(0, 5))).isEmpty();
  }

  @Test
  void whoSeesSomeDogsGetsTheirPagesAlone() {
    ReportedClass club = club().and(evening("s-1").at(0)).ran("juniper", "s-1", 0, 5, 0, 1, 0);

    ClassReport report = club.report(0, 1, "juniper"::equals);

    assertThat(report.page()).isEmpty();
    assertThat(report.dogs()).containsExactly(club.page("juniper", 0, 1));
  }
}
