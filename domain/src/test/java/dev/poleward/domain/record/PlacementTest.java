package dev.poleward.domain.record;

import static dev.poleward.domain.event.Outcome.CLEAN;
import static dev.poleward.domain.history.Tell.barePoles;
import static dev.poleward.domain.history.Tell.dogRegistered;
import static dev.poleward.domain.history.Tell.rep;
import static dev.poleward.domain.history.Tell.sessionOpened;
import static dev.poleward.domain.history.Tell.setup;
import static dev.poleward.domain.history.Tell.setupAt;
import static dev.poleward.domain.history.Tell.tunnelAt;
import static dev.poleward.domain.history.Told.given;
import static dev.poleward.domain.history.Told.givenTraining;
import static dev.poleward.domain.history.Told.minute;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.event.RepDetails;
import dev.poleward.domain.event.SessionEvent.SessionClosed;
import dev.poleward.domain.history.Happening;
import dev.poleward.domain.history.Told;
import dev.poleward.domain.layout.EntryAngle;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Which setup a rep was run over, and from where. */
class PlacementTest {

  @Test
  void aRepIsPlacedOverTheSetupInForce() {
    Told told =
        given(dogRegistered("juniper"), sessionOpened("s-1"), setupAt(45).as("a"), rep(CLEAN));

    PlacedRep placed = told.whenAsked().rep("r-1");

    assertThat(placed)
        .isEqualTo(
            new PlacedRep(
                new Moment(minute(3), "e-03"),
                "r-1",
                "s-1",
                "juniper",
                Manoeuvre.ALONGSIDE,
                Outcome.CLEAN,
                RepDetails.NONE,
                new EntryAngle(45),
                tunnelAt(45),
                "a",
                null,
                List.of(),
                List.of()));
    assertThat(told.whenAsked().repsOf("juniper")).containsExactly("r-1");
    assertThat(told.whenAsked().repsIn("s-1")).containsExactly("r-1");
  }

  @Test
  void theLatestSetupBeforeTheRepIsInForce() {
    Told told =
        givenTraining(setupAt(15).at(1), setupAt(30).at(2), rep(CLEAN).at(3), setupAt(60).at(4));

    assertThat(told.whenAsked().angleOf("r-1")).isEqualTo(30);
  }

  @Test
  void aSetupAtTheVeryInstantOfARepAppliesToIt() {
    Told told =
        givenTraining(setupAt(15).at(1), rep(CLEAN).at(3).as("a"), setupAt(60).at(3).as("z"));

    assertThat(told.whenAsked().angleOf("r-1")).isEqualTo(60);
  }

  @Test
  void ofTwoSetupsAtOneInstantTheGreaterIdIsInForce() {
    Told told =
        givenTraining(setupAt(60).at(1).as("z"), setupAt(15).at(1).as("a"), rep(CLEAN).at(2));

    assertThat(told.whenAsked().angleOf("r-1")).isEqualTo(60);
  }

  @Test
  void aSetupThatIsToldLateAppliesAllTheSame() {
    Told told =
        givenTraining(
            setupAt(15).at(1),
            rep(CLEAN).at(3).recordedAt(1_000),
            setupAt(60).at(2).recordedAt(90_000));

    assertThat(told.whenAsked().angleOf("r-1")).isEqualTo(60);
  }

  @Test
  void everyRepHasTheSetupOfItsOwnMinute() {
    Told told =
        givenTraining(
            rep("r-0").at(0),
            setupAt(15).at(1),
            rep("r-1").at(2),
            setupAt(-15).at(3),
            rep("r-2").at(4));

    assertThat(told.whenAsked().angleOf("r-0")).isNaN();
    assertThat(told.whenAsked().angleOf("r-1")).isEqualTo(15);
    assertThat(told.whenAsked().angleOf("r-2")).isEqualTo(-15);
  }

  @Test
  void twoSetsOfPolesStandSideBySide() {
    Told told =
        givenTraining(
            setupAt(15).at(1).as("main-setup"),
            setupAt(60, "second").at(2).as("second-setup"),
            rep("r-1").at(3),
            rep("r-2", rep -> rep.on("second")).at(3),
            rep("r-3", rep -> rep.on("third")).at(3));

    assertThat(told.whenAsked().rep("r-1").setupEvent()).isEqualTo("main-setup");
    assertThat(told.whenAsked().rep("r-1").poleSet()).isEqualTo("main");
    assertThat(told.whenAsked().rep("r-2").setupEvent()).isEqualTo("second-setup");
    assertThat(told.whenAsked().rep("r-3").setup()).isNull();
  }

  @Test
  void mainIsMeantWhereNoSetIsNamed() {
    Told told =
        givenTraining(
            setupAt(15, "main").at(1),
            rep("r-1").at(2),
            setupAt(60).at(3),
            rep("r-2", rep -> rep.on("main")).at(4));

    assertThat(told.whenAsked().angleOf("r-1")).isEqualTo(15);
    assertThat(told.whenAsked().angleOf("r-2")).isEqualTo(60);
  }

