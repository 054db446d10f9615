package dev.poleward.domain.care;

import static dev.poleward.domain.history.Tell.dogRegistered;
import static dev.poleward.domain.history.Told.given;
import static dev.poleward.domain.history.Told.minute;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.DogEvent.DogCleared;
import dev.poleward.domain.event.DogEvent.DogRested;
import dev.poleward.domain.event.DogTraits;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.history.Happening;
import dev.poleward.domain.judgement.Ran;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.Handling;
import dev.poleward.domain.programme.RunUp;
import dev.poleward.domain.programme.Rung;
import dev.poleward.domain.record.PlacedRep;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What a dog may be asked for. Minute 0 is on 4 May 2026. */
class CareReviewTest {

  private static final Instant NOW = Instant.parse("2026-06-01T17:00:00Z");
  private static final LocalDate TODAY = LocalDate.parse("2026-06-01");
  private static final Happening GROWN = born(LocalDate.parse("2022-01-01"));

  private static Happening born(@Nullable LocalDate born) {
    return dogRegistered("juniper", new DogTraits(born, null, null, null, null)).at(0);
  }

  private static Happening rested(@Nullable LocalDate until) {
    return Happening.of(new DogRested("juniper", "lame", until)).at(10);
  }

  private static final Happening CLEARED =
      Happening.of(new DogCleared("juniper", "the vet", null)).at(20);

  private static CarePermit permit(List<PlacedRep> reps, Happening... told) {
    return permit(reps, Conditions.NOT_SAID, told);
  }

  private static CarePermit permit(List<PlacedRep> reps, Conditions conditions, Happening... told) {
    return permit(reps, List.of(), conditions, told);
  }

  private static CarePermit permit(
      List<PlacedRep> reps, List<Instant> slips, Conditions conditions, Happening... told) {
    return CareReview.of(
        given(told).whenAsked().registry().dog("juniper").orElseThrow(),
        new Trained(reps, List.of(), slips),
        new CareQuestion(CareLimits.USUAL, conditions, TODAY, ZoneOffset.UTC));
  }

  private static List<String> ids(CarePermit permit) {
    return permit.notes().stream().map(CareNote::id).toList();
  }

  private static List<PlacedRep> run(int reps, int poles, double degrees, Instant last) {
    Drill drill =
        new Drill(
            poles,
            new RunUp(LeadIn.NONE, null, null),
            new Rung(new EntryAngle(degrees)),
            new Handling(Manoeuvre.ALONGSIDE, null, null));
    List<PlacedRep> run = new ArrayList<>();
    for (int i = reps - 1; i >= 0; i--) {
      run.add(Ran.of(drill, true, last.minusSeconds(60L * i)));
    }
    return run;
  }

  @Test
  void aGrownDogMayDoWhatTheClubAllows() {
    CarePermit permit = permit(List.of(), GROWN);

    assertThat(permit.mayTrain()).isTrue();
    assertThat(permit.polesMax()).isEqualTo(24);
    assertThat(permit.gapsMax()).isEqualTo(CareLimits.USUAL.gapsPerSession());
    assertThat(permit.sharpBendsMax()).isEqualTo(CareLimits.USUAL.sharpBendsPerSession());
    assertThat(ids(permit)).isEmpty();
  }

  @Test
  void sidesAndPressureAreMindedWhereTheyMatter() {
    CarePermit permit = permit(List.of(), GROWN);

    assertThat(ids(permit.planned(new SessionAhead(4, false, false)))).isEmpty();
    assertThat(ids(permit.planned(new SessionAhead(4, true, false))))
        .containsExactly("alternate-sides");
    assertThat(ids(permit.planned(new SessionAhead(4, false, true)))).containsExactly("pressure");
    assertThat(ids(permit.unplanned(true))).containsExactly("alternate-sides", "pressure");
    assertThat(ids(permit.unplanned(false))).containsExactly("alternate-sides");
    assertThat(ids(permit(List.of(), GROWN, rested(null)).unplanned(true)))
        .containsExactly("resting");
  }

