package dev.poleward.domain.planning;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.Help;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.event.Outcome;
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
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class CleanForecastTest {

  private static final Instant BEGUN = Instant.parse("2026-03-02T17:00:00Z");

  private static Drill drill(double degrees) {
    return drill(4, degrees, Manoeuvre.ALONGSIDE);
  }

  private static Drill drill(int poles, double degrees, Manoeuvre manoeuvre) {
    return new Drill(
        poles,
        new RunUp(LeadIn.NONE, null, null),
        new Rung(new EntryAngle(degrees)),
        new Handling(manoeuvre, DogSide.LEFT, null));
  }

  private static List<PlacedRep> run(Drill drill, int clean, int missed) {
    List<PlacedRep> reps = new ArrayList<>();
    for (int i = 0; i < clean + missed; i++) {
      boolean isClean = (i + 1) * clean / (clean + missed) > i * clean / (clean + missed);
      reps.add(Ran.of(drill, isClean, BEGUN.plusSeconds(60L * i)));
    }
    return reps;
  }

  private static Instant after(List<PlacedRep> reps) {
    return reps.isEmpty() ? BEGUN : reps.getLast().moment().time();
  }

  private static CleanForecast forecast(List<PlacedRep> reps) {
    return CleanForecast.of(reps, after(reps));
  }

  @Test
  void withoutRepsItExpectsLessOfLargerAnglesMorePolesAndStrangeHandlings() {
    CleanForecast any = forecast(List.of());

    assertThat(any.share(drill(0))).isGreaterThan(any.share(drill(45)));
    assertThat(any.share(drill(45))).isGreaterThan(any.share(drill(90)));
    assertThat(any.share(drill(45))).isEqualTo(any.share(drill(-45)));
    assertThat(any.share(drill(0))).isGreaterThan(any.share(drill(12, 0, Manoeuvre.ALONGSIDE)));
    assertThat(any.share(drill(0))).isGreaterThan(any.share(drill(4, 0, Manoeuvre.PRESSURE)));
    assertThat(any.expected(drill(45)).lower()).isLessThan(0.3);
    assertThat(any.expected(drill(45)).upper()).isGreaterThan(0.7);
  }

  @Test
  void manyRepsOfADrillSayMoreOfItThanTheExpectationOfAnyDog() {
    CleanForecast forecast = forecast(run(drill(60), 80, 20));

    assertThat(forecast.share(drill(60))).isBetween(0.8, 0.93);
    assertThat(forecast.expected(drill(60)).lower()).isGreaterThan(0.7);
    assertThat(forecast(run(drill(60), 20, 80)).share(drill(60))).isBetween(0.2, 0.45);
  }

  @Test
  void whoHasImprovedIsExpectedToDoAsWellAsLately() {
    List<PlacedRep> reps = new ArrayList<>(run(drill(60), 10, 30));
    run(drill(60), 36, 4)
        .forEach(
            rep ->
                reps.add(
                    Ran.of(
                        drill(60),
                        rep.outcome() == Outcome.CLEAN,
                        rep.moment().time().plus(Duration.ofHours(2)))));

    assertThat(forecast(reps).share(drill(60))).isGreaterThan(0.82);
  }

  @Test
  void whatIsLearnedOnOneSideSaysLittleOfTheOther() {
    List<PlacedRep> reps = run(drill(60), 60, 2);
    CleanForecast before = forecast(List.of());
    CleanForecast after = forecast(reps);

    double own = after.share(drill(50)) - before.share(drill(50));
    double other = after.share(drill(-50)) - before.share(drill(-50));
    assertThat(own).isGreaterThan(0.2);
    assertThat(other).isPositive().isLessThan(own);
    assertThat(after.expected(drill(-50)).lower()).isLessThan(after.expected(drill(50)).lower());
  }

  @Test
  void voidAndHelpedRepsSayNothing() {
    List<PlacedRep> reps = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      Outcome outcome = i % 2 == 0 ? Outcome.VOID : Outcome.CLEAN;
      Help help = i % 2 == 0 ? Help.NONE : Help.LURE;
      reps.add(Ran.of(drill(45), outcome, help, BEGUN.plusSeconds(i)));
    }

    assertThat(forecast(reps).expected(drill(45)))
        .isEqualTo(forecast(List.of()).expected(drill(45)));
  }

  @Test
  void whatWasLongAgoCountsLessThanWhatIsNew() {
    List<PlacedRep> reps = new ArrayList<>(run(drill(45), 0, 20));
    for (int i = 0; i < 20; i++) {
      reps.add(Ran.of(drill(45), true, BEGUN.plus(Duration.ofDays(84)).plusSeconds(i)));
    }

    assertThat(forecast(reps).share(drill(45))).isGreaterThan(0.8);
  }

  @Test
  void weeksWithoutAnyRepTakeSomethingAway() {
    List<PlacedRep> reps = run(drill(45), 18, 2);

    assertThat(CleanForecast.of(reps, after(reps).plus(Duration.ofDays(40))).share(drill(90)))
        .isLessThan(forecast(reps).share(drill(90)) - 0.05);
  }

  /** Of dogs that differ as the model says that dogs do, and drills as it says of drills. */
  @Test
  void itsLimitsHoldTheTruthAboutAsOftenAsTheySay() {
    SplittableRandom random = new SplittableRandom(7);
    int held = 0;
    int asked = 0;
    double[] mean = Traits.expected();
    double[] deviation = Traits.deviation();
    for (int dog = 0; dog < 300; dog++) {
      double[] truth = new double[mean.length];
      for (int i = 0; i < truth.length; i++) {
        truth[i] = mean[i] + deviation[i] * random.nextGaussian();
      }
      double[] beside = new double[25];
      for (int i = 0; i < beside.length; i++) {
        beside[i] = CleanForecast.DRILLS_DIFFER * random.nextGaussian();
      }
      List<PlacedRep> reps = new ArrayList<>();
      Practice practice = new Practice();
      for (int i = 0; i < 120; i++) {
        Drill drill = drill(15.0 * random.nextInt(-6, 7));
        boolean clean = random.nextDouble() < chance(truth, beside, drill, practice, 119 - i);
        reps.add(Ran.of(drill, clean, BEGUN.plusSeconds(i)));
        practice.ran(drill.rung().angle(), drill.handling().manoeuvre(), LeadIn.NONE, clean);
      }
      CleanForecast forecast = forecast(reps);
      for (double angle : new double[] {0, 45, -75, 105}) {
        var limits = forecast.expected(drill(angle));
        double chance = chance(truth, beside, drill(angle), practice, 0);
        held += limits.lower() <= chance && chance <= limits.upper() ? 1 : 0;
        asked++;
      }
    }
    assertThat((double) held / asked).as("of " + asked).isBetween(0.92, 0.98);
  }

  private static double chance(
      double[] truth, double[] beside, Drill drill, Practice practice, int repsSince) {
    double[] fresh =
        Traits.of(
            drill.poles(),
            LeadIn.NONE,
            null,
            drill.rung().angle(),
            drill.handling().manoeuvre(),
            drill.handling().dogSide(),
            practice);
    double[] traits = Traits.aged(fresh, repsSince);
    double logit = beside[12 + (int) (drill.rung().angle().degrees() / 15)];
    for (int i = 0; i < traits.length; i++) {
      logit += traits[i] * truth[i];
    }
    return CleanModel.chance(logit);
  }
}
