package dev.poleward.service.projection;

import dev.poleward.domain.event.RepEvent.RepLogged;
import dev.poleward.domain.event.SessionEvent.SessionOpened;
import dev.poleward.domain.event.TimingEvent.TimingRecorded;
import dev.poleward.domain.event.TrainingEvent;
import dev.poleward.domain.record.Corrections;
import dev.poleward.domain.record.EntityKind;
import dev.poleward.domain.record.EntityRef;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Facts;
import dev.poleward.domain.record.Moment;
import dev.poleward.service.projection.EventRow.EntityRow;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** One club's facts from its rows. For one thread and one reading. */
final class RowFacts implements Facts {

  private final String club;
  private final RowSnapshot snapshot;
  private final Rows rows;
  private final Supplier<Corrections> gathering;
  private final Map<EntityRef, List<Fact<?>>> about = new HashMap<>();
  private @Nullable Corrections corrections;

  RowFacts(String club, RowSnapshot snapshot, Rows rows, Supplier<Corrections> gathering) {
    this.club = club;
    this.snapshot = snapshot;
    this.rows = rows;
    this.gathering = gathering;
  }

  @Override
  public List<Fact<RepLogged>> repsOf(String dog) {
    List<Fact<RepLogged>> found = new ArrayList<>();
    scan(RowKeys.repsOfDog(club, dog).done(), (_, row) -> found.add(logged(row)));
    return found;
  }

  @Override
  public List<Fact<RepLogged>> repsIn(String session) {
    List<Fact<RepLogged>> found = new ArrayList<>();
    byte[] prefix = RowKeys.daysInSession(club, session).done();
    scan(
        prefix,
        (key, _) -> {
          int dogEnds = key.length - Integer.BYTES - 1;
          String dog = RowKeys.rest(Arrays.copyOf(key, dogEnds), prefix.length);
          int day = new RowInput(Arrays.copyOfRange(key, dogEnds + 1, key.length)).whole();
          addRepsOfDay(found, session, dog, day);
        });
    return found;
  }

  private void addRepsOfDay(List<Fact<RepLogged>> found, String session, String dog, int day) {
    byte[] nextDay = RowKeys.repsOfDay(club, dog, day + 1);
    snapshot.scan(
        RowKeys.repsOfDog(club, dog).done(),
        RowKeys.repsOfDay(club, dog, day),
        (key, row) -> {
          if (Arrays.compareUnsigned(key, nextDay) >= 0) {
            return false;
          }
          Fact<RepLogged> rep = logged(row);
          if (rep.event().session().equals(session)) {
            found.add(rep);
          }
          return true;
        });
  }

  @Override
  public List<Fact<RepLogged>> repsLoggedAs(String rep) {
    byte[] row = snapshot.get(RowKeys.entity(club, new EntityRef(EntityKind.REP, rep)));
    if (row == null) {
      return List.of();
    }
    List<Fact<RepLogged>> found = new ArrayList<>();
    found.add(logged(atPosition(EntityRow.read(row).position())));
    found.addAll(corrections().furtherLoggings(rep));
    return found;
  }

  @Override
  public List<Fact<TimingRecorded>> timingsOf(String device, Instant from, Instant until) {
    byte[] prefix = RowKeys.timingsOf(club, device).done();
    List<Fact<TimingRecorded>> found = new ArrayList<>();
    snapshot.scan(
        prefix,
        RowKeys.timingOf(club, device, new Moment(from, "")),
        (_, row) -> {
          Fact<TimingRecorded> timing = typed(row, TimingRecorded.class);
          if (!timing.time().isBefore(until)) {
            return false;
          }
          found.add(timing);
          return true;
        });
    return found;
  }

  @Override
  public List<Fact<?>> about(EntityRef entity) {
    List<Fact<?>> remembered = about.get(entity);
    if (remembered == null) {
      List<Fact<?>> found = new ArrayList<>(4);
      scan(RowKeys.about(club, entity).done(), (_, row) -> found.add(rows.readFact(row)));
      about.put(entity, found);
      remembered = found;
    }
    return remembered;
  }

  @Override
  public List<String> announced(EntityKind kind, String after, int limit) {
    byte[] prefix = RowKeys.entities(club, kind).done();
    byte[] from = RowKeys.entity(club, new EntityRef(kind, after));
    List<String> found = new ArrayList<>();
    snapshot.scan(
        prefix,
        from,
        (key, _) -> {
          String id = RowKeys.rest(key, prefix.length);
          if (!id.equals(after)) {
            found.add(id);
          }
          return found.size() < limit;
        });
    return found;
  }

  @Override
  public List<Fact<SessionOpened>> sessionsOpened(@Nullable Moment after, int limit) {
    byte[] prefix = RowKeys.openings(club).done();
    byte[] from = after == null ? prefix : RowKeys.opening(club, after);
    List<Fact<SessionOpened>> found = new ArrayList<>();
    snapshot.scan(
        prefix,
        from,
        (_, row) -> {
          Fact<SessionOpened> fact = typed(row, SessionOpened.class);
          if (!fact.moment().equals(after)) {
            found.add(fact);
          }
          return found.size() < limit;
        });
    return found;
  }

  @Override
  public Optional<Fact<?>> event(String id) {
    byte[] row = snapshot.get(RowKeys.event(club, id));
    return row == null
        ? Optional.empty()
        : Optional.of(rows.readFact(atPosition(EventRow.read(row).position())));
  }

  @Override
  public Corrections corrections() {
    if (corrections == null) {
      corrections = gathering.get();
    }
    return corrections;
  }

  @Override
  public void everUnmet(Consumer<Fact<?>> receiver) {
    byte[] prefix = RowKeys.allUnmet(club).done();
    scan(
        prefix,
        (key, _) -> {
          long position = new RowInput(Arrays.copyOfRange(key, prefix.length, key.length)).number();
          receiver.accept(rows.readFact(atPosition(position)));
        });
  }

  @Override
  public void all(Consumer<Fact<?>> receiver) {
    byte[] prefix = RowKeys.feedOf(club).done();
    scan(prefix, (_, row) -> receiver.accept(rows.readFact(followed(row))));
  }

  byte[] atPosition(long position) {
    return followed(present(snapshot.get(RowKeys.feed(club, position))));
  }

  private byte[] followed(byte[] row) {
    byte[] target = Rows.target(row);
    return target == null ? row : present(snapshot.get(target));
  }

  private interface RowReceiver {
    void accept(byte[] key, byte[] row);
  }

  private void scan(byte[] prefix, RowReceiver receiver) {
    snapshot.scan(
        prefix,
        prefix,
        (key, row) -> {
          receiver.accept(key, row);
          return true;
        });
  }

  private Fact<RepLogged> logged(byte[] row) {
    return typed(row, RepLogged.class);
  }

  private <E extends TrainingEvent> Fact<E> typed(byte[] row, Class<E> type) {
    Fact<E> fact = rows.readFact(row).as(type);
    if (fact == null) {
      throw new IllegalStateException("a row holds something else than " + type.getSimpleName());
    }
    return fact;
  }

  private static byte[] present(byte @Nullable [] row) {
    if (row == null) {
      throw new IllegalStateException("a row points to one that is not there");
    }
    return row;
  }
}
