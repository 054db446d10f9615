package dev.poleward.domain.history;

import static dev.poleward.domain.history.HistoryCheck.forHistories;
import static dev.poleward.domain.history.Laws.answers;
import static dev.poleward.domain.history.Laws.assertSame;
import static dev.poleward.domain.history.Laws.assertSameWhereBothAsked;
import static dev.poleward.domain.history.Laws.those;
import static dev.poleward.domain.history.Laws.views;
import static dev.poleward.domain.history.Laws.withdrawing;
import static dev.poleward.domain.history.Laws.without;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.ClubEvent;
import dev.poleward.domain.event.ClubEvent.ClubSettingsChanged;
import dev.poleward.domain.event.EventWithdrawn;
import dev.poleward.domain.event.ProgrammeEvent.PlanIssued;
import dev.poleward.domain.event.RepEvent.RepAmended;
import dev.poleward.domain.record.EntityKind;
import dev.poleward.domain.record.EntityRef;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.View;
import dev.poleward.domain.record.Waiting.WaitingEvent;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Nothing is edited: what was said wrongly is taken back by saying so. */
class CorrectionLawsTest {

  private static final int HISTORIES = 2_000;

  @Test
  void whatIsWithdrawnMightAsWellNeverHaveBeenSaid() {
    forHistories(
        HISTORIES,
        (facts, random) -> {
          int some = random.nextInt(4);
          List<Fact<?>> mistakes =
              those(
                  facts,
                  fact -> Math.floorMod(fact.id().hashCode(), 4) == some && canBeWithdrawn(fact));
          List<Fact<?>> rest = those(facts, fact -> !mistakes.contains(fact));
          for (View view : views(random)) {
            Map<String, Object> withdrawn = answers(withdrawing(facts, mistakes), view);
            Map<String, Object> neverSaid = answers(rest, view);
            assertThat(waiting(withdrawn)).isEqualTo(waiting(neverSaid));
            assertSameWhereBothAsked(
                without(withdrawn, "waiting"::equals), without(neverSaid, "waiting"::equals));
          }
        });
  }

  /** What waits for things; an event that is withdrawn is known all the same. */
  private static Map<String, List<EntityRef>> waiting(Map<String, Object> answers) {
    Map<String, List<EntityRef>> waiting = new TreeMap<>();
    for (Object each : (List<?>) Objects.requireNonNull(answers.get("waiting"))) {
      WaitingEvent event = (WaitingEvent) each;
      List<EntityRef> things =
          event.waitsFor().stream().filter(thing -> thing.kind() != EntityKind.EVENT).toList();
      if (!things.isEmpty()) {
        waiting.put(event.fact().id(), things);
      }
    }
    return waiting;
  }

  /** What only the service writes, and withdrawals: a withdrawal is final. */
  @Test
  void withdrawingWhatCannotBeWithdrawnChangesNothing() {
    forHistories(
        HISTORIES / 3,
        (facts, random) -> {
          List<Fact<?>> lasting = those(facts, fact -> !canBeWithdrawn(fact));
          for (View view : views(random)) {
            assertSame(answers(facts, view), answers(withdrawing(facts, lasting), view));
          }
        });
  }

  private static boolean canBeWithdrawn(Fact<?> fact) {
    return switch (fact.event()) {
      case ClubSettingsChanged _ -> true;
      case ClubEvent _, PlanIssued _, EventWithdrawn _ -> false;
      default -> true;
    };
  }

  @Test
  void withoutItsAmendmentsEveryRepIsAsItWasLogged() {
    forHistories(
        HISTORIES / 3,
        (facts, _) -> {
          List<Fact<?>> amendments = those(facts, CorrectionLawsTest::amends);
          List<Fact<?>> asLogged = those(facts, fact -> !amends(fact));
          assertSameWhereBothAsked(
              without(answers(withdrawing(facts, amendments), View.EVERYTHING), "waiting"::equals),
              without(answers(asLogged, View.EVERYTHING), "waiting"::equals));
        });
  }

  private static boolean amends(Fact<?> fact) {
    return fact.event() instanceof RepAmended;
  }
}
