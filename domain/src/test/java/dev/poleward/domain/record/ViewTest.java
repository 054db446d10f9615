package dev.poleward.domain.record;

import static dev.poleward.domain.event.Outcome.CLEAN;
import static dev.poleward.domain.event.Outcome.MISSED_ENTRY;
import static dev.poleward.domain.history.Tell.amended;
import static dev.poleward.domain.history.Tell.rep;
import static dev.poleward.domain.history.Tell.setupAt;
import static dev.poleward.domain.history.Told.givenTraining;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.history.Told;
import java.time.Instant;
import org.junit.jupiter.api.Test;

/** The two times are independent, and each includes its instant. */
class ViewTest {

  @Test
  void asOfGoesByWhenItHappened() {
    Told told = givenTraining(rep("r-1").at(1).recordedAt(900), rep("r-2").at(5).recordedAt(100));

    assertThat(told.whenAskedAsOf(0).repsOf("juniper")).isEmpty();
    assertThat(told.whenAskedAsOf(4).repsOf("juniper")).containsExactly("r-1");
    assertThat(told.whenAskedAsOf(5).repsOf("juniper")).containsExactly("r-1", "r-2");
    assertThat(told.whenAskedAsOf(4).repsIn("s-1")).containsExactly("r-1");
  }

  @Test
  void knownAtGoesByWhenItWasRecorded() {
    Told told = givenTraining(rep("r-1").at(1).recordedAt(900), rep("r-2").at(5).recordedAt(100));

    assertThat(told.whenAskedKnownAt(99).repsOf("juniper")).isEmpty();
    assertThat(told.whenAskedKnownAt(100).repsOf("juniper")).containsExactly("r-2");
    assertThat(told.whenAskedKnownAt(900).repsOf("juniper")).containsExactly("r-1", "r-2");
  }

  @Test
  void bothTogetherTakeWhatBothLet() {
    Told told =
        givenTraining(
            rep("r-1").at(1).recordedAt(900),
            rep("r-2").at(5).recordedAt(100),
            rep("r-3").at(2).recordedAt(150));

    assertThat(told.whenAsked(4, 200).repsOf("juniper")).containsExactly("r-3");
    assertThat(told.whenAsked(4, 900).repsOf("juniper")).containsExactly("r-1", "r-3");
    assertThat(told.whenAsked(5, 200).repsOf("juniper")).containsExactly("r-3", "r-2");
  }

  @Test
  void anAmendmentHoldsAtTheTimeOfItsRep() {
    Told told =
        givenTraining(
            rep(CLEAN).at(1).recordedAt(100),
            amended("r-1", rep -> rep.ended(MISSED_ENTRY)).at(50).recordedAt(200));

    assertThat(told.whenAskedAsOf(10).rep("r-1").outcome()).isEqualTo(MISSED_ENTRY);
    assertThat(told.whenAskedKnownAt(199).rep("r-1").outcome()).isEqualTo(CLEAN);
    assertThat(told.whenAskedKnownAt(200).rep("r-1").outcome()).isEqualTo(MISSED_ENTRY);
  }

  @Test
  void aSetupThatWasNotKnownYetDidNotApplyYet() {
    Told told =
        givenTraining(
            setupAt(15).at(1).recordedAt(100),
            rep(CLEAN).at(5).recordedAt(100),
            setupAt(60).at(2).recordedAt(200));

    assertThat(told.whenAskedKnownAt(199).angleOf("r-1")).isEqualTo(15);
    assertThat(told.whenAskedKnownAt(200).angleOf("r-1")).isEqualTo(60);
  }

  @Test
  void ofTheSameSetupsAsOfShowsThoseThatStood() {
    Told told = givenTraining(setupAt(15).at(1), rep(CLEAN).at(5), setupAt(60).at(9));

    assertThat(told.whenAskedAsOf(5).registry().session("s-1").orElseThrow().setups()).hasSize(1);
    assertThat(told.whenAskedAsOf(9).registry().session("s-1").orElseThrow().setups()).hasSize(2);
  }

  @Test
  void everythingLeavesNothingOut() {
    assertThat(View.EVERYTHING.asOf()).isNull();
    assertThat(View.EVERYTHING.knownAt()).isNull();
    assertThat(View.EVERYTHING.knew(Instant.MAX)).isTrue();
  }
}
