package dev.poleward.domain.record;

import static dev.poleward.domain.event.Outcome.BACK_WEAVE;
import static dev.poleward.domain.event.Outcome.CLEAN;
import static dev.poleward.domain.event.Outcome.MISSED_ENTRY;
import static dev.poleward.domain.history.Tell.amended;
import static dev.poleward.domain.history.Tell.dogRegistered;
import static dev.poleward.domain.history.Tell.rep;
import static dev.poleward.domain.history.Tell.withdrawn;
import static dev.poleward.domain.history.Told.given;
import static dev.poleward.domain.history.Told.givenTraining;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.history.Told;
import org.junit.jupiter.api.Test;

/** One thing announced twice under different event ids: the least (time, id) stands. */
class DuplicateTest {

  @Test
  void theEarliestLoggingStandsAndTheOthersAreListed() {
    Told told =
        givenTraining(
            rep("r-1", rep -> rep.ended(BACK_WEAVE)).at(9).as("third"),
            rep("r-1", rep -> rep.ended(CLEAN)).at(3).as("first"),
            rep("r-1", rep -> rep.ended(MISSED_ENTRY)).at(5).as("second"));

    PlacedRep placed = told.whenAsked().rep("r-1");

    assertThat(told.whenAsked().repsOf("juniper")).containsExactly("r-1");
    assertThat(placed.outcome()).isEqualTo(CLEAN);
    assertThat(placed.moment().id()).isEqualTo("first");
    assertThat(placed.duplicates()).containsExactly("second", "third");
  }

  @Test
  void atOneInstantTheLeastIdStands() {
    Told told =
        givenTraining(
            rep("r-1", rep -> rep.ended(BACK_WEAVE)).at(5).as("b"),
            rep("r-1", rep -> rep.ended(CLEAN)).at(5).as("a"));

    assertThat(told.whenAsked().rep("r-1").outcome()).isEqualTo(CLEAN);
  }

  /** By their bytes: capitals come before small letters, digits before both. */
  @Test
  void idsAreComparedByTheirBytes() {
    Told told =
        givenTraining(
            rep("r-1", rep -> rep.ended(BACK_WEAVE)).at(5).as("a"),
            rep("r-1", rep -> rep.ended(CLEAN)).at(5).as("B"));

    assertThat(told.whenAsked().rep("r-1").outcome()).isEqualTo(CLEAN);
  }

  @Test
  void theNextStandsWhenTheFirstIsWithdrawn() {
    Told told =
        givenTraining(
            rep("r-1", rep -> rep.ended(CLEAN)).at(3).as("first"),
            rep("r-1", rep -> rep.ended(MISSED_ENTRY)).at(5).as("second"),
            rep("r-1", rep -> rep.ended(BACK_WEAVE)).at(9).as("third"),
            withdrawn("first"));

    PlacedRep placed = told.whenAsked().rep("r-1");

    assertThat(placed.outcome()).isEqualTo(MISSED_ENTRY);
    assertThat(placed.duplicates()).containsExactly("third");
  }

  @Test
  void whereTheFirstWasNotKnownYetTheNextStood() {
    Told told =
        givenTraining(
            rep("r-1", rep -> rep.ended(CLEAN)).at(3).recordedAt(200),
            rep("r-1", rep -> rep.ended(MISSED_ENTRY)).at(5).recordedAt(100));

    assertThat(told.whenAskedKnownAt(150).rep("r-1").outcome()).isEqualTo(MISSED_ENTRY);
    assertThat(told.whenAskedKnownAt(150).rep("r-1").duplicates()).isEmpty();
    assertThat(told.whenAskedKnownAt(200).rep("r-1").outcome()).isEqualTo(CLEAN);
  }

  @Test
  void aDuplicateThatHadNotHappenedYetIsNotListed() {
    Told told = givenTraining(rep("r-1").at(3), rep("r-1").at(9).as("later"));

    assertThat(told.whenAskedAsOf(8).rep("r-1").duplicates()).isEmpty();
    assertThat(told.whenAskedAsOf(9).rep("r-1").duplicates()).containsExactly("later");
  }

  @Test
  void aRepLoggedForTwoDogsIsTheFirstDogs() {
    Told told = givenTraining(rep("r-1", rep -> rep.by("bramble")).at(5), rep("r-1").at(3));

    assertThat(told.whenAsked().repsOf("juniper")).containsExactly("r-1");
    assertThat(told.whenAsked().repsOf("bramble")).isEmpty();
    assertThat(told.whenAsked().repsIn("s-1")).containsExactly("r-1");
  }

  @Test
  void anAmendmentIsOfTheRepWhicheverLoggingStands() {
    Told told =
        givenTraining(
            rep("r-1").at(3).as("first"),
            rep("r-1").at(5),
            amended("r-1", rep -> rep.by("bramble")),
            withdrawn("first"));

    assertThat(told.whenAsked().repsOf("bramble")).containsExactly("r-1");
    assertThat(told.whenAsked().repsOf("juniper")).isEmpty();
  }

  /** The one that stands is the rep: it waits, and no other takes its place meanwhile. */
  @Test
  void theFirstStandsEvenWhileItWaits() {
    Told told =
        givenTraining(
            rep("r-1", rep -> rep.by("sorrel")).at(3).as("first"), rep("r-1").at(5).as("second"));

    assertThat(told.whenAsked().repsOf("juniper")).isEmpty();
    assertThat(told.whenAsked().waiting()).containsOnlyKeys("first");
  }

  @Test
  void theEarliestRegistrationStandsAndTheOthersAreListed() {
    Told told =
        given(
            dogRegistered("juniper").at(5).as("b"),
            dogRegistered("juniper").at(9).as("a"),
            dogRegistered("juniper").at(5).as("c"));

    Registered<?> registered = told.whenAsked().dog("juniper").registered();

    assertThat(registered.standing().id()).isEqualTo("b");
    assertThat(registered.duplicates()).containsExactly("c", "a");
  }
}
