package dev.poleward.domain.mastery;

import static dev.poleward.domain.history.Tell.barePoles;
import static dev.poleward.domain.history.Tell.rep;
import static dev.poleward.domain.history.Tell.tunnelAt;
import static dev.poleward.domain.history.Told.givenTraining;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.Help;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.history.Happening;
import dev.poleward.domain.history.RepTelling;
import dev.poleward.domain.history.Told;
import dev.poleward.domain.layout.LeadIn;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which reps a curve is about, and which of them were made. */
class WhatCountsTest {

  @ParameterizedTest
  @CsvSource({
    "CLEAN, true, true",
    "POPPED_OUT, true, false",
    "BACK_WEAVE, true, false",
    "SKIPPED_POLE, true, false",
    "MISSED_ENTRY, false, false",
    "NO_ATTEMPT, false, false",
  })
  void anOutcomeIsAnEntryMadeOrClean(Outcome outcome, boolean entry, boolean clean) {
    Told told = givenTraining(rep("r-1", rep -> rep.from(45).ended(outcome)));

    assertThat(side(told, Questions.of(Success.ENTRY)).made()).isEqualTo(entry ? 1 : 0);
    assertThat(side(told, Questions.of(Success.CLEAN)).made()).isEqualTo(clean ? 1 : 0);
    assertThat(side(told, Questions.ANY).reps()).isEqualTo(1);
  }

  @Test
  void whoSkipsPole1HasMissedTheEntryAndWhoSkipsALaterOneHasNot() {
    Told told =
        givenTraining(
            rep("r-1", rep -> rep.from(45).ended(Outcome.SKIPPED_POLE).atPole(1)),
            rep("r-2", rep -> rep.from(45).ended(Outcome.SKIPPED_POLE).atPole(2)),
            rep("r-3", rep -> rep.from(45).ended(Outcome.POPPED_OUT).atPole(1)));

    assertThat(side(told, Questions.of(Success.ENTRY)).made()).isEqualTo(2);
    assertThat(side(told, Questions.of(Success.CLEAN)).made()).isZero();
  }

  @Test
  void voidRepsAreOutsideAllStatistics() {
    Told told =
        givenTraining(
            rep("r-1", rep -> rep.from(45)), rep("r-2", rep -> rep.from(45).ended(Outcome.VOID)));

    assertThat(side(told, Questions.ANY).reps()).isEqualTo(1);
  }

  @Test
  void repsFromNobodyKnowsWhereAreLeftOut() {
    Told told =
        givenTraining(
            rep("r-1", rep -> rep.over(barePoles(4))),
            rep("r-2", rep -> rep),
            rep("r-3", rep -> rep.over(barePoles(4)).from(30)));

    assertThat(side(told, Questions.ANY).reps()).isEqualTo(1);
  }

  @Test
  void helpedRepsAreLeftOutUnlessAskedFor() {
    Told told =
        givenTraining(
            rep("r-1", rep -> rep.from(45)),
            rep("r-2", rep -> rep.from(45).help(Help.NONE)),
            rep("r-3", rep -> rep.from(45).help(Help.LURE)),
            rep("r-4", rep -> rep.from(45).help(Help.CUE)));

    assertThat(side(told, asking(null, null, null, null, null)).reps()).isEqualTo(2);
    assertThat(side(told, asking(null, null, null, null, Help.NONE)).reps()).isEqualTo(2);
    assertThat(side(told, asking(null, null, null, null, Help.LURE)).reps()).isEqualTo(1);
    assertThat(side(told, asking(null, null, null, null, Help.GUIDE)).reps()).isZero();
  }

  @Test
  void filtersNarrowAndThoseLeftOutPool() {
    UnaryOperator<RepTelling> said = rep -> rep.from(30);
    Told told =
        givenTraining(
            rep("r-1", rep -> said.apply(rep).over(tunnelAt(30))),
            rep("r-2", rep -> said.apply(rep).over(barePoles(6))),
            rep("r-3", rep -> said.apply(rep).with(Manoeuvre.RECALL)),
            rep("r-4", rep -> said.apply(rep).dogSide(DogSide.LEFT)),
            rep("r-5", rep -> said.apply(rep).dogSide(DogSide.RIGHT).over(tunnelAt(30))));

    assertThat(reps(told, null, null, null, null)).isEqualTo(5);
    assertThat(reps(told, 4, null, null, null)).isEqualTo(2);
    assertThat(reps(told, 6, null, null, null)).isEqualTo(1);
    assertThat(reps(told, null, Manoeuvre.RECALL, null, null)).isEqualTo(1);
    assertThat(reps(told, null, Manoeuvre.ALONGSIDE, null, null)).isEqualTo(4);
    assertThat(reps(told, null, null, DogSide.LEFT, null)).isEqualTo(1);
    assertThat(reps(told, null, null, null, LeadIn.TUNNEL)).isEqualTo(2);
    assertThat(reps(told, null, null, null, LeadIn.NONE)).isEqualTo(1);
    assertThat(reps(told, 4, Manoeuvre.ALONGSIDE, DogSide.RIGHT, LeadIn.TUNNEL)).isEqualTo(1);
  }

  /** Told in any order, the curve has the same bits. */
  @Test
  void theOrderOfTellingDoesNotMatter() {
    Happening one = rep("r-1", rep -> rep.from(45)).at(1).as("a");
    Happening two = rep("r-2", rep -> rep.from(30).ended(Outcome.NO_ATTEMPT)).at(1).as("b");
    Happening three = rep("r-3", rep -> rep.from(45).ended(Outcome.MISSED_ENTRY)).at(7).as("c");

    assertThat(side(givenTraining(three, one, two), Questions.withHalfLife(3)))
        .isEqualTo(side(givenTraining(two, three, one), Questions.withHalfLife(3)));
  }

  @Test
  void aLevelIsBetweenNoneAndAllAndAHalfLifeIsATime() {
    for (double level : new double[] {0, 1, -0.1, Double.NaN}) {
      assertThatThrownBy(() -> Questions.atLevel(level))
          .isInstanceOf(IllegalArgumentException.class);
    }
    for (double days : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThatThrownBy(() -> Questions.withHalfLife(days))
          .isInstanceOf(IllegalArgumentException.class);
    }
  }

  private static int reps(
      Told told,
      @Nullable Integer poles,
      @Nullable Manoeuvre manoeuvre,
      @Nullable DogSide dogSide,
      @Nullable LeadIn leadIn) {
    return side(told, asking(poles, manoeuvre, dogSide, leadIn, null)).reps();
  }

  private static MasteryQuestion asking(
      @Nullable Integer poles,
      @Nullable Manoeuvre manoeuvre,
      @Nullable DogSide dogSide,
      @Nullable LeadIn leadIn,
      @Nullable Help help) {
    return new MasteryQuestion(
        poles, 0.8, null, LimitMethod.PROFILE, Success.ENTRY, manoeuvre, dogSide, leadIn, help);
  }

  private static SideMastery side(Told told, MasteryQuestion question) {
    return MasteryCurve.of(told.whenAsked().placement().ofDog("juniper"), question, Told.minute(60))
        .sides()
        .getFirst();
  }
}