  @Test
  void aYoungDogAndOneOfUnknownAgeHaveFewPolesAndNoSharpBendsUntilTheyAreCleared() {
    CarePermit young = permit(List.of(), born(LocalDate.parse("2025-06-01")));
    CarePermit unknown = permit(List.of(), born(null));
    CarePermit cleared = permit(List.of(), born(null), CLEARED);

    assertThat(ids(young)).contains("young");
    assertThat(ids(unknown)).contains("age-unknown");
    assertThat(List.of(young, unknown))
        .allSatisfy(
            permit -> {
              assertThat(permit.polesMax()).isEqualTo(4);
              assertThat(permit.gapsMax()).isEqualTo(24);
              assertThat(permit.sharpBendsMax()).isZero();
              assertThat(permit.barHeightMax()).isEqualTo(0.1);
              assertThat(permit.notes().getFirst().text()).contains("veterinarian");
            });
    assertThat(cleared.polesMax()).isEqualTo(24);
    assertThat(cleared.barHeightMax()).isNull();
  }

  @Test
  void onItsBirthdayADogIsNoLongerYoung() {
    assertThat(ids(permit(List.of(), born(LocalDate.parse("2024-12-01"))))).doesNotContain("young");
    assertThat(ids(permit(List.of(), born(LocalDate.parse("2024-12-02"))))).contains("young");
  }

  @Test
  void aDogThatRestsDoesNothingUntilItIsClearedOrTheRestIsOver() {
    CarePermit resting = permit(List.of(), GROWN, rested(null));
    assertThat(resting.mayTrain()).isFalse();
    assertThat(resting.gapsMax()).isZero();
    assertThat(resting.notes().getFirst().id()).isEqualTo("resting");
    assertThat(resting.notes().getFirst().text()).contains("lame").contains("veterinarian");

    assertThat(permit(List.of(), GROWN, rested(LocalDate.parse("2026-06-02"))).mayTrain())
        .isFalse();
    assertThat(permit(List.of(), GROWN, rested(LocalDate.parse("2026-06-01"))).mayTrain()).isTrue();
    assertThat(permit(List.of(), GROWN, rested(null), CLEARED).mayTrain()).isTrue();
  }

  @Test
  void afterARestLoadRisesFromAThirdToAllOfIt() {
    int all = CareLimits.USUAL.gapsPerSession();

    assertThat(permit(List.of(), GROWN, rested(LocalDate.parse("2026-06-01"))).gapsMax())
        .isEqualTo(all / 3);
    CarePermit half = permit(List.of(), GROWN, rested(LocalDate.parse("2026-05-25")));
    assertThat(half.gapsMax()).isEqualTo(all * 2 / 3);
    assertThat(ids(half)).contains("easing-back");
    assertThat(permit(List.of(), GROWN, rested(LocalDate.parse("2026-05-18"))).gapsMax())
        .isEqualTo(all);
  }

  @Test
  void aFullWeekStopsTheDogAndAnEmptierOneLeavesTheRest() {
    CarePermit full = permit(run(22, 12, 0, NOW.minus(Duration.ofDays(1))), GROWN);
    assertThat(ids(full)).contains("week-is-full");
    assertThat(full.mayTrain()).isFalse();

    CarePermit left = permit(run(20, 12, 0, NOW.minus(Duration.ofDays(1))), GROWN);
    assertThat(left.gapsMax()).isEqualTo(240 - 20 * 11);

    assertThat(permit(run(22, 12, 0, NOW.minus(Duration.ofDays(8))), GROWN).mayTrain()).isTrue();
  }

  @Test
  void tenRepsAreThirtyGapsOnFourPolesAndAHundredAndTenOnTwelve() {
    Instant last = minute(60);

    assertThat(Load.of(run(10, 4, 0, last), minute(0), minute(61)))
        .isEqualTo(new Load(30, 0, 1, 4));
    assertThat(Load.of(run(10, 12, 75, last), minute(0), minute(61)))
        .isEqualTo(new Load(110, 10, 1, 12));
    assertThat(Load.of(run(10, 4, 60, last), minute(0), minute(61)).sharpBends()).isZero();
  }

  @Test
  void aClubSaysItsOwnLimitsAndWhatCannotBeIsPassedOver() {
    CareLimits limits =
        CareLimits.of(
            Map.of("ageMonths", 24L, "gapsPerSession", -1L, "polesYoung", "three", "other", 5L));

    assertThat(limits.ageMonths()).isEqualTo(24);
    assertThat(limits.gapsPerSession()).isEqualTo(CareLimits.USUAL.gapsPerSession());
    assertThat(limits.polesYoung()).isEqualTo(CareLimits.USUAL.polesYoung());
  }