  @Test
  void setupsOfAnotherSessionDoNotApply() {
    Told told = givenTraining(setup("s-2", tunnelAt(45)).at(1), rep(CLEAN).at(2));

    assertThat(told.whenAsked().rep("r-1").setup()).isNull();
  }

  @Test
  void aSetupSaidWithTheRepBeatsTheSessions() {
    Told told = givenTraining(setupAt(15).at(1), rep("r-1", rep -> rep.over(tunnelAt(75))).at(2));

    PlacedRep placed = told.whenAsked().rep("r-1");

    assertThat(placed.setup()).isEqualTo(tunnelAt(75));
    assertThat(placed.setupEvent()).isNull();
    assertThat(told.whenAsked().angleOf("r-1")).isEqualTo(75);
  }

  /** A setup is a whole: one without a direction does not inherit it from what stood before. */
  @Test
  void aSetupSaidWithTheRepTakesNothingFromTheSessions() {
    Told told = givenTraining(setupAt(15).at(1), rep("r-1", rep -> rep.over(barePoles(3))).at(2));

    assertThat(told.whenAsked().rep("r-1").setup()).isEqualTo(barePoles(3));
    assertThat(told.whenAsked().rep("r-1").angle()).isNull();
  }

  @Test
  void aLaterSetupTakesNothingFromTheOneBefore() {
    Told told =
        givenTraining(setupAt(15).at(1), setup("s-1", barePoles(3)).at(2), rep(CLEAN).at(3));

    assertThat(told.whenAsked().rep("r-1").angle()).isNull();
  }

  @Test
  void whereTheDogStartedBeatsWhereTheSetupSays() {
    Told told =
        givenTraining(
            setupAt(15).at(1),
            rep("r-1", rep -> rep.from(-30)).at(2),
            rep("r-2", rep -> rep.from("4:30")).at(3),
            rep("r-3", rep -> rep.over(tunnelAt(75)).from(0)).at(4));

    assertThat(told.whenAsked().angleOf("r-1")).isEqualTo(-30);
    assertThat(told.whenAsked().rep("r-1").setup()).isEqualTo(tunnelAt(15));
    assertThat(told.whenAsked().angleOf("r-2")).isEqualTo(135);
    assertThat(told.whenAsked().angleOf("r-3")).isZero();
  }

  @Test
  void barePolesLeaveItToTheRepToSayWhereTheDogStarted() {
    Told told =
        givenTraining(setup("s-1", barePoles(4)).at(1), rep("r-1", rep -> rep.from("11:00")).at(2));

    assertThat(told.whenAsked().angleOf("r-1")).isEqualTo(-30);
  }

  @Test
  void aRepWithoutASetupIsKeptAllTheSame() {
    Told told =
        givenTraining(rep("r-1").at(1), rep("r-2", rep -> rep.from(30)).at(2), setupAt(15).at(3));

    assertThat(told.whenAsked().repsOf("juniper")).containsExactly("r-1", "r-2");
    assertThat(told.whenAsked().rep("r-1").setup()).isNull();
    assertThat(told.whenAsked().angleOf("r-2")).isEqualTo(30);
  }

  @Test
  void repsComeInTheOrderOfTimeAndThenOfIds() {
    Told told =
        givenTraining(
            rep("late").at(9),
            rep("second").at(5).as("b"),
            rep("first").at(5).as("a"),
            rep("early").at(1));

    assertThat(told.whenAsked().repsOf("juniper"))
        .containsExactly("early", "first", "second", "late");
    assertThat(told.whenAsked().repsIn("s-1")).containsExactly("early", "first", "second", "late");
  }

  @Test
  void everyDogHasItsOwnReps() {
    Told told = givenTraining(rep("r-1"), rep("r-2", rep -> rep.by("bramble")), rep("r-3"));

    assertThat(told.whenAsked().repsOf("juniper")).containsExactly("r-1", "r-3");
    assertThat(told.whenAsked().repsOf("bramble")).containsExactly("r-2");
    assertThat(told.whenAsked().repsOf("sorrel")).isEmpty();
    assertThat(told.whenAsked().repsIn("s-1")).containsExactly("r-1", "r-2", "r-3");
  }

  @Test
  void whatWasSaidWithTheRepIsSealedAndStaysWithIt() {
    Told told = givenTraining(rep(CLEAN).as("a").sealed("her note"));

    SealedNote note = told.whenAsked().rep("r-1").note();

    assertThat(note).isEqualTo(new SealedNote("a", new Sealed("robin", "k-1", "her note")));
  }

  /** A note, not a fence. */
  @Test
  void repsAfterTheSessionWasClosedCount() {
    Told told =
        givenTraining(
            Happening.of(new SessionClosed("s-1")).at(1), setupAt(15).at(2), rep(CLEAN).at(3));

    assertThat(told.whenAsked().angleOf("r-1")).isEqualTo(15);
  }
}
