package dev.poleward.domain.record;

import static dev.poleward.domain.history.Tell.NO_TRAITS;
import static dev.poleward.domain.history.Tell.dogAmended;
import static dev.poleward.domain.history.Tell.dogRegistered;
import static dev.poleward.domain.history.Tell.dogRenamed;
import static dev.poleward.domain.history.Tell.handlerRegistered;
import static dev.poleward.domain.history.Tell.merged;
import static dev.poleward.domain.history.Tell.withdrawn;
import static dev.poleward.domain.history.Told.given;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.DogEvent.DogCleared;
import dev.poleward.domain.event.DogEvent.DogRested;
import dev.poleward.domain.event.DogTrait;
import dev.poleward.domain.event.DogTraits;
import dev.poleward.domain.event.HeatRisk;
import dev.poleward.domain.event.ProgrammeEvent.ProgrammeAssigned;
import dev.poleward.domain.event.ProgrammeEvent.ProgrammePublished;
import dev.poleward.domain.history.Happening;
import dev.poleward.domain.history.Told;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A dog as it stands. */
class DogRecordTest {

  private static final LocalDate BORN = LocalDate.parse("2023-06-01");
  private static final DogTraits ALL =
      new DogTraits(BORN, 0.48, HeatRisk.RAISED, List.of("robin"), false);

  private static Happening published(String programme) {
    return Happening.of(new ProgrammePublished(programme, 1, Map.of()));
  }

  private static Happening assigned(String dog, String programme) {
    return Happening.of(new ProgrammeAssigned(dog, programme, null));
  }

  private static Happening rested(String dog, String reason) {
    return Happening.of(new DogRested(dog, reason, null));
  }

  private static Happening cleared(String dog, String by) {
    return Happening.of(new DogCleared(dog, by, null));
  }

  @Test
  void aDogIsAsItWasRegistered() {
    DogRecord dog = given(dogRegistered("juniper", ALL).as("a")).whenAsked().dog("juniper");

    assertThat(dog.registered().standing().id()).isEqualTo("a");
    assertThat(dog.callName()).isEqualTo("called juniper");
    assertThat(dog.traits()).isEqualTo(ALL);
    assertThat(dog.amendments()).isEmpty();
    assertThat(dog.merged()).isEmpty();
    assertThat(dog.rested()).isNull();
    assertThat(dog.cleared()).isNull();
    assertThat(dog.programme()).isNull();
  }

  @Test
  void aDogThatNobodyRegisteredIsNotThere() {
    assertThat(given(dogRenamed("juniper", "Junie")).whenAsked().registry().dog("juniper"))
        .isEmpty();
  }

  @Test
  void eachTraitIsAmendedByItself() {
    Told told =
        given(
            dogRegistered("juniper", ALL),
            handlerRegistered("robin"),
            handlerRegistered("sam"),
            dogAmended("juniper", new DogTraits(null, 0.5, null, null, null)).at(9).as("b"),
            dogAmended("juniper", new DogTraits(null, 0.49, HeatRisk.HIGH, List.of("sam"), null))
                .at(5)
                .as("a"),
            dogRenamed("juniper", "Junie").at(7).as("c"));

    DogRecord dog = told.whenAsked().dog("juniper");

    assertThat(dog.traits())
        .isEqualTo(new DogTraits(BORN, 0.5, HeatRisk.HIGH, List.of("sam"), false));
    assertThat(dog.callName()).isEqualTo("Junie");
    assertThat(dog.amendments()).extracting(Fact::id).containsExactly("a", "c", "b");
  }

  @Test
  void eachTraitIsTakenAwayByItself() {
    for (DogTrait trait : DogTrait.values()) {
      DogTraits left =
          given(
                  dogRegistered("juniper", ALL),
                  handlerRegistered("robin"),
                  dogAmended("juniper", NO_TRAITS, trait))
              .whenAsked()
              .dog("juniper")
              .traits();

      assertThat(left)
          .as("%s", trait)
          .isEqualTo(
              new DogTraits(
                  trait == DogTrait.BORN ? null : BORN,
                  trait == DogTrait.WITHERS_HEIGHT ? null : Double.valueOf(0.48),
                  trait == DogTrait.HEAT_RISK ? null : HeatRisk.RAISED,
                  trait == DogTrait.HANDLERS ? null : List.of("robin"),
                  trait == DogTrait.GUEST ? null : Boolean.FALSE));
    }
  }

