package dev.poleward.domain.care;

import static dev.poleward.domain.history.Tell.dogRegistered;
import static dev.poleward.domain.history.Told.given;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.DogEvent.DogRested;
import dev.poleward.domain.event.DogTraits;
import dev.poleward.domain.event.Help;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.history.Happening;
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
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * After a long break a dog starts easy, straight and few, whether or not somebody named a rest [C].
 */
class LongBreakTest {

  private static final ZoneId LISBON = ZoneId.of("Europe/Lisbon");
  private static final LocalDate RAN = LocalDate.parse("2026-01-05");
  private static final int ALL = CareLimits.USUAL.gapsPerSession();

  private static final Drill DRILL =
      new Drill(
          4,
          new RunUp(LeadIn.NONE, null, null),
          new Rung(new EntryAngle(30)),
          new Handling(Manoeuvre.ALONGSIDE, null, null));

  private static Instant evening(LocalDate day) {
    return day.atTime(18, 0).toInstant(ZoneOffset.UTC);
  }

  private static List<PlacedRep> ran(LocalDate... days) {
    return Stream.of(days).map(day -> Ran.of(DRILL, true, evening(day))).toList();
  }

  private static PlacedRep other(Outcome outcome, Help help, LocalDate day) {
    return Ran.of(DRILL, outcome, help, evening(day));
  }

  private static CarePermit permit(List<PlacedRep> reps, LocalDate day, Happening... more) {
    return permit(reps, day, CareLimits.USUAL, ZoneOffset.UTC, more);
  }

  private static CarePermit permit(
      List<PlacedRep> reps, LocalDate day, CareLimits limits, ZoneId zone, Happening... more) {
    DogTraits grown = new DogTraits(LocalDate.parse("2022-01-01"), null, null, null, null);
    Happening[] told =
        Stream.concat(Stream.of(dogRegistered("juniper", grown).at(0)), Stream.of(more))
            .toArray(Happening[]::new);
    return CareReview.of(
        given(told).whenAsked().registry().dog("juniper").orElseThrow(),
        new Trained(reps, List.of(), List.of()),
        new CareQuestion(limits, Conditions.NOT_SAID, day, zone));
  }

  private static List<String> ids(CarePermit permit) {
    return permit.notes().stream().map(CareNote::id).toList();
  }

  private static Happening restedUntil(String day) {
    return Happening.of(new DogRested("juniper", null, LocalDate.parse(day))).at(10);
  }

  @Test
  void afterHalfAYearWithoutARepTheDogDoesAThirdAndIsToldWhy() {
    CarePermit back = permit(ran(RAN), LocalDate.parse("2026-07-06"));

    assertThat(back.gapsMax()).isEqualTo(ALL / 3);
    assertThat(back.sharpBendsMax()).isZero();
    assertThat(back.mayTrain()).isTrue();
    assertThat(back.notes())
        .singleElement()
        .satisfies(
            note -> {
              assertThat(note.id()).isEqualTo("easing-back");
              assertThat(note.severity()).isEqualTo(Severity.CAUTION);
              assertThat(note.text())
                  .contains("its last run before 2026-07-06 was 182 days earlier, on 2026-01-05")
                  .contains("held to 33%")
                  .contains("veterinarian");
            });
  }

  @Test
  void itRisesFromTheDayOfTheFirstRepAsAfterARest() {
    LocalDate back = LocalDate.parse("2026-07-06");
    List<PlacedRep> reps = ran(RAN, back, back.plusDays(4));

    CarePermit half = permit(reps, back.plusDays(7));
    assertThat(half.gapsMax()).isEqualTo(ALL * 2 / 3);
    assertThat(half.sharpBendsMax()).isEqualTo(CareLimits.USUAL.sharpBendsPerSession() / 2);
    assertThat(half.notes().getFirst().text())
        .contains("its last run before 2026-07-06 was 182 days earlier")
        .contains("held to 67%, sharp bends to 50%, and both rise");
    assertThat(ids(permit(reps, back.plusDays(13)))).containsExactly("easing-back");
    assertThat(ids(permit(reps, back.plusDays(14)))).isEmpty();
    assertThat(permit(reps, back.plusDays(14)).gapsMax()).isEqualTo(ALL);
  }

  @Test
  void onTheDayOfTheReturnRepsOfThatDayDoNotEndTheBreak() {
    LocalDate back = LocalDate.parse("2026-07-06");

    assertThat(permit(ran(RAN, back), back).gapsMax()).isEqualTo(ALL / 3 - 1);
  }

