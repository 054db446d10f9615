package dev.poleward.domain.record;

import static dev.poleward.domain.event.Outcome.CLEAN;
import static dev.poleward.domain.history.Tell.amended;
import static dev.poleward.domain.history.Tell.classFormed;
import static dev.poleward.domain.history.Tell.dogRegistered;
import static dev.poleward.domain.history.Tell.handlerRegistered;
import static dev.poleward.domain.history.Tell.joined;
import static dev.poleward.domain.history.Tell.rep;
import static dev.poleward.domain.history.Tell.sessionOpened;
import static dev.poleward.domain.history.Tell.setup;
import static dev.poleward.domain.history.Tell.setupAt;
import static dev.poleward.domain.history.Tell.tunnelAt;
import static dev.poleward.domain.history.Tell.withdrawn;
import static dev.poleward.domain.history.Told.given;
import static dev.poleward.domain.history.Told.givenTraining;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.TimingEvent.TimingPaired;
import dev.poleward.domain.history.Happening;
import dev.poleward.domain.history.Told;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What refers to something unknown is kept, waits, and counts as soon as that is known. */
class WaitingTest {

  private static EntityRef dog(String id) {
    return new EntityRef(EntityKind.DOG, id);
  }

  private static EntityRef session(String id) {
    return new EntityRef(EntityKind.SESSION, id);
  }

  @Test
  void aRepWaitsForItsSessionAndItsDog() {
    Told told = given(rep(CLEAN).as("a"));

    assertThat(told.whenAsked().waiting())
        .isEqualTo(Map.of("a", List.of(session("s-1"), dog("juniper"))));
    assertThat(told.whenAsked().repsOf("juniper")).isEmpty();
    assertThat(told.whenAsked().repsIn("s-1")).isEmpty();
  }

  @Test
  void itWaitsForTheRestWhenOneOfThemIsKnown() {
    Told told = given(rep(CLEAN).as("a"), sessionOpened("s-1"));

    assertThat(told.whenAsked().waiting()).isEqualTo(Map.of("a", List.of(dog("juniper"))));
  }

  @Test
  void itCountsFromTheMomentThatBothAreRecorded() {
    Told told =
        given(
            rep(CLEAN).at(1).recordedAt(100),
            sessionOpened("s-1").at(5).recordedAt(200),
            dogRegistered("juniper").at(9).recordedAt(300));

    assertThat(told.whenAskedKnownAt(299).repsOf("juniper")).isEmpty();
    assertThat(told.whenAskedKnownAt(299).waiting()).hasSize(1);
    assertThat(told.whenAskedKnownAt(300).repsOf("juniper")).containsExactly("r-1");
    assertThat(told.whenAskedKnownAt(300).waiting()).isEmpty();
  }

  /** However late: registrations hold at the time of what they concern. */
  @Test
  void theRegistrationMayBeOfLaterThanTheRep() {
    Told told = given(rep(CLEAN).at(1), sessionOpened("s-1").at(5), dogRegistered("juniper").at(9));

    assertThat(told.whenAskedAsOf(1).repsOf("juniper")).containsExactly("r-1");
  }

  @Test
  void aRepMovedFromAnUnknownSessionToAKnownOneWaitsNoLonger() {
    Told told =
        givenTraining(
            rep("r-1", rep -> rep.in("s-9").by("sorrel")),
            amended("r-1", rep -> rep.in("s-1").by("juniper")));

    assertThat(told.whenAsked().repsOf("juniper")).containsExactly("r-1");
    assertThat(told.whenAsked().repsIn("s-1")).containsExactly("r-1");
    assertThat(told.whenAsked().waiting()).isEmpty();
  }

  @Test
  void aRepMovedToAnUnknownSessionStaysUntilThatIsKnown() {
    Told waiting = givenTraining(rep(CLEAN), amended("r-1", rep -> rep.in("s-9")).as("a"));
    Told known =
        givenTraining(rep(CLEAN), amended("r-1", rep -> rep.in("s-9")), sessionOpened("s-9"));

    assertThat(waiting.whenAsked().repsIn("s-1")).containsExactly("r-1");
    assertThat(waiting.whenAsked().waiting()).isEqualTo(Map.of("a", List.of(session("s-9"))));
    assertThat(known.whenAsked().repsIn("s-9")).containsExactly("r-1");
    assertThat(known.whenAsked().repsIn("s-1")).isEmpty();
  }

