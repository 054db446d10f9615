package dev.poleward.domain.history;

import static dev.poleward.domain.history.HistoryCheck.forTaughtDogs;
import static dev.poleward.domain.history.Laws.assertSame;
import static dev.poleward.domain.history.Laws.assertSameWhereBothAsked;
import static dev.poleward.domain.history.Laws.muddled;
import static dev.poleward.domain.history.Laws.those;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.care.CareNote;
import dev.poleward.domain.care.CarePermit;
import dev.poleward.domain.event.TimingEvent.TimingRecorded;
import dev.poleward.domain.judgement.FadeAdvice;
import dev.poleward.domain.planning.PlanBlock;
import dev.poleward.domain.planning.PlanOutcome;
import dev.poleward.domain.planning.SessionPlan;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.MemoryFacts;
import dev.poleward.domain.record.View;
import dev.poleward.domain.running.RunningOrder;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** What is to come follows from the set of events too, and from nothing else. */
class PlanLawsTest {

  private static final int HISTORIES = 48;

  private static Map<String, Object> plans(List<Fact<?>> facts, View view) {
    return EveryPlan.of(MemoryFacts.of(facts), view);
  }

  /** On one of the evenings. */
  private static Instant anyTime(Random random) {
    return GeneratedHistory.anyTime(random)
        .minus(Duration.ofDays(7L * random.nextInt(GeneratedTeaching.EVENINGS)));
  }

  @Test
  void orderAndRepetitionDoNotShow() {
    forTaughtDogs(
        HISTORIES,
        (facts, random) -> {
          List<Fact<?>> muddled = muddled(facts, random);
          View view = random.nextBoolean() ? View.EVERYTHING : new View(anyTime(random), null);
          assertSame(plans(facts, view), plans(muddled, view));
        });
  }

  @Test
  void whatWasKnownIsWhatHadBeenRecorded() {
    forTaughtDogs(
        HISTORIES / 2,
        (facts, random) -> {
          Instant knownAt = GeneratedHistory.anyRecordingTime(random);
          List<Fact<?>> known = those(facts, fact -> !fact.recorded().isAfter(knownAt));
          assertSameWhereBothAsked(
              plans(facts, new View(null, knownAt)), plans(known, View.EVERYTHING));
        });
  }

  @Test
  void whatHadHappenedIsAllButWhatHappenedLater() {
    forTaughtDogs(
        HISTORIES / 2,
        (facts, random) -> {
          View view = new View(anyTime(random), null);
          List<Fact<?>> happened =
              those(facts, fact -> !fact.time().isAfter(view.asOf()) || ViewLawsTest.lasts(fact));
          assertSameWhereBothAsked(plans(facts, view), plans(happened, view));
        });
  }

  /**
   * But for timings: their device's clock follows from it, and from the clock which rep is meant.
   */
  @Test
  void recordingTimesShowOnlyToThoseWhoAskWhatWasKnown() {
    forTaughtDogs(
        HISTORIES / 2,
        (facts, random) -> {
          List<Fact<?>> splitOtherwise = new ArrayList<>(facts);
          splitOtherwise.replaceAll(
              fact ->
                  fact.event() instanceof TimingRecorded
                      ? fact
                      : Laws.later(fact, Duration.ofSeconds(random.nextInt(900))));
          assertThat(Laws.withoutRecordingTimes(plans(splitOtherwise, View.EVERYTHING)))
              .isEqualTo(Laws.withoutRecordingTimes(plans(facts, View.EVERYTHING)));
        });
  }

  /** Or else the laws would be checked on next to nothing. */
  @Test
  void generatedDogsNeedPlansOfEveryKind() {
    Seen seen = new Seen();
    forTaughtDogs(
        HISTORIES, (facts, _) -> plans(facts, View.EVERYTHING).values().forEach(seen::look));

    assertThat(seen.purposes).containsExactlyInAnyOrder(PlanBlock.Purpose.values());
    assertThat(seen.advice).containsExactlyInAnyOrder(FadeAdvice.values());
    assertThat(seen.care)
        .contains("have-it-looked-at", "load-grows", "resting", "easing-back", "wet-ground")
        .contains("hot", "too-hot", "young", "day-is-full");
    assertThat(seen.returns)
        .anyMatch(text -> text.contains("from a rest"))
        .anyMatch(text -> text.contains("from a break"));
    assertThat(seen.signs)
        .anyMatch(text -> text.contains("hops"))
        .anyMatch(text -> text.contains("less keen"))
        .anyMatch(text -> text.contains("slower"))
        .anyMatch(text -> text.contains("misses what was solid"));
    assertThat(seen.richer).isPositive();
    assertThat(seen.asRichAsItsStage).isPositive();
    assertThat(seen.planned).isPositive();
    assertThat(seen.dogsInOneOrder).isGreaterThan(1);
    assertThat(seen.leftOut).isPositive();
  }

  /** What occurred among many answers. */
  private static final class Seen {

    private final Set<PlanBlock.Purpose> purposes = EnumSet.noneOf(PlanBlock.Purpose.class);
    private final Set<FadeAdvice> advice = EnumSet.noneOf(FadeAdvice.class);
    private final Set<String> care = new TreeSet<>();
    private final Set<String> returns = new TreeSet<>();
    private final Set<String> signs = new TreeSet<>();
    private int richer;
    private int asRichAsItsStage;
    private int planned;
    private long dogsInOneOrder;
    private int leftOut;

    void look(Object answer) {
      switch (answer) {
        case SessionPlan plan -> plan.blocks().forEach(block -> purposes.add(block.purpose()));
        case EveryPlan.Rewards rewards ->
            rewards.stages().forEach(stage -> advice.add(stage.fade().advice()));
        case EveryPlan.RewardedDrill drill -> look(drill);
        case CarePermit permit -> permit.notes().forEach(this::hear);
        case Optional<?> of when of.orElse(null) instanceof PlanOutcome outcome ->
            planned += outcome.reps();
        case RunningOrder order -> follow(order);
        default -> {
          // Nothing that comes in kinds.
        }
      }
    }

    private void look(EveryPlan.RewardedDrill drill) {
      if (drill.step() < drill.ofStage()) {
        richer++;
      } else if (drill.ofStage() > 0) {
        asRichAsItsStage++;
      }
    }

    private void hear(CareNote note) {
      care.add(note.id());
      if (note.id().equals("easing-back")) {
        returns.add(note.text());
      }
      if (note.id().equals("have-it-looked-at")) {
        signs.add(note.text());
      }
    }

    private void follow(RunningOrder order) {
      leftOut += order.leftOut().size();
      dogsInOneOrder =
          Math.max(
              dogsInOneOrder,
              order.poleSets().stream()
                  .flatMap(poleSet -> poleSet.standings().stream())
                  .flatMap(standing -> standing.turns().stream())
                  .map(RunningOrder.Turn::dog)
                  .distinct()
                  .count());
    }
  }
}
