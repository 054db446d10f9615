package dev.poleward.domain.care;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.judgement.Ran;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.Handling;
import dev.poleward.domain.programme.RunUp;
import dev.poleward.domain.programme.Rung;
import dev.poleward.domain.record.PlacedRep;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** A dog that stood still for weeks is used to no longer a line than before. */
class UsualLineTest {

  private static final LocalDate LAST = LocalDate.parse("2026-03-02");

  private static PlacedRep ran(int poles, LocalDate day) {
    return ran(poles, day.atTime(18, 0).toInstant(ZoneOffset.UTC));
  }

  private static PlacedRep ran(int poles, Instant time) {
    Drill drill =
        new Drill(
            poles,
            new RunUp(LeadIn.NONE, null, null),
            new Rung(EntryAngle.STRAIGHT),
            new Handling(Manoeuvre.ALONGSIDE, null, null));
    return Ran.of(drill, true, time);
  }

  private static LoadSeen seen(List<PlacedRep> reps, LocalDate day, ZoneId zone) {
    return LoadSeen.of(reps, new CareQuestion(CareLimits.USUAL, Conditions.NOT_SAID, day, zone));
  }

  private static @Nullable UsualLine usual(List<PlacedRep> reps, LocalDate day) {
    return seen(reps, day, ZoneOffset.UTC).line();
  }

  private static List<CareNote> notes(List<PlacedRep> reps, LocalDate day, int poles) {
    return new CarePermit(24, 90, 10, null, true, seen(reps, day, ZoneOffset.UTC), null, List.of())
        .planned(new SessionAhead(poles, false, false))
        .notes();
  }

  @Test
  void theCautionStandsHoweverLongTheDogStoodStill() {
    List<PlacedRep> reps = List.of(ran(4, LAST.minusDays(7)), ran(4, LAST));

    for (int days = 0; days <= 800; days++) {
      assertThat(notes(reps, LAST.plusDays(days), 12))
          .as("after %d days", days)
          .singleElement()
          .satisfies(
              note ->
                  assertThat(note.text())
                      .contains("up to 4 poles; this session has 12: a rep is 3.7 times"));
    }
    assertThat(notes(reps, LAST.plusDays(800), 7)).isEmpty();
    assertThat(notes(List.of(), LAST, 12)).isEmpty();
  }

  @Test
  void itSaysWhatItComparesWith() {
    assertThat(notes(List.of(ran(4, LAST)), LAST.plusDays(90), 12).getFirst().text())
        .startsWith("In the five weeks up to its last run, on 2026-03-02, the line had up to 4");
  }

  @Test
  void itIsTheLongestOfTheFiveWeeksThatEndWithTheLastRun() {
    List<PlacedRep> reps =
        List.of(ran(12, LAST.minusDays(35)), ran(6, LAST.minusDays(34)), ran(4, LAST));

    assertThat(usual(reps, LAST)).isEqualTo(new UsualLine(6, LAST));
    assertThat(usual(reps, LAST.plusDays(34))).isEqualTo(new UsualLine(6, LAST));
    assertThat(usual(reps, LAST.minusDays(1))).isEqualTo(new UsualLine(12, LAST.minusDays(34)));
  }

  @Test
  void whatHappenedLaterIsPassedOver() {
    List<PlacedRep> reps = List.of(ran(4, LAST), ran(12, LAST.plusDays(61)));

    assertThat(usual(reps, LAST.plusDays(60))).isEqualTo(new UsualLine(4, LAST));
    assertThat(usual(reps.subList(1, 2), LAST)).isNull();
  }

  @Test
  void daysAreThoseOfTheClub() {
    List<PlacedRep> reps = List.of(ran(4, Instant.parse("2026-07-05T23:30:00Z")));
    LocalDate day = LocalDate.parse("2026-09-01");

    assertThat(seen(reps, day, ZoneOffset.UTC).line())
        .isEqualTo(new UsualLine(4, LocalDate.parse("2026-07-05")));
    assertThat(seen(reps, day, ZoneId.of("Europe/Lisbon")).line())
        .isEqualTo(new UsualLine(4, LocalDate.parse("2026-07-06")));
  }
}