  @Test
  void anAmendmentThatNamesAnUnknownHandlerWaits() {
    Told told =
        given(
            dogRegistered("juniper"),
            dogAmended("juniper", new DogTraits(BORN, null, null, List.of("robin"), null)).as("a"));

    assertThat(told.whenAsked().dog("juniper").traits()).isEqualTo(NO_TRAITS);
    assertThat(told.whenAsked().waiting()).containsOnlyKeys("a");
  }

  /** A registration stands as soon as it is recorded, even while a handler is not known. */
  @Test
  void aRegistrationStandsAtOnce() {
    Told told = given(dogRegistered("juniper", ALL).as("a"));

    assertThat(told.whenAsked().dog("juniper").traits()).isEqualTo(ALL);
    assertThat(told.whenAsked().waiting()).containsOnlyKeys("a");
  }

  @Test
  void ofRestsAndClearancesTheLatestHolds() {
    Told told =
        given(
            dogRegistered("juniper"),
            rested("juniper", "late").at(9).as("b"),
            rested("juniper", "early").at(5),
            rested("juniper", "same time").at(9).as("a"),
            cleared("juniper", "club").at(7),
            cleared("juniper", "veterinarian").at(8));

    DogRecord dog = told.whenAsked().dog("juniper");

    assertThat(dog.rested()).extracting(fact -> fact.event().reason()).isEqualTo("late");
    assertThat(dog.cleared()).extracting(fact -> fact.event().by()).isEqualTo("veterinarian");
  }

  @Test
  void asOfLeavesOutLaterRestsClearancesAndAssignmentsButNoAmendment() {
    Told told =
        given(
            dogRegistered("juniper").at(50),
            dogRenamed("juniper", "Junie").at(51),
            published("grid").at(52),
            published("round-the-clock").at(53),
            rested("juniper", "early").at(1),
            rested("juniper", "late").at(9),
            cleared("juniper", "late").at(9),
            assigned("juniper", "grid").at(1),
            assigned("juniper", "round-the-clock").at(9));

    DogRecord then = told.whenAskedAsOf(8).dog("juniper");
    DogRecord now = told.whenAsked().dog("juniper");

    assertThat(then.callName()).isEqualTo("Junie");
    assertThat(then.rested()).extracting(fact -> fact.event().reason()).isEqualTo("early");
    assertThat(then.cleared()).isNull();
    assertThat(then.programme()).extracting(fact -> fact.event().programme()).isEqualTo("grid");
    assertThat(now.programme())
        .extracting(fact -> fact.event().programme())
        .isEqualTo("round-the-clock");
  }

  @Test
  void anAssignmentOfAnUnknownProgrammeWaits() {
    Told told =
        given(
            dogRegistered("juniper"),
            published("grid"),
            assigned("juniper", "grid").at(5),
            assigned("juniper", "nobody-wrote-it").at(9));

    assertThat(told.whenAsked().dog("juniper").programme())
        .extracting(fact -> fact.event().programme())
        .isEqualTo("grid");
  }

  @Test
  void whatIsSaidOfEitherRegistrationIsSaidOfTheAnimal() {
    Told told =
        given(
            dogRegistered("juniper"),
            dogRegistered("junie"),
            merged("junie", "juniper"),
            rested("juniper", "early").at(5),
            rested("junie", "late").at(9));

    assertThat(told.whenAsked().dog("juniper").rested())
        .extracting(fact -> fact.event().reason())
        .isEqualTo("late");
    assertThat(told.whenAsked().dog("junie").rested())
        .extracting(fact -> fact.event().reason())
        .isEqualTo("late");
  }

  @Test
  void aWithdrawnRestDoesNotHold() {
    Told told = given(dogRegistered("juniper"), rested("juniper", "paw").as("a"), withdrawn("a"));

    assertThat(told.whenAsked().dog("juniper").rested()).isNull();
  }
}
