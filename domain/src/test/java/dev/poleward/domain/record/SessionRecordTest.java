package dev.poleward.domain.record;

import static dev.poleward.domain.history.Tell.attended;
import static dev.poleward.domain.history.Tell.merged;
import static dev.poleward.domain.history.Tell.sessionOpened;
import static dev.poleward.domain.history.Tell.setup;
import static dev.poleward.domain.history.Tell.setupAt;
import static dev.poleward.domain.history.Tell.tunnelAt;
import static dev.poleward.domain.history.Tell.withdrawn;
import static dev.poleward.domain.history.Told.given;
import static dev.poleward.domain.history.Told.givenTraining;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.SessionEvent.SessionClosed;
import dev.poleward.domain.event.SessionEvent.SessionOpened;
import dev.poleward.domain.history.Asked;
import dev.poleward.domain.history.Happening;
import dev.poleward.domain.history.Told;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A session as it stands. */
class SessionRecordTest {

  private static Happening closed(String session) {
    return Happening.of(new SessionClosed(session));
  }

  private static SessionRecord session(Asked asked) {
    return asked.registry().session("s-1").orElseThrow();
  }

  /** One word for each dog: its name and whether it is there. */
  private static List<String> attendance(Asked asked) {
    return session(asked).attendance().stream()
        .map(fact -> fact.event().dog() + " " + fact.event().present())
        .toList();
  }

  @Test
  void theFirstOpeningStandsEvenWhileItsGroundIsNotKnown() {
    Happening elsewhere =
        Happening.of(new SessionOpened("s-1", "lower-field", null, null, null, null));
    Told told = given(elsewhere.at(1).as("a"), sessionOpened("s-1").at(5).as("b"));

    SessionRecord session = session(told.whenAsked());

    assertThat(session.opened().standing().event().ground()).isEqualTo("lower-field");
    assertThat(session.opened().duplicates()).containsExactly("b");
    assertThat(told.whenAsked().waiting()).containsOnlyKeys("a");
  }

  @Test
  void setupsComeInTheirOrder() {
    Told told =
        givenTraining(
            setupAt(30).at(9).as("c"),
            setupAt(15).at(5).as("b"),
            setupAt(0).at(5).as("a"),
            setup("s-2", tunnelAt(60)),
            setupAt(45).as("mistake"),
            withdrawn("mistake"));

    assertThat(session(told.whenAsked()).setups())
        .extracting(Fact::id)
        .containsExactly("a", "b", "c");
  }

  @Test
  void ofWhoIsThereTheLatestWordHolds() {
    Told told =
        givenTraining(
            attended("s-1", "juniper", false).at(9).as("a"),
            attended("s-1", "juniper", true).at(9).as("b"),
            attended("s-1", "bramble", false).at(5),
            attended("s-1", "bramble", true).at(1),
            attended("s-2", "bramble", true).at(9));

    assertThat(attendance(told.whenAsked())).containsExactly("bramble false", "juniper true");
    assertThat(attendance(told.whenAskedAsOf(4))).containsExactly("bramble true");
  }

  @Test
  void aMergedDogIsThereOnce() {
    Told told =
        givenTraining(
            attended("s-1", "bramble", true).at(1),
            attended("s-1", "juniper", false).at(5),
            merged("bramble", "juniper"));

    assertThat(attendance(told.whenAsked())).containsExactly("juniper false");
  }

  @Test
  void theFirstClosingCounts() {
    Told told = givenTraining(closed("s-1").at(9), closed("s-1").at(5).as("a"));

    assertThat(session(told.whenAsked()).closed()).extracting(Fact::id).isEqualTo("a");
    assertThat(session(told.whenAskedAsOf(4)).closed()).isNull();
  }
}
