package dev.poleward.domain.record;

import static dev.poleward.domain.history.Tell.amended;
import static dev.poleward.domain.history.Tell.dogRegistered;
import static dev.poleward.domain.history.Tell.merged;
import static dev.poleward.domain.history.Tell.rep;
import static dev.poleward.domain.history.Tell.sessionOpened;
import static dev.poleward.domain.history.Tell.withdrawn;
import static dev.poleward.domain.history.Told.given;
import static dev.poleward.domain.history.Told.givenTraining;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.history.Happening;
import dev.poleward.domain.history.Told;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Two registrations were one animal. */
class DogIdentityTest {

  private static Told givenDogs(Happening... happenings) {
    List<Happening> all = new ArrayList<>();
    for (String dog : List.of("a", "b", "c", "d")) {
      all.add(dogRegistered(dog));
    }
    all.addAll(List.of(happenings));
    return given(all.toArray(Happening[]::new));
  }

  private static DogIdentity identity(Told told) {
    return told.whenAsked().placement().identity();
  }

  @Test
  void aDogIsItselfUntilItIsMerged() {
    DogIdentity identity = identity(givenDogs());

    assertThat(identity.of("a")).isEqualTo("a");
    assertThat(identity.group("a")).containsExactly("a");
    assertThat(identity.of("nobody")).isEqualTo("nobody");
  }

  @Test
  void theRepsOfBothAreTheRepsOfOne() {
    Told told =
        givenTraining(
            rep("r-1", rep -> rep.by("bramble")), rep("r-2"), merged("bramble", "juniper"));

    assertThat(told.whenAsked().repsOf("juniper")).containsExactly("r-1", "r-2");
    assertThat(told.whenAsked().repsOf("bramble")).containsExactly("r-1", "r-2");
    assertThat(told.whenAsked().rep("r-1").dog()).isEqualTo("juniper");
    assertThat(told.whenAsked().dog("bramble").mergedInto()).isEqualTo("juniper");
    assertThat(told.whenAsked().dog("juniper").mergedInto()).isNull();
    assertThat(told.whenAsked().dog("juniper").merged()).containsExactly("bramble");
  }

  @Test
  void mergesAreFollowedToTheEnd() {
    DogIdentity identity =
        identity(givenDogs(merged("c", "d"), merged("a", "b"), merged("b", "c")));

    assertThat(List.of("a", "b", "c", "d"))
        .allSatisfy(dog -> assertThat(identity.of(dog)).isEqualTo("d"));
    assertThat(identity.group("b")).containsExactly("a", "b", "c", "d");
  }

  @Test
  void inACircleTheLeastIdStandsForAll() {
    DogIdentity identity =
        identity(givenDogs(merged("c", "b"), merged("b", "d"), merged("d", "c")));

    assertThat(List.of("b", "c", "d"))
        .allSatisfy(dog -> assertThat(identity.of(dog)).isEqualTo("b"));
    assertThat(identity.of("a")).isEqualTo("a");
    assertThat(identity.group("d")).containsExactly("b", "c", "d");
  }

  @Test
  void whoIsMergedIntoACircleIsOneWithIt() {
    DogIdentity identity =
        identity(givenDogs(merged("d", "c"), merged("c", "b"), merged("b", "c"), merged("a", "d")));

    assertThat(List.of("a", "b", "c", "d"))
        .allSatisfy(dog -> assertThat(identity.of(dog)).isEqualTo("b"));
    assertThat(identity.group("b")).containsExactly("a", "b", "c", "d");
  }

  @Test
  void ofSeveralMergesOfOneDogTheLatestWins() {
    DogIdentity identity =
        identity(
            givenDogs(merged("a", "c").at(50), merged("a", "b").at(40), merged("a", "b").at(30)));

    assertThat(identity.of("a")).isEqualTo("c");
    assertThat(identity.group("b")).containsExactly("b");
  }

  @Test
  void atOneInstantTheGreaterIdWins() {
    DogIdentity identity =
        identity(givenDogs(merged("a", "c").at(50).as("z"), merged("a", "b").at(50).as("y")));

    assertThat(identity.of("a")).isEqualTo("c");
  }

  @Test
  void aWithdrawnMergeLeavesTheOneBefore() {
    DogIdentity identity =
        identity(givenDogs(merged("a", "b"), merged("a", "c").as("mistake"), withdrawn("mistake")));

    assertThat(identity.of("a")).isEqualTo("b");
  }

  @Test
  void aMergeWaitsUntilBothDogsAreKnown() {
    Told waiting = givenDogs(merged("a", "z").as("m"), merged("y", "a").as("n"));
    Told known =
        givenDogs(merged("a", "z"), merged("y", "a"), dogRegistered("y"), dogRegistered("z"));

    assertThat(identity(waiting).of("a")).isEqualTo("a");
    assertThat(waiting.whenAsked().waiting()).containsOnlyKeys("m", "n");
    assertThat(identity(known).of("y")).isEqualTo("z");
  }

  /** A correction: it holds at the time of what it concerns. */
  @Test
  void aMergeHoldsForWhatHappenedBeforeIt() {
    Told told =
        givenTraining(
            rep("r-1", rep -> rep.by("bramble")).at(1), merged("bramble", "juniper").at(50));

    assertThat(told.whenAskedAsOf(10).repsOf("juniper")).containsExactly("r-1");
  }

  @Test
  void butNotForWhatWasKnownBeforeIt() {
    Told told =
        givenTraining(
            rep("r-1", rep -> rep.by("bramble")).recordedAt(100),
            merged("bramble", "juniper").recordedAt(200));

    assertThat(told.whenAskedKnownAt(199).repsOf("juniper")).isEmpty();
    assertThat(told.whenAskedKnownAt(199).repsOf("bramble")).containsExactly("r-1");
  }

  @Test
  void aRepMovedToAMergedDogIsTheAnimals() {
    Told told =
        given(
            dogRegistered("juniper"),
            dogRegistered("bramble"),
            dogRegistered("sorrel"),
            sessionOpened("s-1"),
            merged("bramble", "juniper"),
            rep("r-1", rep -> rep.by("sorrel")),
            amended("r-1", rep -> rep.by("bramble")));

    assertThat(told.whenAsked().repsOf("juniper")).containsExactly("r-1");
    assertThat(told.whenAsked().repsOf("sorrel")).isEmpty();
  }
}
