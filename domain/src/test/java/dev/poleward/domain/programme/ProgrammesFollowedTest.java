package dev.poleward.domain.programme;

import static dev.poleward.domain.history.Tell.dogRegistered;
import static dev.poleward.domain.history.Tell.merged;
import static dev.poleward.domain.history.Tell.withdrawn;
import static dev.poleward.domain.history.Told.given;
import static dev.poleward.domain.history.Told.minute;
import static dev.poleward.domain.programme.Written.programmeOf;
import static dev.poleward.domain.programme.Written.stage;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.ProgrammeEvent.ProgrammeAssigned;
import dev.poleward.domain.event.ProgrammeEvent.ProgrammePublished;
import dev.poleward.domain.history.Asked;
import dev.poleward.domain.history.Happening;
import dev.poleward.domain.programme.ProgrammeInForce.Assigned;
import dev.poleward.domain.programme.ProgrammeInForce.Unassigned;
import dev.poleward.domain.programme.ProgrammeInForce.Unreadable;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What a dog followed when. */
class ProgrammesFollowedTest {

  private static Happening published(String programme, int version) {
    String members = "'version':" + version;
    Map<String, Object> document = programmeOf(members, stage("first"), stage("v-" + version));
    return Happening.of(new ProgrammePublished(programme, version, document));
  }

  private static Happening assigned(String dog, String programme, @Nullable String startStage) {
    return Happening.of(new ProgrammeAssigned(dog, programme, startStage));
  }

  private static Happening assigned(String programme) {
    return assigned("juniper", programme, null);
  }

  /** What was followed at each of these minutes: the programme and its version. */
  private static List<String> followed(Asked asked, int... minutes) {
    ProgrammesFollowed followed = ProgrammesFollowed.of("juniper", asked.registry());
    List<String> each = new ArrayList<>();
    for (int minute : minutes) {
      each.add(said(followed.at(minute(minute))));
    }
    return each;
  }

  private static String said(ProgrammeInForce inForce) {
    return switch (inForce) {
      case Unassigned _ -> "default";
      case Assigned it -> it.assigned().event().programme() + " " + it.programme().version();
      case Unreadable it -> it.faults().size() + " faults";
    };
  }

  @Test
  void aDogWithoutAProgrammeFollowsTheDefaultOne() {
    ProgrammesFollowed followed =
        ProgrammesFollowed.of("juniper", given(dogRegistered("juniper")).whenAsked().registry());

    assertThat(followed.periods())
        .containsExactly(new ProgrammesFollowed.Period(null, new Unassigned()));
    assertThat(new Unassigned().programme()).isEqualTo(DefaultProgramme.programme());
  }

  @Test
  void theProgrammeThatShipsCanBeAssignedAndIsNobodysToPublish() {
    String shipped = DefaultProgramme.ID;
    Asked asked =
        given(
                dogRegistered("juniper"),
                published("grid", 1).at(1),
                published(shipped, 7).at(2),
                assigned("grid").at(10),
                assigned("juniper", shipped, "four-bare").at(20))
            .whenAsked();

    assertThat(followed(asked, 9, 10, 20)).containsExactly("default", "grid 1", shipped + " 1");
    ProgrammeInForce last = ProgrammesFollowed.of("juniper", asked.registry()).at(minute(20));
    assertThat(last)
        .isInstanceOfSatisfying(
            Assigned.class,
            it -> {
              assertThat(it.programme()).isEqualTo(DefaultProgramme.programme());
              assertThat(it.startStage()).map(Stage::id).hasValue("four-bare");
            });
    assertThat(asked.registry().programme(shipped)).isEmpty();
  }

  @Test
  void anAssignmentHoldsFromItsInstantOnUntilTheNext() {
    Asked asked =
        given(
                dogRegistered("juniper"),
                published("grid", 1).at(1),
                published("clock", 1).at(1),
                assigned("grid").at(10),
                assigned("clock").at(20))
            .whenAsked();

    assertThat(followed(asked, 9, 10, 19, 20, 99))
        .containsExactly("default", "grid 1", "grid 1", "clock 1", "clock 1");
  }

