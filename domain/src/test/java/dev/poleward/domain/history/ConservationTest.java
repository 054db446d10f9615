package dev.poleward.domain.history;

import static dev.poleward.domain.history.HistoryCheck.forHistories;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.EventWithdrawn;
import dev.poleward.domain.event.RepEvent.RepLogged;
import dev.poleward.domain.event.SessionEvent.SetupChanged;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Facts;
import dev.poleward.domain.record.MemoryFacts;
import dev.poleward.domain.record.PlacedRep;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.View;
import dev.poleward.domain.record.Waiting;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** No rep is lost, and none is counted twice. */
class ConservationTest {

  private static final int HISTORIES = 3_000;

  @Test
  void everyLoggingIsAccountedForOnce() {
    forHistories(
        HISTORIES,
        (facts, random) -> {
          for (View view : Laws.views(random)) {
            account(facts, view);
          }
        });
  }

  private static void account(List<Fact<?>> all, View view) {
    Facts facts = MemoryFacts.of(all);
    Placement placement = new Placement(facts, view);
    Set<String> animals = new TreeSet<>();
    GeneratedHistory.DOGS.forEach(dog -> animals.add(placement.identity().of(dog)));
    List<PlacedRep> ofDogs = collected(animals, placement::ofDog);
    List<PlacedRep> inSessions = collected(GeneratedHistory.SESSIONS, placement::inSession);

    assertThat(ofDogs).doesNotHaveDuplicates();
    assertThat(inSessions).containsExactlyInAnyOrderElementsOf(ofDogs);
    assertThat(ofDogs.stream().map(PlacedRep::rep)).doesNotHaveDuplicates();
    assertThat(ofDogs.stream().map(placed -> placed.moment().id()))
        .containsExactlyInAnyOrderElementsOf(expected(all, facts, view));
  }

  private static List<PlacedRep> collected(
      Iterable<String> ids, Function<String, List<PlacedRep>> reps) {
    List<PlacedRep> all = new ArrayList<>();
    ids.forEach(id -> all.addAll(reps.apply(id)));
    return all;
  }

  /** All that were logged but those out of view, withdrawn, logged before, or waiting. */
  private static List<String> expected(List<Fact<?>> all, Facts facts, View view) {
    Set<String> waiting = new TreeSet<>();
    Waiting.of(facts, view).forEach(each -> waiting.add(each.fact().id()));
    List<Fact<RepLogged>> standing =
        all.stream()
            .map(fact -> fact.as(RepLogged.class))
            .filter(Objects::nonNull)
            .filter(logging -> view.knew(logging.recorded()))
            .filter(logging -> !withdrawn(logging, all, view))
            .toList();
    return standing.stream()
        .filter(logging -> view.asOf() == null || !logging.time().isAfter(view.asOf()))
        .filter(logging -> standing.stream().noneMatch(other -> before(other, logging)))
        .map(Fact::id)
        .filter(id -> !waiting.contains(id))
        .toList();
  }

  private static boolean withdrawn(Fact<?> fact, List<Fact<?>> all, View view) {
    return all.stream()
        .filter(other -> view.knew(other.recorded()))
        .anyMatch(
            other ->
                other.event() instanceof EventWithdrawn withdrawal
                    && withdrawal.event().equals(fact.id()));
  }

  private static boolean before(Fact<RepLogged> other, Fact<RepLogged> logging) {
    return other.event().rep().equals(logging.event().rep())
        && other.moment().compareTo(logging.moment()) < 0;
  }

  @Test
  void everyRepIsPlacedOverTheLatestSetupUpToItsOwnInstant() {
    forHistories(
        HISTORIES / 3,
        (facts, _) -> {
          Placement placement = new Placement(MemoryFacts.of(facts), View.EVERYTHING);
          for (String session : GeneratedHistory.SESSIONS) {
            for (PlacedRep rep : placement.inSession(session)) {
              assertThat(rep.setupEvent()).isEqualTo(setupFor(rep, facts, placement));
            }
          }
        });
  }

  private static @Nullable String setupFor(
      PlacedRep rep, List<Fact<?>> facts, Placement placement) {
    Fact<SetupChanged> latest = null;
    for (Fact<?> fact : facts) {
      Fact<SetupChanged> setup = fact.as(SetupChanged.class);
      if (setup != null
          && rep.details().setup() == null
          && setup.event().session().equals(rep.session())
          && Objects.requireNonNullElse(setup.event().poleSet(), "main").equals(rep.poleSet())
          && placement.knowledge().counts(setup)
          && !setup.time().isAfter(rep.moment().time())
          && (latest == null || latest.moment().compareTo(setup.moment()) < 0)) {
        latest = setup;
      }
    }
    return latest == null ? null : latest.id();
  }

  @Test
  void allRegistrationsOfOneAnimalHaveTheSameReps() {
    forHistories(
        HISTORIES / 3,
        (facts, _) -> {
          Placement placement = new Placement(MemoryFacts.of(facts), View.EVERYTHING);
          for (String dog : GeneratedHistory.DOGS) {
            String animal = placement.identity().of(dog);
            assertThat(placement.identity().of(animal)).isEqualTo(animal);
            assertThat(placement.identity().group(dog)).contains(dog, animal);
            for (String same : placement.identity().group(dog)) {
              assertThat(placement.identity().of(same)).isEqualTo(animal);
              assertThat(placement.ofDog(same)).isEqualTo(placement.ofDog(dog));
            }
          }
        });
  }
}