  @Test
  void aRepWaitsForThoseWhoHandledAndObserved() {
    Told told =
        givenTraining(
            rep("r-1", rep -> rep.handler("robin").observer("sam")).as("a"),
            handlerRegistered("sam"));

    assertThat(told.whenAsked().waiting())
        .isEqualTo(Map.of("a", List.of(new EntityRef(EntityKind.HANDLER, "robin"))));
  }

  @Test
  void anAmendmentWaitsForItsRep() {
    Told told = givenTraining(amended("r-1", rep -> rep.drive(1)).as("a"));

    assertThat(told.whenAsked().waiting())
        .isEqualTo(Map.of("a", List.of(new EntityRef(EntityKind.REP, "r-1"))));
  }

  @Test
  void anAmendmentOfARepThatWaitsDoesNotWait() {
    Told told =
        givenTraining(
            rep("r-1", rep -> rep.by("sorrel")).as("rep"), amended("r-1", rep -> rep.drive(1)));

    assertThat(told.whenAsked().waiting()).containsOnlyKeys("rep");
  }

  @Test
  void whatWaitsIsListedInOrder() {
    List<Waiting.WaitingEvent> waiting =
        Waiting.of(
            MemoryFacts.of(
                given(rep("r-3").at(9), rep("r-2").at(5).as("b"), rep("r-1").at(5).as("a"))
                    .facts()),
            View.EVERYTHING);

    assertThat(waiting).extracting(each -> each.fact().id()).containsExactly("a", "b", "e-00");
  }

  @Test
  void withdrawingAWaitingEventEndsItsWaiting() {
    Told told = given(rep(CLEAN).as("a"), withdrawn("a"));

    assertThat(told.whenAsked().waiting()).isEmpty();
  }

  @Test
  void withdrawingARegistrationMakesThoseWaitThatCounted() {
    Told told =
        given(
            sessionOpened("s-1").as("opening"),
            dogRegistered("juniper"),
            setupAt(45).as("setup"),
            rep(CLEAN).as("rep"),
            withdrawn("opening"));

    assertThat(told.whenAsked().waiting())
        .isEqualTo(Map.of("setup", List.of(session("s-1")), "rep", List.of(session("s-1"))));
  }

  @Test
  void withdrawingARepMakesItsAmendmentsWait() {
    Told told =
        givenTraining(
            rep(CLEAN).as("rep"), amended("r-1", rep -> rep.drive(1)).as("a"), withdrawn("rep"));

    assertThat(told.whenAsked().waiting())
        .isEqualTo(Map.of("a", List.of(new EntityRef(EntityKind.REP, "r-1"))));
  }

  @Test
  void asLongAsOneLoggingOfItStandsTheyDoNot() {
    Told told =
        givenTraining(
            rep(CLEAN).as("rep"),
            rep(CLEAN),
            amended("r-1", rep -> rep.drive(1)),
            withdrawn("rep"));

    assertThat(told.whenAsked().waiting()).isEmpty();
  }

  @Test
  void aSetupOfAnUnknownSessionWaits() {
    Told told = given(setup("s-9", tunnelAt(45)).as("a"));

    assertThat(told.whenAsked().waiting()).isEqualTo(Map.of("a", List.of(session("s-9"))));
  }

  @Test
  void aMembershipWaitsForItsClassAndItsDog() {
    Told told = given(joined("evening", "juniper").as("a"), classFormed("evening"));

    assertThat(told.whenAsked().waiting()).isEqualTo(Map.of("a", List.of(dog("juniper"))));
    assertThat(told.whenAsked().registry().group("evening").orElseThrow().members()).isEmpty();
  }

  @Test
  void aPairingWaitsForItsTimingWhichIsAnEvent() {
    Told told = givenTraining(rep(CLEAN), Happening.of(new TimingPaired("timing", "r-1")).as("a"));

    assertThat(told.whenAsked().waiting())
        .isEqualTo(Map.of("a", List.of(new EntityRef(EntityKind.EVENT, "timing"))));
  }

  /** What had not happened yet does not wait; an amendment is of the time of its rep. */
  @Test
  void asOfLeavesOutWhatHappenedLaterButNoCorrection() {
    Told told =
        givenTraining(
            rep("r-1", rep -> rep.by("sorrel")).at(20).as("later-rep"),
            rep("r-2", rep -> rep.by("sorrel")).at(2).as("rep"),
            amended("r-3", rep -> rep.drive(1)).at(20).as("amendment"));

    assertThat(told.whenAskedAsOf(10).waiting()).containsOnlyKeys("rep", "amendment");
  }
}