  @Test
  void aNewVersionHoldsFromItsPublicationOnAndThePastStaysAsItWas() {
    Asked asked =
        given(
                dogRegistered("juniper"),
                published("grid", 1).at(1),
                assigned("grid").at(10),
                published("grid", 2).at(20),
                published("grid", 3).at(15))
            .whenAsked();

    assertThat(followed(asked, 14, 15, 20)).containsExactly("grid 1", "grid 3", "grid 3");
  }

  @Test
  void whatWasAssignedBeforeItWasPublishedIsFollowedInItsFirstVersion() {
    Asked asked =
        given(
                dogRegistered("juniper"),
                assigned("grid").at(5),
                published("grid", 1).at(10),
                published("grid", 2).at(20))
            .whenAsked();

    assertThat(followed(asked, 5, 10, 20)).containsExactly("grid 1", "grid 1", "grid 2");
  }

  @Test
  void ofTwoAssignmentsAtOneInstantTheGreaterIdIsTheLater() {
    Asked asked =
        given(
                dogRegistered("juniper"),
                published("grid", 1),
                published("clock", 1),
                assigned("grid").at(10).as("b"),
                assigned("clock").at(10).as("a"))
            .whenAsked();

    assertThat(followed(asked, 10)).containsExactly("grid 1");
  }

  @Test
  void asOfLeavesOutLaterAssignmentsAndKnownAtWhatWasNotRecorded() {
    Happening[] told = {
      dogRegistered("juniper").recordedAt(1),
      published("grid", 1).recordedAt(1),
      published("clock", 1).recordedAt(1),
      assigned("grid").at(10).recordedAt(30),
      assigned("clock").at(20).recordedAt(25)
    };

    assertThat(followed(given(told).whenAskedAsOf(15), 10, 20)).containsExactly("grid 1", "grid 1");
    assertThat(followed(given(told).whenAskedKnownAt(27), 10, 20))
        .containsExactly("default", "clock 1");
  }

  @Test
  void aWithdrawnAssignmentAndOneOfAnUnknownProgrammeDoNotHold() {
    Asked asked =
        given(
                dogRegistered("juniper"),
                published("grid", 1),
                assigned("grid").at(10).as("a"),
                withdrawn("a"),
                assigned("nobody-wrote-it").at(11))
            .whenAsked();

    assertThat(followed(asked, 99)).containsExactly("default");
  }

  @Test
  void whatIsAssignedToEitherRegistrationIsAssignedToTheAnimal() {
    Asked asked =
        given(
                dogRegistered("juniper"),
                dogRegistered("junie"),
                merged("junie", "juniper"),
                published("grid", 1),
                published("clock", 1),
                assigned("junie", "grid", null).at(10),
                assigned("juniper", "clock", null).at(20))
            .whenAsked();

    assertThat(followed(asked, 10, 20)).containsExactly("grid 1", "clock 1");
  }

  @Test
  void aDogStartsWhereItWasSaidToIfTheVersionKnowsThatStage() {
    Asked asked =
        given(
                dogRegistered("juniper"),
                published("grid", 1).at(1),
                assigned("juniper", "grid", "v-2").at(10),
                published("grid", 2).at(20))
            .whenAsked();
    ProgrammesFollowed followed = ProgrammesFollowed.of("juniper", asked.registry());

    assertThat(startStage(followed.at(minute(10)))).isNull();
    assertThat(startStage(followed.at(minute(20)))).isEqualTo("v-2");
  }

  private static @Nullable String startStage(ProgrammeInForce inForce) {
    return inForce instanceof Assigned it ? it.startStage().map(Stage::id).orElse(null) : null;
  }

  @Test
  void aDocumentOfOldThatIsNotInOrderIsToldAndNotFollowed() {
    Asked asked =
        given(
                dogRegistered("juniper"),
                Happening.of(new ProgrammePublished("grid", 1, Map.of())),
                assigned("grid").at(10))
            .whenAsked();

    assertThat(followed(asked, 9, 10)).containsExactly("default", "3 faults");
  }
}
