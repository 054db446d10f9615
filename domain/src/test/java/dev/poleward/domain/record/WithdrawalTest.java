package dev.poleward.domain.record;

import static dev.poleward.domain.event.Outcome.CLEAN;
import static dev.poleward.domain.history.Tell.dogRegistered;
import static dev.poleward.domain.history.Tell.rep;
import static dev.poleward.domain.history.Tell.sessionOpened;
import static dev.poleward.domain.history.Tell.setupAt;
import static dev.poleward.domain.history.Tell.withdrawn;
import static dev.poleward.domain.history.Told.given;
import static dev.poleward.domain.history.Told.givenTraining;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.ClubEvent.ClubRegistered;
import dev.poleward.domain.event.ClubEvent.ClubSettingsChanged;
import dev.poleward.domain.event.ClubEvent.PersonForgotten;
import dev.poleward.domain.event.ProgrammeEvent.PlanIssued;
import dev.poleward.domain.history.Asked;
import dev.poleward.domain.history.Happening;
import dev.poleward.domain.history.Told;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** An event was a mistake. Final. */
class WithdrawalTest {

  @Test
  void aWithdrawnRepIsGone() {
    Told told = givenTraining(rep(CLEAN).as("a"), withdrawn("a"));

    assertThat(told.whenAsked().repsOf("juniper")).isEmpty();
    assertThat(told.whenAsked().repsIn("s-1")).isEmpty();
    assertThat(told.whenAsked().waiting()).isEmpty();
  }

  @Test
  void aWithdrawalThatComesFirstHoldsToo() {
    Told told = givenTraining(withdrawn("a").at(1), rep(CLEAN).at(5).as("a"));

    assertThat(told.whenAsked().repsOf("juniper")).isEmpty();
    assertThat(told.whenAsked().waiting()).isEmpty();
  }

  @Test
  void untilThenItWaitsForWhatItWithdraws() {
    Told told = givenTraining(withdrawn("a").as("w"));

    assertThat(told.whenAsked().waiting())
        .isEqualTo(Map.of("w", List.of(new EntityRef(EntityKind.EVENT, "a"))));
  }

  @Test
  void aWithdrawalCannotBeWithdrawn() {
    Told told =
        givenTraining(
            rep(CLEAN).as("a"), withdrawn("a").as("b"), withdrawn("b").as("c"), withdrawn("c"));

    assertThat(told.whenAsked().repsOf("juniper")).isEmpty();
  }

  @Test
  void aWithdrawalOfItselfChangesNothing() {
    Told told = givenTraining(rep(CLEAN).as("a"), withdrawn("w").as("w"));

    assertThat(told.whenAsked().repsOf("juniper")).containsExactly("r-1");
    assertThat(told.whenAsked().waiting()).isEmpty();
  }

  @Test
  void withdrawingTwiceIsWithdrawingOnce() {
    Told told = givenTraining(rep(CLEAN).as("a"), rep("r-2"), withdrawn("a"), withdrawn("a"));

    assertThat(told.whenAsked().repsOf("juniper")).containsExactly("r-2");
  }

  @Test
  void theSetupBeforeAWithdrawnOneIsInForce() {
    Told told = givenTraining(setupAt(15), setupAt(60).as("a"), rep(CLEAN), withdrawn("a"));

    assertThat(told.whenAsked().angleOf("r-1")).isEqualTo(15);
  }

  @Test
  void withoutItsRegistrationADogsRepsWaitAgain() {
    Told told =
        given(
            dogRegistered("juniper").as("dog"),
            sessionOpened("s-1"),
            rep(CLEAN).as("a"),
            withdrawn("dog"));

    assertThat(told.whenAsked().repsOf("juniper")).isEmpty();
    assertThat(told.whenAsked().registry().dog("juniper")).isEmpty();
    assertThat(told.whenAsked().waiting())
        .isEqualTo(Map.of("a", List.of(new EntityRef(EntityKind.DOG, "juniper"))));
  }

  @Test
  void registeredOnceMoreItsRepsCountAgain() {
    Told told =
        given(
            dogRegistered("juniper").as("dog"),
            sessionOpened("s-1"),
            rep(CLEAN),
            withdrawn("dog"),
            dogRegistered("juniper"));

    assertThat(told.whenAsked().repsOf("juniper")).containsExactly("r-1");
  }

  @Test
  void whatOnlyTheServiceWritesCannotBeWithdrawn() {
    assertThat(
            Precedence.canBeWithdrawn(
                new ClubRegistered("saltmarsh", "Saltmarsh", "Europe/Lisbon", null, null)))
        .isFalse();
    assertThat(Precedence.canBeWithdrawn(new PersonForgotten("robin"))).isFalse();
    assertThat(Precedence.canBeWithdrawn(new PlanIssued("l-1", "juniper", Map.of()))).isFalse();

    Asked asked =
        given(
                Happening.of(
                        new ClubRegistered("saltmarsh", "Saltmarsh", "Europe/Lisbon", null, null))
                    .as("club"),
                withdrawn("club"))
            .whenAsked();
    assertThat(asked.registry().club()).isPresent();
  }

  @Test
  void theClubsSettingsCanBeWithdrawn() {
    Asked asked =
        given(
                Happening.of(
                    new ClubRegistered("saltmarsh", "Saltmarsh", "Europe/Lisbon", null, null)),
                Happening.of(new ClubSettingsChanged("Saltmarsh Weavers", null, null, null))
                    .as("a"),
                withdrawn("a"))
            .whenAsked();

    assertThat(asked.registry().club().orElseThrow().name()).isEqualTo("Saltmarsh");
  }

  /** Corrections hold at the time of what they concern. */
  @Test
  void noAsOfBringsAWithdrawnRepBack() {
    Told told = givenTraining(rep(CLEAN).at(1).as("a"), withdrawn("a").at(50));

    assertThat(told.whenAskedAsOf(10).repsOf("juniper")).isEmpty();
  }

  @Test
  void butBeforeItWasWithdrawnItWasKnown() {
    Told told = givenTraining(rep(CLEAN).as("a").recordedAt(100), withdrawn("a").recordedAt(200));

    assertThat(told.whenAskedKnownAt(199).repsOf("juniper")).containsExactly("r-1");
    assertThat(told.whenAskedKnownAt(200).repsOf("juniper")).isEmpty();
  }

  @Test
  void theFirstOfSeveralWithdrawalsCounts() {
    Told told =
        givenTraining(
            rep(CLEAN).as("a").recordedAt(100),
            withdrawn("a").recordedAt(300),
            withdrawn("a").recordedAt(200));

    assertThat(told.whenAskedKnownAt(250).repsOf("juniper")).isEmpty();
    assertThat(told.whenAskedKnownAt(150).repsOf("juniper")).containsExactly("r-1");
  }
}
