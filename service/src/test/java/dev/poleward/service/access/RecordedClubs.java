package dev.poleward.service.access;

import dev.poleward.domain.event.RepEvent.RepLogged;
import dev.poleward.domain.event.SessionEvent.SessionOpened;
import dev.poleward.domain.event.TimingEvent.TimingRecorded;
import dev.poleward.domain.event.TrainingEvent;
import dev.poleward.domain.record.Corrections;
import dev.poleward.domain.record.EntityKind;
import dev.poleward.domain.record.EntityRef;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Facts;
import dev.poleward.domain.record.Filing;
import dev.poleward.domain.record.Moment;
import dev.poleward.service.projection.ClubReader;
import dev.poleward.service.projection.Reading;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Clubs in memory, with events that are recorded but not applied yet when a test wants some. Safe
 * for use by many threads.
 */
final class RecordedClubs implements ClubReader {

  private final Map<String, List<Fact<?>>> applied = new HashMap<>();
  private final Map<String, List<Fact<?>>> behind = new HashMap<>();
  private boolean canCatchUp = true;
  private int catchUps;
  private int events;

  /** Records and applies an event. */
  synchronized void given(String club, TrainingEvent event) {
    applied.computeIfAbsent(club, _ -> new ArrayList<>()).add(fact(event));
  }

  /** Records an event that is applied by the next catching up only. */
  synchronized void givenElsewhere(String club, TrainingEvent event) {
    behind.computeIfAbsent(club, _ -> new ArrayList<>()).add(fact(event));
  }

  private Fact<?> fact(TrainingEvent event) {
    Instant time = Instant.parse("2026-05-04T17:00:00Z").plusSeconds(events++);
    return new Fact<>(new Moment(time, "e-" + events), time, event, null);
  }

  /** Whether catching up comes about from now on. */
  synchronized void canCatchUp(boolean can) {
    canCatchUp = can;
  }

  synchronized int catchUps() {
    return catchUps;
  }

  @Override
  public synchronized boolean catchUp(String club, Duration wait) {
    catchUps++;
    if (canCatchUp) {
      List<Fact<?>> late = behind.remove(club);
      if (late != null) {
        applied.computeIfAbsent(club, _ -> new ArrayList<>()).addAll(late);
      }
    }
    return canCatchUp;
  }

  @Override
  public synchronized Reading open(String club) {
    return new Opened(club, new Listed(List.copyOf(applied.getOrDefault(club, List.of()))));
  }

  private record Opened(String club, Listed facts) implements Reading {
    @Override
    public long position() {
      return facts.all().size();
    }

    @Override
    public List<FeedEvent> feed(long after, int limit) {
      throw new UnsupportedOperationException();
    }

    @Override
    public Optional<Fate> fate(String eventId) {
      throw new UnsupportedOperationException();
    }

    @Override
    public DigestAnswer digest() {
      throw new UnsupportedOperationException();
    }

    @Override
    public void close() {}
  }

  private record Listed(List<Fact<?>> all) implements Facts {

    private List<Fact<RepLogged>> reps() {
      return all.stream()
          .flatMap(fact -> Optional.ofNullable(fact.as(RepLogged.class)).stream())
          .toList();
    }

    @Override
    public List<Fact<RepLogged>> repsOf(String dog) {
      return reps().stream().filter(rep -> rep.event().dog().equals(dog)).toList();
    }

    @Override
    public List<Fact<RepLogged>> repsIn(String session) {
      return reps().stream().filter(rep -> rep.event().session().equals(session)).toList();
    }

    @Override
    public List<Fact<RepLogged>> repsLoggedAs(String rep) {
      return reps().stream().filter(logged -> logged.event().rep().equals(rep)).toList();
    }

    @Override
    public List<Fact<TimingRecorded>> timingsOf(String device, Instant from, Instant until) {
      throw new UnsupportedOperationException();
    }

    @Override
    public List<Fact<?>> about(EntityRef entity) {
      List<Fact<?>> found = new ArrayList<>();
      for (Fact<?> fact : all) {
        if (entity.equals(Filing.of(fact.event()))) {
          found.add(fact);
        }
      }
      return found;
    }

    @Override
    public List<String> announced(EntityKind kind, String after, int limit) {
      throw new UnsupportedOperationException();
    }

    @Override
    public List<Fact<SessionOpened>> sessionsOpened(@Nullable Moment after, int limit) {
      throw new UnsupportedOperationException();
    }

    @Override
    public Optional<Fact<?>> event(String id) {
      for (Fact<?> fact : all) {
        if (fact.id().equals(id)) {
          return Optional.of(fact);
        }
      }
      return Optional.empty();
    }

    @Override
    public Corrections corrections() {
      return Corrections.of(all);
    }

    @Override
    public void everUnmet(Consumer<Fact<?>> receiver) {
      all.forEach(receiver);
    }

    @Override
    public void all(Consumer<Fact<?>> receiver) {
      all.forEach(receiver);
    }
  }
}
