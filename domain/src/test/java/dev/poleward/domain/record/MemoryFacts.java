package dev.poleward.domain.record;

import dev.poleward.domain.event.DogEvent.DogMerged;
import dev.poleward.domain.event.EventWithdrawn;
import dev.poleward.domain.event.RepEvent.RepAmended;
import dev.poleward.domain.event.RepEvent.RepLogged;
import dev.poleward.domain.event.SessionEvent.SessionOpened;
import dev.poleward.domain.event.TimingEvent;
import dev.poleward.domain.event.TimingEvent.TimingPaired;
import dev.poleward.domain.event.TimingEvent.TimingRecorded;
import dev.poleward.domain.event.TimingEvent.TimingUnpaired;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Facts in a list, every question answered by looking at all of them: slow and obviously right.
 * What other implementations of {@link Facts} are compared with. Immutable.
 */
public final class MemoryFacts implements Facts {

  private final List<Fact<?>> facts;
  private final Corrections corrections;

  private MemoryFacts(List<Fact<?>> facts) {
    this.facts = facts;
    this.corrections = Corrections.of(facts.stream().filter(this::corrects).toList());
  }

  /**
   * Keeps what is recorded.
   *
   * @param recorded in any order; of several under one id the one recorded first is kept
   */
  public static MemoryFacts of(Collection<? extends Fact<?>> recorded) {
    Map<String, Fact<?>> first = new LinkedHashMap<>();
    for (Fact<?> fact : recorded) {
      first.merge(fact.id(), fact, MemoryFacts::recordedFirst);
    }
    return new MemoryFacts(List.copyOf(first.values()));
  }

  private static Fact<?> recordedFirst(Fact<?> one, Fact<?> other) {
    return other.recorded().isBefore(one.recorded()) ? other : one;
  }

  private boolean corrects(Fact<?> fact) {
    return switch (fact.event()) {
      case EventWithdrawn _, RepAmended _, DogMerged _, TimingPaired _, TimingUnpaired _ -> true;
      case RepLogged logged -> !repsLoggedAs(logged.rep()).getFirst().id().equals(fact.id());
      default -> false;
    };
  }

  @Override
  public List<Fact<RepLogged>> repsOf(String dog) {
    return loggings().filter(fact -> fact.event().dog().equals(dog)).toList();
  }

  @Override
  public List<Fact<RepLogged>> repsIn(String session) {
    return loggings().filter(fact -> fact.event().session().equals(session)).toList();
  }

  @Override
  public List<Fact<RepLogged>> repsLoggedAs(String rep) {
    return loggings().filter(fact -> fact.event().rep().equals(rep)).toList();
  }

  private Stream<Fact<RepLogged>> loggings() {
    return facts.stream().map(fact -> fact.as(RepLogged.class)).filter(Objects::nonNull);
  }

  @Override
  public List<Fact<TimingRecorded>> timingsOf(String device, Instant from, Instant until) {
    return facts.stream()
        .map(fact -> fact.as(TimingRecorded.class))
        .filter(Objects::nonNull)
        .filter(fact -> fact.event().device().equals(device))
        .filter(fact -> !fact.time().isBefore(from) && fact.time().isBefore(until))
        .toList();
  }

  @Override
  public List<Fact<?>> about(EntityRef entity) {
    List<Fact<?>> found = new ArrayList<>();
    for (Fact<?> fact : facts) {
      if (entity.equals(Filing.of(fact.event()))) {
        found.add(fact);
      }
    }
    return found;
  }

  @Override
  public List<String> announced(EntityKind kind, String after, int limit) {
    return facts.stream()
        .map(fact -> Announcement.of(fact.event()))
        .filter(entity -> entity != null && entity.kind() == kind)
        .map(EntityRef::id)
        .filter(id -> id.compareTo(after) > 0)
        .distinct()
        .sorted()
        .limit(limit)
        .toList();
  }

  @Override
  public List<Fact<SessionOpened>> sessionsOpened(@Nullable Moment after, int limit) {
    return facts.stream()
        .map(fact -> fact.as(SessionOpened.class))
        .filter(Objects::nonNull)
        .filter(fact -> after == null || fact.moment().compareTo(after) > 0)
        .sorted(Comparator.comparing(Fact::moment))
        .limit(limit)
        .toList();
  }

  @Override
  public Optional<Fact<?>> event(String id) {
    for (Fact<?> fact : facts) {
      if (fact.id().equals(id)) {
        return Optional.of(fact);
      }
    }
    return Optional.empty();
  }

  @Override
  public Corrections corrections() {
    return corrections;
  }

  /** Gives no more than what it must. */
  @Override
  public void everUnmet(Consumer<Fact<?>> receiver) {
    for (Fact<?> fact : facts) {
      List<EntityRef> references = References.of(fact.event());
      boolean timingOfRep =
          fact.event() instanceof TimingEvent
              && references.stream().anyMatch(each -> each.kind() == EntityKind.REP);
      if (timingOfRep
          || references.stream().anyMatch(reference -> !recordedBy(reference, fact.recorded()))) {
        receiver.accept(fact);
      }
    }
  }

  private boolean recordedBy(EntityRef reference, Instant time) {
    for (Fact<?> fact : facts) {
      boolean meant =
          reference.kind() == EntityKind.EVENT
              ? reference.id().equals(fact.id())
              : reference.equals(Announcement.of(fact.event()));
      if (meant && !fact.recorded().isAfter(time)) {
        return true;
      }
    }
    return false;
  }

  @Override
  public void all(Consumer<Fact<?>> receiver) {
    facts.forEach(receiver);
  }
}
