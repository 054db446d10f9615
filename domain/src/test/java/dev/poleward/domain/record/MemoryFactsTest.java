package dev.poleward.domain.record;

import static dev.poleward.domain.history.Tell.amended;
import static dev.poleward.domain.history.Tell.dogRegistered;
import static dev.poleward.domain.history.Tell.merged;
import static dev.poleward.domain.history.Tell.rep;
import static dev.poleward.domain.history.Tell.sessionOpened;
import static dev.poleward.domain.history.Tell.withdrawn;
import static dev.poleward.domain.history.Told.given;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.history.Told;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class MemoryFactsTest {

  private static List<String> ids(List<? extends Fact<?>> facts) {
    List<String> ids = new ArrayList<>();
    facts.forEach(fact -> ids.add(fact.id()));
    return ids;
  }

  @Test
  void itAnswersFromAllThatWasRecorded() {
    Facts facts =
        MemoryFacts.of(
            given(
                    dogRegistered("juniper").as("dog"),
                    sessionOpened("s-1").at(9).as("later"),
                    sessionOpened("s-2").at(5).as("earlier"),
                    rep("r-1").as("a"),
                    rep("r-2", rep -> rep.in("s-2").by("bramble")).as("b"))
                .facts());

    assertThat(ids(facts.repsOf("juniper"))).containsExactly("a");
    assertThat(ids(facts.repsIn("s-2"))).containsExactly("b");
    assertThat(ids(facts.repsLoggedAs("r-2"))).containsExactly("b");
    assertThat(ids(facts.about(new EntityRef(EntityKind.DOG, "juniper")))).containsExactly("dog");
    assertThat(facts.announced(EntityKind.REP, "", 10)).containsExactly("r-1", "r-2");
    assertThat(facts.announced(EntityKind.REP, "r-1", 10)).containsExactly("r-2");
    assertThat(facts.announced(EntityKind.REP, "", 1)).containsExactly("r-1");
    assertThat(ids(facts.sessionsOpened(null, 10))).containsExactly("earlier", "later");
    assertThat(ids(facts.sessionsOpened(new Moment(Told.minute(5), "earlier"), 10)))
        .containsExactly("later");
    assertThat(facts.event("a")).map(Fact::id).contains("a");
    assertThat(facts.event("z")).isEmpty();
  }

  @Test
  void correctionsAreWithdrawalsAmendmentsMergesAndFurtherLoggings() {
    Corrections corrections =
        MemoryFacts.of(
                given(
                        rep("r-1").as("first"),
                        rep("r-1").as("further"),
                        rep("r-2"),
                        amended("r-1", rep -> rep.by("bramble").in("s-2")).as("amendment"),
                        merged("bramble", "juniper").as("merge"),
                        withdrawn("first").as("withdrawal"))
                    .facts())
            .corrections();

    assertThat(corrections.withdrawnEvents()).containsExactly("first");
    assertThat(ids(corrections.withdrawalsOf("first"))).containsExactly("withdrawal");
    assertThat(corrections.withdrawn("first", View.EVERYTHING)).isTrue();
    assertThat(corrections.withdrawn("further", View.EVERYTHING)).isFalse();
    assertThat(ids(corrections.amendmentsOf("r-1"))).containsExactly("amendment");
    assertThat(corrections.amendmentsOf("r-2")).isEmpty();
    assertThat(corrections.repsMovedToDog("bramble")).containsExactly("r-1");
    assertThat(corrections.repsMovedToSession("s-2")).containsExactly("r-1");
    assertThat(corrections.repsMovedToDog("juniper")).isEmpty();
    assertThat(ids(corrections.merges())).containsExactly("merge");
    assertThat(corrections.loggedTwice("r-1")).isTrue();
    assertThat(corrections.loggedTwice("r-2")).isFalse();
    assertThat(ids(corrections.furtherLoggings("r-1"))).containsExactly("further");
  }

  /** The one exception to set semantics: two contents under one id. The first recorded stands. */
  @Test
  void ofTwoContentsUnderOneIdTheFirstRecordedIsKept() {
    Facts facts =
        MemoryFacts.of(
            given(
                    dogRegistered("juniper").as("a").recordedAt(200),
                    dogRegistered("bramble").as("a").recordedAt(100))
                .facts());

    assertThat(facts.announced(EntityKind.DOG, "", 10)).containsExactly("bramble");
  }

  @Test
  void whatReferredToTheUnknownWhenItWasRecordedIsGivenForever() {
    Facts facts =
        MemoryFacts.of(
            given(
                    rep("r-1").as("early").recordedAt(100),
                    dogRegistered("juniper").recordedAt(200),
                    sessionOpened("s-1").recordedAt(200),
                    rep("r-2").as("late").recordedAt(200))
                .facts());
    List<String> unmet = new ArrayList<>();
    facts.everUnmet(fact -> unmet.add(fact.id()));

    assertThat(unmet).containsExactly("early");
  }
}
