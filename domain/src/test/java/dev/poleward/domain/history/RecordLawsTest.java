package dev.poleward.domain.history;

import static dev.poleward.domain.history.HistoryCheck.forHistories;
import static dev.poleward.domain.history.Laws.answers;
import static dev.poleward.domain.history.Laws.assertSame;
import static dev.poleward.domain.history.Laws.views;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.ClubEvent.AccessKeyIssued;
import dev.poleward.domain.event.ClubEvent.PersonForgotten;
import dev.poleward.domain.event.TrainingEvent;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.MemoryFacts;
import dev.poleward.domain.record.Moment;
import dev.poleward.domain.record.View;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Set semantics: the promise that makes buffering, retrying and interleaving phones harmless. */
class RecordLawsTest {

  private static final int HISTORIES = 2_000;
  private static final Pattern RECORDED = Pattern.compile("recorded=[^,]++, ");

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

  private static List<Fact<?>> muddled(List<Fact<?>> facts, Random random) {
    List<Fact<?>> muddled = new ArrayList<>(facts);
    int repeats = random.nextInt(1 + facts.size());
    for (int i = 0; i < repeats; i++) {
      muddled.add(facts.get(random.nextInt(facts.size())));
    }
    Collections.shuffle(muddled, random);
    return muddled;
  }

  /**
   * However the events are split over requests, they are only recorded at other times. The clocks
   * of devices follow from those and are left out.
   */
  @Test
  void recordingTimesShowOnlyToThoseWhoAskWhatWasKnown() {
    forHistories(
        HISTORIES / 6,
        (facts, random) -> {
          List<Fact<?>> splitOtherwise = new ArrayList<>(facts);
          splitOtherwise.replaceAll(
              fact -> recorded(fact, fact.recorded().plusSeconds(random.nextInt(900))));
          Instant asOf = GeneratedHistory.anyTime(random);
          for (View view : List.of(View.EVERYTHING, new View(asOf, null))) {
            assertThat(withoutRecordingTimes(splitOtherwise, view))
                .isEqualTo(withoutRecordingTimes(facts, view));
          }
        });
  }

  private static <E extends TrainingEvent> Fact<E> recorded(Fact<E> fact, Instant time) {
    return new Fact<>(fact.moment(), time, fact.event(), fact.sealed());
  }

  private static String withoutRecordingTimes(List<Fact<?>> facts, View view) {
    return RECORDED
        .matcher(
            Laws.without(answers(facts, view), question -> question.startsWith("clocks"))
                .toString())
        .replaceAll("");
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
