package dev.poleward.domain.record;

import static dev.poleward.domain.event.Outcome.BACK_WEAVE;
import static dev.poleward.domain.event.Outcome.CLEAN;
import static dev.poleward.domain.event.Outcome.MISSED_ENTRY;
import static dev.poleward.domain.history.Tell.amended;
import static dev.poleward.domain.history.Tell.handlerRegistered;
import static dev.poleward.domain.history.Tell.rep;
import static dev.poleward.domain.history.Tell.setup;
import static dev.poleward.domain.history.Tell.setupAt;
import static dev.poleward.domain.history.Tell.tunnelAt;
import static dev.poleward.domain.history.Tell.withdrawn;
import static dev.poleward.domain.history.Told.givenTraining;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.event.RepField;
import dev.poleward.domain.history.Told;
import org.junit.jupiter.api.Test;

/** What an amendment makes of a rep. */
class AmendmentTest {

  @Test
  void whatAnAmendmentDoesNotNameStays() {
    Told told =
        givenTraining(
            rep("r-1", rep -> rep.ended(CLEAN).dogSide(DogSide.LEFT).drive(3)),
            amended("r-1", rep -> rep.ended(MISSED_ENTRY)).as("a"));

    PlacedRep placed = told.whenAsked().rep("r-1");

    assertThat(placed.outcome()).isEqualTo(MISSED_ENTRY);
    assertThat(placed.manoeuvre()).isEqualTo(Manoeuvre.ALONGSIDE);
    assertThat(placed.details().dogSide()).isEqualTo(DogSide.LEFT);
    assertThat(placed.details().drive()).isEqualTo(3);
    assertThat(placed.amendedBy()).containsExactly("a");
  }

  @Test
  void theLatestWinsFieldByFieldWhicheverCameLast() {
    Told told =
        givenTraining(
            rep(CLEAN).at(1),
            amended("r-1", rep -> rep.ended(BACK_WEAVE).drive(2)).at(9).as("late"),
            amended("r-1", rep -> rep.ended(MISSED_ENTRY).atPole(1)).at(5).as("early"));

    PlacedRep placed = told.whenAsked().rep("r-1");

    assertThat(placed.outcome()).isEqualTo(BACK_WEAVE);
    assertThat(placed.details().drive()).isEqualTo(2);
    assertThat(placed.details().atPole()).isEqualTo(1);
    assertThat(placed.amendedBy()).containsExactly("early", "late");
  }

  @Test
  void atOneInstantTheGreaterIdWins() {
    Told told =
        givenTraining(
            rep(CLEAN),
            amended("r-1", rep -> rep.ended(BACK_WEAVE)).at(5).as("z"),
            amended("r-1", rep -> rep.ended(MISSED_ENTRY)).at(5).as("a"));

    assertThat(told.whenAsked().rep("r-1").outcome()).isEqualTo(BACK_WEAVE);
  }

  @Test
  void anAmendmentBeforeTheRepCountsAllTheSame() {
    Told told =
        givenTraining(amended("r-1", rep -> rep.ended(MISSED_ENTRY)).at(1), rep(CLEAN).at(5));

    assertThat(told.whenAsked().rep("r-1").outcome()).isEqualTo(MISSED_ENTRY);
  }

  @Test
  void anAmendmentOfOneRepLeavesTheOthersAlone() {
    Told told =
        givenTraining(rep("r-1"), rep("r-2"), amended("r-2", rep -> rep.ended(MISSED_ENTRY)));

    assertThat(told.whenAsked().rep("r-1").outcome()).isEqualTo(CLEAN);
    assertThat(told.whenAsked().rep("r-1").amendedBy()).isEmpty();
  }

  @Test
  void aFieldThatIsTakenAwayIsGoneUntilItIsSaidAgain() {
    Told told =
        givenTraining(
            rep("r-1", rep -> rep.drive(3).atPole(2)).at(1),
            amended("r-1", rep -> rep.without(RepField.DRIVE)).at(2),
            amended("r-1", rep -> rep.without(RepField.AT_POLE)).at(3),
            amended("r-1", rep -> rep.atPole(4)).at(4));

    assertThat(told.whenAsked().rep("r-1").details().drive()).isNull();
    assertThat(told.whenAsked().rep("r-1").details().atPole()).isEqualTo(4);
  }

  @Test
  void whatWasSaidEarlierThanTheTakingAwayIsGone() {
    Told told =
        givenTraining(
            rep(CLEAN).at(1),
            amended("r-1", rep -> rep.without(RepField.DRIVE)).at(5),
            amended("r-1", rep -> rep.drive(1)).at(4));

    assertThat(told.whenAsked().rep("r-1").details().drive()).isNull();
  }

  @Test
  void angleAndClockPositionAreOneField() {
    Told told =
        givenTraining(
            setupAt(15),
            rep("r-1", rep -> rep.from(60)),
            rep("r-2", rep -> rep.from(60)),
            rep("r-3", rep -> rep.from("2:00")),
            rep("r-4", rep -> rep.from(60)),
            amended("r-1", rep -> rep.from("11:00")),
            amended("r-2", rep -> rep.without(RepField.CLOCK)),
            amended("r-3", rep -> rep.without(RepField.ANGLE)),
            amended("r-4", rep -> rep.without(RepField.ANGLE).without(RepField.CLOCK)));

    assertThat(told.whenAsked().angleOf("r-1")).isEqualTo(-30);
    assertThat(told.whenAsked().angleOf("r-2")).isEqualTo(15);
    assertThat(told.whenAsked().angleOf("r-3")).isEqualTo(15);
    assertThat(told.whenAsked().angleOf("r-4")).isEqualTo(15);
  }