  @Test
  void onWetGroundThereAreNoSharpBends() {
    Conditions wet = new Conditions(null, null, null, Conditions.Footing.WET);
    Conditions dry = new Conditions(null, null, null, Conditions.Footing.DRY);

    assertThat(permit(List.of(), wet, GROWN).sharpBendsMax()).isZero();
    assertThat(permit(List.of(), wet, GROWN).gapsMax()).isEqualTo(90);
    assertThat(ids(permit(List.of(), wet, GROWN))).contains("wet-ground");
    assertThat(permit(List.of(), dry, GROWN).sharpBendsMax()).isEqualTo(10);
  }

  @Test
  void aSessionOnALineOverTwiceAsLongSaysHowMuchMoreARepIs() {
    CarePermit onFour = permit(run(3, 4, 0, NOW.minus(Duration.ofDays(3))), GROWN);

    CareNote note = onFour.planned(onLine(12)).notes().getFirst();
    assertThat(note.id()).isEqualTo("longer-line-ahead");
    assertThat(note.text()).contains("3.7 times");
    assertThat(onFour.planned(onLine(7))).isEqualTo(onFour);
    assertThat(permit(List.of(), GROWN).planned(onLine(12)).notes())
        .isEqualTo(permit(List.of(), GROWN).notes());
  }

  private static SessionAhead onLine(int poles) {
    return new SessionAhead(poles, false, false);
  }

  @Test
  void everyNoteSaysWhereItComesFrom() {
    assertThat(
            permit(List.of(), born(null), rested(null))
                .planned(new SessionAhead(4, true, true))
                .notes())
        .hasSize(4)
        .allMatch(note -> !note.source().isBlank() && !note.text().isBlank());
  }

  @Test
  void whatWasRunTodayCountsTowardsTheSession() {
    CarePermit some = permit(run(5, 4, 70, NOW.minusSeconds(60)), GROWN);
    CarePermit full = permit(run(30, 4, 0, NOW.minusSeconds(60)), GROWN);

    assertThat(some.gapsMax()).isEqualTo(90 - 15);
    assertThat(some.sharpBendsMax()).isEqualTo(10 - 5);
    assertThat(full.mayTrain()).isFalse();
    assertThat(ids(full).getFirst()).isEqualTo("day-is-full");
  }

  @Test
  void aWeekThatOutgrowsTheWeeksBeforeIsHeldShort() {
    List<PlacedRep> reps = new ArrayList<>();
    for (int week = 4; week >= 1; week--) {
      reps.addAll(run(14, 4, 0, NOW.minus(Duration.ofDays(7L * week + 2))));
    }
    CarePermit steady = permit(reps, GROWN);
    reps.addAll(run(22, 4, 0, NOW.minus(Duration.ofDays(2))));
    CarePermit grown = permit(reps, GROWN);

    assertThat(steady.load().usualGaps()).isEqualTo(42);
    assertThat(steady.gapsMax()).isEqualTo(63);
    assertThat(growth(steady).severity()).isEqualTo(Severity.NOTE);
    assertThat(growth(steady).text()).contains("held to 63 gaps");
    assertThat(grown.gapsMax()).isEqualTo(24);
    assertThat(growth(grown).severity()).isEqualTo(Severity.CAUTION);
    assertThat(grown.mayTrain()).isTrue();
  }

  @Test
  void whoTrainsOnTheSameWeekdayHasOneClassInSevenDays() {
    List<PlacedRep> reps = new ArrayList<>(run(4, 4, 0, Instant.parse("2026-05-25T18:00:00Z")));
    assertThat(permit(reps, GROWN).load().week().gaps()).isZero();
    assertThat(permit(reps, GROWN).load().before().gaps()).isEqualTo(12);

    reps.addAll(run(1, 4, 0, Instant.parse("2026-05-26T00:00:00Z")));
    reps.addAll(run(1, 4, 0, Instant.parse("2026-06-01T23:59:59Z")));
    assertThat(permit(reps, GROWN).load().week().gaps()).isEqualTo(6);
    assertThat(permit(reps, GROWN).load().today().gaps()).isEqualTo(3);

    CarePermit inAuckland =
        CareReview.of(
            given(GROWN).whenAsked().registry().dog("juniper").orElseThrow(),
            new Trained(reps, List.of(), List.of()),
            new CareQuestion(
                CareLimits.USUAL, Conditions.NOT_SAID, TODAY, ZoneId.of("Pacific/Auckland")));
    assertThat(inAuckland.load().today().gaps()).isZero();
    assertThat(inAuckland.load().week().gaps()).isEqualTo(15);
  }

