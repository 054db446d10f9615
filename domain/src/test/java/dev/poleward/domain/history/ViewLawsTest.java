package dev.poleward.domain.history;

import static dev.poleward.domain.history.HistoryCheck.forHistories;
import static dev.poleward.domain.history.Laws.answers;
import static dev.poleward.domain.history.Laws.assertSame;
import static dev.poleward.domain.history.Laws.assertSameWhereBothAsked;
import static dev.poleward.domain.history.Laws.those;
import static dev.poleward.domain.history.Laws.without;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.AimEvent;
import dev.poleward.domain.event.ClassEvent.ClassJoined;
import dev.poleward.domain.event.ClassEvent.ClassLeft;
import dev.poleward.domain.event.DeviceEvent.DeviceAssigned;
import dev.poleward.domain.event.DogEvent.DogCleared;
import dev.poleward.domain.event.DogEvent.DogRested;
import dev.poleward.domain.event.ProgrammeEvent.PlanIssued;
import dev.poleward.domain.event.ProgrammeEvent.ProgrammeAssigned;
import dev.poleward.domain.event.RepEvent.RepLogged;
import dev.poleward.domain.event.SessionEvent.SessionAttended;
import dev.poleward.domain.event.SessionEvent.SessionClosed;
import dev.poleward.domain.event.SessionEvent.SessionOpened;
import dev.poleward.domain.event.SessionEvent.SetupChanged;
import dev.poleward.domain.event.TimingEvent.TimingRecorded;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Facts;
import dev.poleward.domain.record.MemoryFacts;
import dev.poleward.domain.record.PlacedRep;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.View;
import dev.poleward.domain.record.Waiting;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The two times: what had happened by then, and what was known by then. */
class ViewLawsTest {

  private static final int HISTORIES = 2_000;
  private static final Instant FAR = Instant.parse("2199-12-31T23:59:59Z");

  @Test
  void whatWasKnownIsWhatHadBeenRecorded() {
    forHistories(
        HISTORIES,
        (facts, random) -> {
          Instant asOf = GeneratedHistory.anyTime(random);
          Instant knownAt = GeneratedHistory.anyRecordingTime(random);
          List<Fact<?>> known = those(facts, fact -> !fact.recorded().isAfter(knownAt));
          assertSameWhereBothAsked(
              answers(facts, new View(null, knownAt)), answers(known, View.EVERYTHING));
          assertSameWhereBothAsked(
              answers(facts, new View(asOf, knownAt)), answers(known, new View(asOf, null)));
        });
  }

  /** Of what later reps wait for, and of their loggings as such, only the whole record knows. */
  @Test
  void whatHadHappenedIsAllButWhatHappenedLater() {
    forHistories(
        HISTORIES,
        (facts, random) -> {
          Instant asOf = GeneratedHistory.anyTime(random);
          List<Fact<?>> happened = those(facts, fact -> !fact.time().isAfter(asOf) || lasts(fact));
          assertSameWhereBothAsked(
              without(answers(facts, new View(asOf, null)), ViewLawsTest::isOfTheWholeRecord),
              without(answers(happened, View.EVERYTHING), ViewLawsTest::isOfTheWholeRecord));
        });
  }

  /** An opening stands for its session at all times, though lists of sessions cut it off. */
  static boolean lasts(Fact<?> fact) {
    return !happens(fact) || fact.event() instanceof SessionOpened;
  }

  private static boolean isOfTheWholeRecord(String question) {
    // A report lists sessions, and lists cut off what was opened later.
    return question.equals("waiting")
        || question.startsWith("loggings")
        || question.startsWith("report");
  }

  /** Not registrations and corrections: those hold at the time of what they concern. */
  private static boolean happens(Fact<?> fact) {
    return switch (fact.event()) {
      case RepLogged _, SetupChanged _, SessionAttended _, SessionClosed _, TimingRecorded _ ->
          true;
      case ClassJoined _, ClassLeft _, ProgrammeAssigned _, DeviceAssigned _ -> true;
      case SessionOpened _, PlanIssued _, DogRested _, DogCleared _, AimEvent _ -> true;
      default -> false;
    };
  }

  /** Plans count on it: they cut the whole record off rather than place it anew. */
  @Test
  void repsUpToAnInstantAreThoseOfTheWholeRecordCutOff() {
    forHistories(
        HISTORIES / 4,
        (facts, random) -> {
          View then = new View(GeneratedHistory.anyTime(random), null);
          for (String dog : GeneratedHistory.DOGS) {
            List<PlacedRep> whole =
                new Placement(MemoryFacts.of(facts), View.EVERYTHING).ofDog(dog);
            assertThat(new Placement(MemoryFacts.of(facts), then).ofDog(dog))
                .usingRecursiveFieldByFieldElementComparatorIgnoringFields("duplicates")
                .containsExactlyElementsOf(
                    whole.stream()
                        .filter(rep -> !rep.moment().time().isAfter(then.asOf()))
                        .toList());
          }
        });
  }

  @Test
  void theFarFutureKnowsNoMoreThanNow() {
    forHistories(
        HISTORIES / 10,
        (facts, _) -> {
          assertSame(answers(facts, View.EVERYTHING), answers(facts, new View(FAR, null)));
          assertSame(answers(facts, View.EVERYTHING), answers(facts, new View(null, FAR)));
          assertSame(answers(facts, View.EVERYTHING), answers(facts, new View(FAR, FAR)));
        });
  }

  /** The list is found by a short cut; here every event is asked. */
  @Test
  void allThatWaitsIsListed() {
    forHistories(
        HISTORIES,
        (facts, random) -> {
          for (View view : Laws.views(random)) {
            assertThat(listed(facts, view)).isEqualTo(waitingOneByOne(facts, view));
          }
        });
  }

  private static Set<String> listed(List<Fact<?>> facts, View view) {
    Set<String> ids = new TreeSet<>();
    Waiting.of(MemoryFacts.of(facts), view).forEach(each -> ids.add(each.fact().id()));
    return ids;
  }

  private static Set<String> waitingOneByOne(List<Fact<?>> all, View view) {
    Facts facts = MemoryFacts.of(all);
    Placement placement = new Placement(facts, view);
    Set<String> ids = new TreeSet<>();
    for (Fact<?> fact : all) {
      boolean seen = view.asOf() == null || !happens(fact) || !fact.time().isAfter(view.asOf());
      if (seen && placement.knowledge().stands(fact) && !placement.waitsFor(fact).isEmpty()) {
        ids.add(fact.id());
      }
    }
    return ids;
  }
}
