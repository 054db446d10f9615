package dev.poleward.domain.history;

import static dev.poleward.domain.history.HistoryCheck.forHistories;
import static dev.poleward.domain.history.HistoryCheck.forTaughtDogs;
import static dev.poleward.domain.history.Laws.answers;
import static dev.poleward.domain.history.Laws.assertSame;
import static dev.poleward.domain.history.Laws.muddled;
import static dev.poleward.domain.history.Laws.views;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import dev.poleward.domain.event.ClubEvent.AccessKeyIssued;
import dev.poleward.domain.event.ClubEvent.PersonForgotten;
import dev.poleward.domain.event.TrainingEvent;
import dev.poleward.domain.pace.ClubTimings;
import dev.poleward.domain.pace.PairedTimings.DeviceSeen;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.MemoryFacts;
import dev.poleward.domain.record.Moment;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.View;
import dev.poleward.domain.timing.DeviceClock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Set semantics: the promise that makes buffering, retrying and interleaving phones harmless. */
class RecordLawsTest {

  private static final int HISTORIES = 2_000;
  private static final String CLOCKS = "clocks";

  @Test
  void orderAndRepetitionDoNotShow() {
    forHistories(
        HISTORIES,
        (facts, random) -> {
          List<Fact<?>> muddled = muddled(facts, random);
          for (View view : views(random)) {
            assertSame(answers(facts, view), answers(muddled, view));
          }
          assertSame(
              EveryAnswer.ofAnyView(MemoryFacts.of(facts)),
              EveryAnswer.ofAnyView(MemoryFacts.of(muddled)));
        });
  }

  /** However the events are split over requests, they are only recorded at other times. */
  @Test
  void recordingTimesShowOnlyToThoseWhoAskWhatWasKnown() {
    forHistories(
        HISTORIES / 6,
        (facts, random) -> {
          List<Fact<?>> splitOtherwise = new ArrayList<>(facts);
          splitOtherwise.replaceAll(
              fact -> Laws.later(fact, Duration.ofSeconds(random.nextInt(900))));
          Instant asOf = GeneratedHistory.anyTime(random);
          for (View view : List.of(View.EVERYTHING, new View(asOf, null))) {
            assertThat(withoutClocks(answers(splitOtherwise, view)))
                .isEqualTo(withoutClocks(answers(facts, view)));
          }
        });
  }

  /** The clocks of devices follow from when their timings were recorded. */
  private static String withoutClocks(Map<String, Object> answers) {
    return Laws.withoutRecordingTimes(
        Laws.without(answers, question -> question.startsWith(CLOCKS)));
  }

  /** Delays only add: when all comes by as much later, each clock is taken to be by that later. */
  @Test
  void clocksOfDevicesMoveByHowMuchLaterEverythingWasRecorded() {
    int[] drifting = {0};
    forTaughtDogs(
        HISTORIES / 40,
        (facts, random) -> {
          Duration by = Duration.ofMillis(random.nextInt(900_000));
          List<Fact<?>> allLater = new ArrayList<>(facts);
          allLater.replaceAll(fact -> Laws.later(fact, by));
          Map<String, DeviceSeen> clocks = clocks(facts);
          Map<String, DeviceSeen> movedClocks = clocks(allLater);
          assertThat(movedClocks.keySet()).isEqualTo(clocks.keySet());
          clocks.forEach(
              (question, seen) -> {
                DeviceSeen moved = Objects.requireNonNull(movedClocks.get(question));
                assertThat(moved.restarts()).isEqualTo(seen.restarts());
                assertMoved(seen.clock(), moved.clock(), by);
                drifting[0] += seen.clock().drift() == 0 ? 0 : 1;
              });
        });
    assertThat(drifting[0]).isPositive();
  }

  private static void assertMoved(DeviceClock clock, DeviceClock moved, Duration by) {
    assertThat(moved.readings()).isEqualTo(clock.readings());
    assertThat(moved.zero() - clock.zero()).isCloseTo(by.toMillis(), offset(1.0));
    assertThat(moved.drift()).isCloseTo(clock.drift(), offset(1e-9));
    assertThat(moved.usualDelay()).isCloseTo(clock.usualDelay(), offset(1.0));
  }

  /** Of every device that timed a dog, by dog and device. */
  private static Map<String, DeviceSeen> clocks(List<Fact<?>> facts) {
    Placement placement = new Placement(MemoryFacts.of(facts), View.EVERYTHING);
    ClubTimings timings = new ClubTimings(placement, Instant.EPOCH, CurveQuestions.AGED_TO);
    Map<String, DeviceSeen> clocks = new TreeMap<>();
    for (String dog : GeneratedHistory.DOGS) {
      timings
          .ofDog(dog, placement.ofDog(dog))
          .devices()
          .forEach(seen -> clocks.put(dog + " by " + seen.device(), seen));
    }
    return clocks;
  }

  /** Keys and forgettings of people whom nobody else speaks of. */
  @Test
  void whatConcernsOthersChangesNothing() {
    forHistories(
        HISTORIES / 3,
        (facts, random) -> {
          List<Fact<?>> more = new ArrayList<>(facts);
          more.add(said(new AccessKeyIssued("k-9", List.of(), null, null, ""), random));
          more.add(said(new PersonForgotten("h-9"), random));
          for (View view : views(random)) {
            Laws.assertSameWhereBothAsked(answers(facts, view), answers(more, view));
          }
          assertThat(EveryAnswer.ofAnyView(MemoryFacts.of(more)).get("digest"))
              .isEqualTo(EveryAnswer.ofAnyView(MemoryFacts.of(facts)).get("digest"));
        });
  }

  private static Fact<?> said(TrainingEvent event, Random random) {
    return new Fact<>(
        new Moment(GeneratedHistory.anyTime(random), "a-" + random.nextInt(1_000)),
        GeneratedHistory.anyRecordingTime(random),
        event,
        null);
  }
}