  @Test
  void howMuchALoadThatGrowsIsHeldToIsToldAfterHeatAndRest() {
    List<PlacedRep> reps = new ArrayList<>();
    for (int week = 4; week >= 1; week--) {
      reps.addAll(run(14, 4, 0, NOW.minus(Duration.ofDays(7L * week + 2))));
    }
    CarePermit hot = permit(reps, warm(25), GROWN);
    CarePermit back = permit(reps, GROWN, rested(LocalDate.parse("2026-05-25")));
    CarePermit tooHot = permit(reps, warm(34), GROWN);
    CarePermit resting = permit(reps, GROWN, rested(null));

    assertThat(hot.gapsMax()).isEqualTo(31);
    assertThat(growth(hot).text()).contains("held to 31 gaps");
    assertThat(back.gapsMax()).isEqualTo(42);
    assertThat(growth(back).text()).contains("held to 42 gaps");
    assertThat(ids(tooHot)).containsExactly("too-hot");
    assertThat(ids(resting)).containsExactly("resting");
  }

  private static CareNote growth(CarePermit permit) {
    return permit.notes().stream()
        .filter(note -> note.id().equals("load-grows"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void fromFourPolesToTwelveIsAlmostAFourfoldLoad() {
    List<PlacedRep> reps = new ArrayList<>(run(4, 4, 0, NOW.minus(Duration.ofDays(20))));
    reps.addAll(run(2, 12, 0, NOW.minus(Duration.ofDays(1))));

    assertThat(permit(reps, GROWN).notes())
        .filteredOn(note -> note.id().equals("longer-line"))
        .singleElement()
        .satisfies(note -> assertThat(note.text()).contains("3.7 times the load"));
  }

  @Test
  void heatIsGraded() {
    assertThat(ids(permit(List.of(), warm(15), GROWN))).isEmpty();
    assertThat(ids(permit(List.of(), warm(22), GROWN))).contains("warm");
    assertThat(ids(permit(List.of(), warm(25), GROWN))).contains("hot");
    assertThat(permit(List.of(), warm(25), GROWN).gapsMax()).isEqualTo(45);
    assertThat(permit(List.of(), warm(34), GROWN).mayTrain()).isFalse();
    assertThat(permit(List.of(), warm(34), GROWN).notes().getFirst().text())
        .contains("cool it first");
  }

  private static Conditions warm(double celsius) {
    return new Conditions(celsius, null, null, null);
  }

  @Test
  void aClearanceOnlyEverLowersLimits() {
    CarePermit within =
        permit(List.of(), GROWN, clearedUpTo(Map.of("poles", 6L, "gapsPerSession", 30L)));
    CarePermit beyond = permit(List.of(), GROWN, clearedUpTo(Map.of("gapsPerSession", 500L)));

    assertThat(within.polesMax()).isEqualTo(6);
    assertThat(within.gapsMax()).isEqualTo(30);
    assertThat(within.notes())
        .filteredOn(note -> note.id().equals("cleared-within-limits"))
        .singleElement()
        .satisfies(
            note -> assertThat(note.text()).contains("(30 gaps a session, 6 poles); they are"));
    assertThat(beyond.gapsMax()).isEqualTo(90);
  }

  @Test
  void aClearanceSaysInWordsWhatIsKeptTo() {
    Map<String, Object> all =
        Map.of(
            "gapsPerSession", 1L,
            "gapsPerWeek", 40L,
            "poles", 4L,
            "sharpBendsPerSession", 0L,
            "growthPercent", 20L,
            "easeBackDays", 21L,
            "heatCaution", 18L,
            "heatStop", 24L,
            "ageMonths", 12L);

    assertThat(permit(List.of(), GROWN, clearedUpTo(all)).notes().getFirst().text())
        .contains(
            "(1 gap a session, 40 gaps a week, 4 poles, no sharp bends a session, weeks that grow"
                + " by at most 20%, 21 days of easing back, half the load from 18 °C, no poles from"
                + " 24 °C)");
    assertThat(ids(permit(List.of(), GROWN, clearedUpTo(Map.of("ageMonths", 12L))))).isEmpty();
  }

  private static Happening clearedUpTo(Map<String, Object> limits) {
    return Happening.of(new DogCleared("juniper", "the vet", limits)).at(20);
  }
}
