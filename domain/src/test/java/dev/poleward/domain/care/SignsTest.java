package dev.poleward.domain.care;

import static dev.poleward.domain.history.Tell.dogRegistered;
import static dev.poleward.domain.history.Told.given;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.DogEvent.DogCleared;
import dev.poleward.domain.event.DogTraits;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.event.RepDetails;
import dev.poleward.domain.event.Stride;
import dev.poleward.domain.history.Happening;
import dev.poleward.domain.pace.TimedRep;
import dev.poleward.domain.pace.TimedRuns;
import dev.poleward.domain.record.PlacedRep;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Signs that something may hurt. Minute 0 is on 4 May 2026. */
class SignsTest {

  private static final Instant NOW = Instant.parse("2026-06-01T17:00:00Z");
  private static final LocalDate TODAY = LocalDate.parse("2026-06-01");
  private static final Happening GROWN =
      dogRegistered("juniper", new DogTraits(LocalDate.parse("2022-01-01"), null, null, null, null))
          .at(0);

  private static CarePermit permit(List<PlacedRep> reps, Happening... told) {
    return permit(new Trained(reps, List.of(), List.of()), told);
  }

  private static CarePermit permit(Trained trained, Happening... told) {
    return CareReview.of(
        given(told).whenAsked().registry().dog("juniper").orElseThrow(),
        trained,
        new CareQuestion(CareLimits.USUAL, Conditions.NOT_SAID, TODAY, ZoneOffset.UTC));
  }

  /** Clean reps straight on over so many poles, a minute apart. */
  private static List<PlacedRep> run(int reps, int poles, Instant last) {
    List<PlacedRep> run = new ArrayList<>();
    for (int i = reps - 1; i >= 0; i--) {
      run.add(
          new TimedRuns(poles, 0, Manoeuvre.ALONGSIDE)
              .clean(last.minusSeconds(60L * i), 1.5)
              .rep());
    }
    return run;
  }

  @Test
  void aDogThatHopsWhereItStrodeRunsStraightOnUntilItIsCleared() {
    List<PlacedRep> reps = new ArrayList<>();
    run(20, 6, NOW.minus(Duration.ofDays(20))).forEach(rep -> reps.add(strode(rep, Stride.SINGLE)));
    CarePermit well = permit(reps, GROWN);
    run(7, 6, NOW.minus(Duration.ofDays(3))).forEach(rep -> reps.add(strode(rep, Stride.SINGLE)));
    run(3, 6, NOW.minus(Duration.ofDays(2))).forEach(rep -> reps.add(strode(rep, Stride.HOP)));
    CarePermit hops = permit(reps, GROWN);
    CarePermit cleared =
        permit(
            reps,
            GROWN,
            Happening.of(new DogCleared("juniper", "the vet", null)).at(28 * 24 * 60 - 1));

    assertThat(well.angleWork()).isTrue();
    assertThat(hops.angleWork()).isFalse();
    assertThat(hops.sharpBendsMax()).isZero();
    assertThat(hops.mayTrain()).isTrue();
    assertThat(hops.notes().getFirst().id()).isEqualTo("have-it-looked-at");
    assertThat(hops.notes().getFirst().text())
        .contains("hops")
        .contains("Pain")
        .contains("veterinarian");
    assertThat(cleared.angleWork()).isTrue();
  }

  @Test
  void aDogThatAlwaysHoppedIsNotSuspected() {
    List<PlacedRep> reps = new ArrayList<>();
    run(30, 6, NOW.minus(Duration.ofDays(2))).forEach(rep -> reps.add(strode(rep, Stride.HOP)));

    assertThat(permit(reps, GROWN).angleWork()).isTrue();
  }

  @Test
  void lessDriveAndSeveralSlipsAtOnceAreSigns() {
    List<PlacedRep> reps = new ArrayList<>();
    run(20, 4, NOW.minus(Duration.ofDays(20))).forEach(rep -> reps.add(driven(rep, 3)));
    run(8, 4, NOW.minus(Duration.ofDays(2))).forEach(rep -> reps.add(driven(rep, 2)));
    Instant lately = NOW.minus(Duration.ofDays(4));
    Instant longAgo = NOW.minus(Duration.ofDays(40));

    assertThat(permit(reps, GROWN).notes().getFirst().text()).contains("less keen");
    assertThat(
            permit(new Trained(List.of(), List.of(), List.of(lately, lately)), GROWN).angleWork())
        .isFalse();
    assertThat(
            permit(new Trained(List.of(), List.of(), List.of(lately, longAgo)), GROWN).angleWork())
        .isTrue();
  }

  @Test
  void aDogThatIsSlowerThanItWasRunsStraightOnUntilItIsCleared() {
    CarePermit slower = timed(1.8, null);

    assertThat(slower.angleWork()).isFalse();
    assertThat(slower.mayTrain()).isTrue();
    assertThat(slower.notes().getFirst().id()).isEqualTo("have-it-looked-at");
    assertThat(slower.notes().getFirst().text())
        .contains("slower through the poles")
        .contains("Pain")
        .contains("veterinarian");
    assertThat(timed(1.5, null).angleWork()).isTrue();
    assertThat(
            timed(1.8, Happening.of(new DogCleared("juniper", "the vet", null)).at(28 * 24 * 60))
                .angleWork())
        .isTrue();
  }

  /** Reps of 1.5 seconds on nine days, and of so many on the last four. */
  private static CarePermit timed(double seconds, @Nullable Happening cleared) {
    List<TimedRep> timed = new ArrayList<>();
    for (int day = 39; day > 0; day -= 3) {
      double usual = day > 14 ? 1.5 : seconds;
      Instant at = NOW.minus(Duration.ofDays(day));
      for (int i = 0; i < 4; i++) {
        timed.add(
            TimedRuns.OF_FOUR.clean(
                at.plus(Duration.ofMinutes(i)), usual + day / 1000.0 + i / 100.0));
      }
    }
    Happening[] told = cleared == null ? new Happening[] {GROWN} : new Happening[] {GROWN, cleared};
    return permit(new Trained(List.of(), timed, List.of()), told);
  }

  private static PlacedRep strode(PlacedRep rep, Stride stride) {
    return with(rep, null, stride);
  }

  private static PlacedRep driven(PlacedRep rep, int drive) {
    return with(rep, drive, null);
  }

  private static PlacedRep with(PlacedRep rep, @Nullable Integer drive, @Nullable Stride stride) {
    RepDetails details =
        new RepDetails(
            null, null, null, null, null, null, null, null, null, null, null, null, null, null,
            drive, stride);
    return new PlacedRep(
        rep.moment(),
        rep.rep(),
        rep.session(),
        rep.dog(),
        rep.manoeuvre(),
        rep.outcome(),
        details,
        rep.angle(),
        rep.setup(),
        null,
        null,
        List.of(),
        List.of());
  }
}