  @Test
  void aSetupIsReplacedAsAWholeAndTakenAwayAsAWhole() {
    Told told =
        givenTraining(
            setupAt(15).as("standing"),
            rep("r-1", rep -> rep.over(tunnelAt(60))),
            rep("r-2", rep -> rep.over(tunnelAt(60))),
            amended("r-1", rep -> rep.over(tunnelAt(75))),
            amended("r-2", rep -> rep.without(RepField.SETUP)));

    assertThat(told.whenAsked().rep("r-1").setup()).isEqualTo(tunnelAt(75));
    assertThat(told.whenAsked().rep("r-2").setupEvent()).isEqualTo("standing");
  }

  @Test
  void aRepMovedToAnotherSetOfPolesIsRunOverWhatStandsThere() {
    Told told =
        givenTraining(
            setupAt(15),
            setupAt(60, "second"),
            rep(CLEAN),
            amended("r-1", rep -> rep.on("second")));

    assertThat(told.whenAsked().angleOf("r-1")).isEqualTo(60);
  }

  @Test
  void aRepMovedToAnotherDogIsThatDogs() {
    Told told = givenTraining(rep(CLEAN), amended("r-1", rep -> rep.by("bramble")));

    assertThat(told.whenAsked().repsOf("juniper")).isEmpty();
    assertThat(told.whenAsked().repsOf("bramble")).containsExactly("r-1");
    assertThat(told.whenAsked().rep("r-1").dog()).isEqualTo("bramble");
  }

  @Test
  void aRepMovedToAnotherSessionIsRunOverTheSetupsThere() {
    Told told =
        givenTraining(
            setupAt(15).at(1),
            setup("s-2", tunnelAt(60)).at(2),
            rep(CLEAN).at(3),
            amended("r-1", rep -> rep.in("s-2")).at(4));

    assertThat(told.whenAsked().repsIn("s-1")).isEmpty();
    assertThat(told.whenAsked().repsIn("s-2")).containsExactly("r-1");
    assertThat(told.whenAsked().angleOf("r-1")).isEqualTo(60);
  }

  @Test
  void aRepMovedThereAndBackIsWhereItWas() {
    Told told =
        givenTraining(
            rep(CLEAN),
            amended("r-1", rep -> rep.by("bramble").in("s-2")),
            amended("r-1", rep -> rep.by("juniper").in("s-1")));

    assertThat(told.whenAsked().repsOf("juniper")).containsExactly("r-1");
    assertThat(told.whenAsked().repsIn("s-1")).containsExactly("r-1");
    assertThat(told.whenAsked().repsOf("bramble")).isEmpty();
    assertThat(told.whenAsked().repsIn("s-2")).isEmpty();
  }

  @Test
  void theNoteIsAFieldLikeTheOthers() {
    Told told =
        givenTraining(
            rep("r-1").sealed("old"),
            rep("r-2").sealed("old"),
            rep("r-3").sealed("old").as("third"),
            amended("r-1", rep -> rep).sealed("new").as("amending"),
            amended("r-2", rep -> rep.without(RepField.NOTE)),
            amended("r-3", rep -> rep.drive(1)));

    assertThat(told.whenAsked().rep("r-1").note())
        .isEqualTo(new SealedNote("amending", new Sealed("robin", "k-1", "new")));
    assertThat(told.whenAsked().rep("r-2").note()).isNull();
    assertThat(told.whenAsked().rep("r-3").note())
        .isEqualTo(new SealedNote("third", new Sealed("robin", "k-1", "old")));
  }

  @Test
  void anAmendmentThatNamesSomethingUnknownDoesNotCountAtAll() {
    Told told =
        givenTraining(
            rep(CLEAN).at(1),
            amended("r-1", rep -> rep.ended(MISSED_ENTRY).handler("robin")).at(2).as("a"));

    assertThat(told.whenAsked().rep("r-1").outcome()).isEqualTo(CLEAN);
    assertThat(told.whenAsked().rep("r-1").amendedBy()).isEmpty();
  }

  @Test
  void itCountsFromTheMomentThatIsKnown() {
    Told told =
        givenTraining(
            rep(CLEAN).at(1),
            amended("r-1", rep -> rep.ended(MISSED_ENTRY).handler("robin")).at(2).as("a"),
            handlerRegistered("robin").at(9));

    assertThat(told.whenAsked().rep("r-1").outcome()).isEqualTo(MISSED_ENTRY);
    assertThat(told.whenAsked().rep("r-1").details().handler()).isEqualTo("robin");
  }

  @Test
  void aWithdrawnAmendmentLeavesTheOneBefore() {
    Told told =
        givenTraining(
            rep(CLEAN),
            amended("r-1", rep -> rep.ended(MISSED_ENTRY)).as("a"),
            amended("r-1", rep -> rep.ended(BACK_WEAVE)).as("b"),
            withdrawn("b"));

    assertThat(told.whenAsked().rep("r-1").outcome()).isEqualTo(MISSED_ENTRY);
    assertThat(told.whenAsked().rep("r-1").amendedBy()).containsExactly("a");
  }
}
