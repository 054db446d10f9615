package dev.poleward.domain.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.mastery.Proportion;
import dev.poleward.domain.programme.Handling;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MisfitTest {

  private static final Handling ALONGSIDE = new Handling(Manoeuvre.ALONGSIDE, DogSide.LEFT, null);
  private static final Handling REAR_CROSS = new Handling(Manoeuvre.REAR_CROSS, DogSide.LEFT, null);
  private static final Handling RECALL = new Handling(Manoeuvre.RECALL, null, null);
  private static final List<Handling> LISTED = List.of(ALONGSIDE, REAR_CROSS, RECALL);

  /**
   * Fisher 1935: the lady tasting tea, all four right in one of 70 ways, three or more in 17 [D];
   * his twins: of 13 twins 10 convicted, of 17 others 2: 0.000465 [M], by hand [D].
   */
  @ParameterizedTest
  @CsvSource({
    "4, 4, 4, 8, 0.0142857143",
    "3, 4, 4, 8, 0.2428571429",
    "10, 13, 12, 30, 0.0004651809",
    "0, 4, 4, 8, 1",
    "0, 0, 4, 8, 1",
    "0, 0, 0, 0, 1",
    "3, 3, 3, 3, 1",
  })
  void theChanceIsFishers(int missed, int of, int missedOfAll, int all, double chance) {
    assertThat(Misfit.chance(missed, of, missedOfAll, all)).isCloseTo(chance, within(0.6e-10));
  }

  @Test
  void whenTheRestIsCleanAndOneHandlingIsMostlyMissedItIsNamed() {
    List<HandledRep> reps = new ArrayList<>();
    add(reps, ALONGSIDE, 9, 1);
    add(reps, REAR_CROSS, 1, 4);
    add(reps, RECALL, 10, 0);

    assertThat(Misfit.among(LISTED, reps, 0.05))
        .singleElement()
        .satisfies(
            misfit -> {
              assertThat(misfit.handling()).isEqualTo(REAR_CROSS);
              assertThat(misfit.own()).isEqualTo(new Proportion(1, 4));
              assertThat(misfit.others()).isEqualTo(new Proportion(19, 1));
            });
  }

  @Test
  void twoMissesOfTwoAreTooFewToNameAHandling() {
    List<HandledRep> reps = new ArrayList<>();
    add(reps, ALONGSIDE, 8, 2);
    add(reps, REAR_CROSS, 0, 2);

    assertThat(Misfit.among(LISTED, reps, 0.05)).isEmpty();
  }

  @Test
  void whatWasHardOnceAndIsCleanNowIsNoMisfit() {
    List<HandledRep> reps = new ArrayList<>();
    add(reps, REAR_CROSS, 0, 10);
    add(reps, ALONGSIDE, 20, 0);
    assertThat(Misfit.among(LISTED, reps, 0.05)).isNotEmpty();

    add(reps, REAR_CROSS, Misfit.REPS_EACH_MAX, 0);
    assertThat(Misfit.among(LISTED, reps, 0.05)).isEmpty();
  }

  @Test
  void withoutRepsOrWithOneHandlingNothingLags() {
    List<HandledRep> missed = new ArrayList<>();
    add(missed, ALONGSIDE, 0, 12);

    assertThat(Misfit.among(LISTED, List.of(), 0.05)).isEmpty();
    assertThat(Misfit.among(List.of(), List.of(), 0.05)).isEmpty();
    assertThat(Misfit.among(List.of(ALONGSIDE), missed, 0.05)).isEmpty();
  }

  @Test
  void amongTheLastRepsTheOrderDoesNotShow() {
    List<HandledRep> reps = new ArrayList<>();
    add(reps, ALONGSIDE, 14, 2);
    add(reps, REAR_CROSS, 2, 5);
    List<Misfit> misfits = Misfit.among(LISTED, reps, 0.05);
    Collections.reverse(reps);

    assertThat(Misfit.among(LISTED, reps, 0.05)).isEqualTo(misfits).isNotEmpty();
  }

  /** Simulated, seed 11: rungs whose handlings are all alike are seldom flagged. */
  @ParameterizedTest
  @CsvSource({".05, .7", ".05, .9", ".2, .8"})
  void handlingsThatAreAlikeAreFlaggedNoMoreOftenThanWasAsked(double wrong, double share) {
    int rungs = 4_000;
    int flagged = flagged(rungs, wrong, share, share);

    assertThat((double) flagged / rungs).isLessThanOrEqualTo(wrong);
  }

  /** Simulated, seed 11: one at 0.4 among others at 0.9, some eight reps each. */
  @Test
  void aHandlingThatLagsByHalfIsFoundAboutEverySecondTime() {
    int rungs = 1_000;

    assertThat((double) flagged(rungs, 0.05, 0.9, 0.4) / rungs).isGreaterThan(0.45);
  }

  private static int flagged(int rungs, double wrong, double share, double shareOfRecall) {
    SplittableRandom random = new SplittableRandom(11);
    int flagged = 0;
    for (int rung = 0; rung < rungs; rung++) {
      List<HandledRep> reps = new ArrayList<>();
      for (int rep = 0; rep < 24; rep++) {
        Handling handling = LISTED.get(random.nextInt(LISTED.size()));
        double chance = handling.equals(RECALL) ? shareOfRecall : share;
        reps.add(new HandledRep(handling, random.nextDouble() < chance));
      }
      flagged += Misfit.among(LISTED, reps, wrong).isEmpty() ? 0 : 1;
    }
    return flagged;
  }

  private static void add(List<HandledRep> reps, Handling handling, int clean, int missed) {
    reps.addAll(Collections.nCopies(clean, new HandledRep(handling, true)));
    reps.addAll(Collections.nCopies(missed, new HandledRep(handling, false)));
  }
}
