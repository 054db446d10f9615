package dev.poleward.domain.judgement;

import static dev.poleward.domain.history.Tell.barePoles;
import static dev.poleward.domain.history.Tell.dogRegistered;
import static dev.poleward.domain.history.Tell.rep;
import static dev.poleward.domain.history.Tell.sessionOpened;

import dev.poleward.domain.event.DogTraits;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.event.ProgrammeEvent.ProgrammeAssigned;
import dev.poleward.domain.event.ProgrammeEvent.ProgrammePublished;
import dev.poleward.domain.history.Happening;
import dev.poleward.domain.history.Told;
import dev.poleward.domain.programme.ProgrammesFollowed;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Facts;
import dev.poleward.domain.record.MemoryFacts;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.Registry;
import dev.poleward.domain.record.View;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A club whose dogs follow one drill, which five clean reps in a row make solid, and come back to
 * it after days. Minute 0 of each day is 17:00 UTC.
 */
final class ClubInTraining {

  private static final int MINUTES_A_DAY = 24 * 60;
  private static final String PROGRAMME = "straight";

  /** After each return, so that no miss adds up to a slip. */
  private static final int CLEAN_AFTERWARDS = 7;

  private final List<Happening> told = new ArrayList<>();
  private int reps;

  ClubInTraining() {
    Map<String, Object> document =
        Map.of(
            "programme",
            PROGRAMME,
            "name",
            "Straight",
            "rule",
            Map.of("method", "run", "length", 5L),
            "stages",
            List.of(
                Map.of(
                    "stage",
                    "bare",
                    "poles",
                    4L,
                    "leadIn",
                    "none",
                    "entries",
                    Map.of("clocks", List.of("12:00")),
                    "handlings",
                    List.of(Map.of("manoeuvre", "alongside")),
                    "prerequisites",
                    List.of())));
    and(
        Happening.of(new ProgrammePublished(PROGRAMME, 1, document)).at(-9).as("e-programme"),
        sessionOpened("s-1").at(-9).as("e-session"));
  }

  ClubInTraining and(Happening... happenings) {
    told.addAll(List.of(happenings));
    return this;
  }

  /** A dog of the club that has learned the drill on day 0. */
  ClubInTraining dog(String dog) {
    return dog(dog, false);
  }

  /** A dog that trains here without being of the club. */
  ClubInTraining guest(String dog) {
    return dog(dog, true);
  }

  private ClubInTraining dog(String dog, boolean isGuest) {
    and(
        dogRegistered(dog, new DogTraits(null, null, null, null, isGuest)).at(-8).as("e-" + dog),
        follows(dog));
    for (int i = 0; i < 5; i++) {
      ran(dog, 0, i, Outcome.CLEAN);
    }
    return this;
  }

  static Happening follows(String dog) {
    return Happening.of(new ProgrammeAssigned(dog, PROGRAMME, null)).at(-7).as("e-follows-" + dog);
  }

  /** On that day it comes back to the drill, and the first rep ends so. */
  ClubInTraining back(String dog, int day, Outcome outcome) {
    ran(dog, day, 0, outcome);
    for (int i = 1; i <= CLEAN_AFTERWARDS; i++) {
      ran(dog, day, i, Outcome.CLEAN);
    }
    return this;
  }

  /** Six times, each ten days after the one before: forgets it each time, or never. */
  ClubInTraining comesBack(String dog, Outcome outcome) {
    dog(dog);
    for (int day = 10; day <= 60; day += 10) {
      back(dog, day, outcome);
    }
    return this;
  }

  private void ran(String dog, int day, int minute, Outcome outcome) {
    String name = "r-%04d".formatted(reps++);
    and(
        rep(name, said -> said.by(dog).over(barePoles(4)).from(0).ended(outcome))
            .at(day * MINUTES_A_DAY + minute)
            .as("e-" + name));
  }

  /** What is recorded, in the order of telling. */
  List<Fact<?>> facts() {
    return Told.given(told.toArray(Happening[]::new)).facts();
  }

  /** The end of a day. */
  static Instant endOf(int day) {
    return Told.START.plus(Duration.ofDays(day)).plus(Duration.ofHours(7));
  }

  /** What is expected of a dog at the end of a day. */
  ClubRetention expected(String dog, int day) {
    return expected(facts(), View.EVERYTHING, dog, day);
  }

  static ClubRetention expected(List<Fact<?>> facts, View view, String dog, int day) {
    Facts known = MemoryFacts.of(facts);
    return new ClubForgetting(
            new RecordedReturns(known, view),
            new Placement(known, view).identity(),
            view,
            ZoneOffset.UTC)
        .of(dog, endOf(day));
  }

  /** Where a dog stands at the end of a day. */
  DogStanding standing(String dog, int day) {
    Facts known = MemoryFacts.of(facts());
    Placement placement = new Placement(known, View.EVERYTHING);
    return StandingHistory.of(
            placement.ofDog(dog),
            ProgrammesFollowed.of(dog, new Registry(placement, View.EVERYTHING)),
            null)
        .reading()
        .standing(endOf(day), expected(dog, day));
  }
}