  @Test
  void aBreakIsLongFromAsManyDaysAsTheClubSays() {
    CareLimits fortnight = CareLimits.of(Map.of("breakDays", 14L));

    assertThat(ids(permit(ran(RAN), RAN.plusDays(27)))).isEmpty();
    assertThat(ids(permit(ran(RAN), RAN.plusDays(28)))).containsExactly("easing-back");
    assertThat(ids(permit(ran(RAN), RAN.plusDays(14), fortnight, ZoneOffset.UTC)))
        .containsExactly("easing-back");
    assertThat(CareLimits.of(Map.of("breakDays", 6L)).breakDays()).isEqualTo(28);
    assertThat(
            ids(
                permit(
                    ran(RAN),
                    RAN.plusDays(200),
                    CareLimits.of(Map.of("easeBackDays", 0L)),
                    ZoneOffset.UTC)))
        .isEmpty();
  }

  @Test
  void whoTrainsTwiceAWeekOrNeverRanIsNeverOnABreak() {
    LocalDate[] days =
        IntStream.range(0, 60).mapToObj(i -> RAN.plusDays(7L * i / 2)).toArray(LocalDate[]::new);

    for (int day = 0; day < 200; day++) {
      assertThat(ids(permit(ran(days), RAN.plusDays(day)))).doesNotContain("easing-back");
    }
    assertThat(ids(permit(List.of(), RAN))).isEmpty();
  }

  @Test
  void whatHappenedLaterIsPassedOver() {
    LocalDate day = LocalDate.parse("2026-03-02");
    List<PlacedRep> reps = ran(RAN, day.plusDays(1), day.plusDays(80));

    assertThat(permit(reps, day).notes()).isEqualTo(permit(ran(RAN), day).notes());
    assertThat(ids(permit(ran(day.plusDays(3)), day))).isEmpty();
  }

  @Test
  void helpedRepsArePracticeAndVoidOnesAreNot() {
    LocalDate between = RAN.plusDays(20);
    LocalDate day = RAN.plusDays(40);

    List<PlacedRep> helped =
        List.of(ran(RAN).getFirst(), other(Outcome.MISSED_ENTRY, Help.LURE, between));
    List<PlacedRep> voided = List.of(ran(RAN).getFirst(), other(Outcome.VOID, Help.NONE, between));

    assertThat(ids(permit(helped, day))).isEmpty();
    assertThat(permit(voided, day).notes().getFirst().text()).contains("40 days earlier");
  }

  @Test
  void daysAreThoseOfTheClub() {
    // Half past midnight of the 6th in Lisbon's summer, still the 5th by Greenwich.
    List<PlacedRep> reps = List.of(Ran.of(DRILL, true, Instant.parse("2026-07-05T23:30:00Z")));
    LocalDate day = LocalDate.parse("2026-08-02");

    assertThat(ids(permit(reps, day))).containsExactly("easing-back");
    assertThat(ids(permit(reps, day, CareLimits.USUAL, LISBON))).isEmpty();
  }

  @Test
  void aNamedRestGoesBeforeTheBreakThatItExplains() {
    List<PlacedRep> reps = ran(RAN);

    CarePermit resting = permit(reps, LocalDate.parse("2026-07-05"), restedUntil("2026-07-06"));
    CarePermit over = permit(reps, LocalDate.parse("2026-07-06"), restedUntil("2026-07-06"));
    CarePermit eased = permit(reps, LocalDate.parse("2026-07-20"), restedUntil("2026-07-06"));

    assertThat(ids(resting)).containsExactly("resting");
    assertThat(over.notes())
        .singleElement()
        .satisfies(note -> assertThat(note.text()).contains("back from a rest"));
    assertThat(over.gapsMax()).isEqualTo(ALL / 3);
    assertThat(over.sharpBendsMax()).as("straight after a rest too").isZero();
    assertThat(ids(eased)).isEmpty();
  }

  @Test
  void idleWeeksAfterARestAreABreakOfTheirOwn() {
    CareLimits slowly = CareLimits.of(Map.of("easeBackDays", 60L));
    LocalDate day = LocalDate.parse("2026-08-03");

    assertThat(permit(ran(RAN), day, restedUntil("2026-07-06")).notes())
        .singleElement()
        .satisfies(note -> assertThat(note.text()).contains("back from a break", "210 days"));
    CarePermit both = permit(ran(RAN), day, slowly, ZoneOffset.UTC, restedUntil("2026-07-06"));
    assertThat(both.gapsMax()).isEqualTo(ALL / 3);
    assertThat(ids(both)).containsExactly("easing-back");
  }
}
