package dev.poleward.domain.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.poleward.domain.event.RepEvent.RepLogged;
import dev.poleward.domain.event.SessionEvent.SetupChanged;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.MemoryFacts;
import dev.poleward.domain.record.PlacedRep;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.View;
import dev.poleward.domain.record.Waiting;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** That the laws are tried on histories worth trying, and that a broken one is told well. */
class HistoryCheckTest {

  @Test
  void oneSeedAlwaysGivesTheSameHistory() {
    assertThat(GeneratedHistory.of(77)).isEqualTo(GeneratedHistory.of(77));
    assertThat(GeneratedHistory.of(77)).isNotEqualTo(GeneratedHistory.of(78));
  }

  @Test
  void recordingTimesNeverDecreaseAndIdsAreUnique() {
    for (long seed = 1; seed <= 200; seed++) {
      List<Fact<?>> facts = GeneratedHistory.withInternalEvents(seed).facts();

      assertThat(facts).hasSizeBetween(5, 80);
      assertThat(facts.stream().map(Fact::recorded)).isSorted();
      assertThat(facts.stream().map(Fact::id)).doesNotHaveDuplicates();
    }
  }

  /** The first history with four loggings is the one that must be found and cut down. */
  @Test
  void aBrokenLawIsToldWithItsSeedAndTheFewestEventsThatBreakIt() {
    assertThatThrownBy(
            () ->
                HistoryCheck.forHistories(50, (facts, _) -> assertThat(reps(facts)).isLessThan(4)))
        .isInstanceOf(AssertionError.class)
        .hasMessageMatching("(?s)history \\d+, 4 of \\d+ events:.*");
  }

  @Test
  void anExceptionBreaksALawToo() {
    assertThatThrownBy(
            () ->
                HistoryCheck.forHistories(
                    1,
                    (_, _) -> {
                      throw new IllegalStateException("broken");
                    }))
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("history 1, 0 of")
        .hasMessageContaining("broken");
  }

  private static long reps(List<Fact<?>> facts) {
    return facts.stream().filter(fact -> fact.event() instanceof RepLogged).count();
  }

  @Test
  void whatIsRareOnAFieldIsCommonHere() {
    Map<String, Integer> seen = new HashMap<>();
    for (long seed = 1; seed <= 1_500; seed++) {
      look(GeneratedHistory.of(seed).facts(), seen);
    }

    assertThat(seen)
        .allSatisfy((what, times) -> assertThat(times).as(what).isGreaterThan(60))
        .containsOnlyKeys(
            "amended",
            "at the very instant",
            "duplicate",
            "first withdrawn",
            "inline setup",
            "late setup",
            "merged",
            "moved",
            "own angle",
            "placed",
            "second set",
            "waiting");
  }

  private static void look(List<Fact<?>> facts, Map<String, Integer> seen) {
    MemoryFacts record = MemoryFacts.of(facts);
    Placement placement = new Placement(record, View.EVERYTHING);
    Waiting.of(record, View.EVERYTHING).forEach(_ -> seen.merge("waiting", 1, Integer::sum));
    for (Fact<?> fact : facts) {
      Fact<RepLogged> logged = fact.as(RepLogged.class);
      if (logged != null) {
        placement.place(logged).ifPresent(rep -> look(rep, logged, record, seen));
      }
    }
  }

  private static void look(
      PlacedRep rep, Fact<RepLogged> logged, MemoryFacts record, Map<String, Integer> seen) {
    count(seen, "placed", true);
    count(seen, "amended", !rep.amendedBy().isEmpty());
    count(seen, "duplicate", !rep.duplicates().isEmpty());
    count(seen, "moved", !rep.session().equals(logged.event().session()));
    count(seen, "merged", !rep.dog().equals(logged.event().dog()) && rep.amendedBy().isEmpty());
    count(seen, "inline setup", rep.details().setup() != null);
    count(seen, "own angle", rep.details().approach() != null);
    count(seen, "second set", rep.setupEvent() != null && rep.poleSet().equals("second"));
    count(
        seen,
        "first withdrawn",
        record.repsLoggedAs(rep.rep()).stream()
            .anyMatch(other -> other.moment().compareTo(rep.moment()) < 0));
    Fact<?> setup = rep.setupEvent() == null ? null : record.event(rep.setupEvent()).orElse(null);
    if (setup != null && setup.event() instanceof SetupChanged) {
      count(seen, "at the very instant", Objects.equals(setup.time(), rep.moment().time()));
      count(seen, "late setup", setup.recorded().isAfter(logged.recorded()));
    }
  }

  private static void count(Map<String, Integer> seen, String what, boolean happened) {
    if (happened) {
      seen.merge(what, 1, Integer::sum);
    }
  }
}
