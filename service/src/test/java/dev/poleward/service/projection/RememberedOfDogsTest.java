package dev.poleward.service.projection;

import static dev.poleward.domain.history.HistoryCheck.forRecordings;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.history.GeneratedHistory;
import dev.poleward.domain.programme.ProgrammesFollowed;
import dev.poleward.domain.record.EntityKind;
import dev.poleward.domain.record.PlacedRep;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.Registry;
import dev.poleward.domain.record.View;
import dev.poleward.service.journal.Entry;
import dev.poleward.service.projection.RememberedOfDogs.Making;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is remembered of a dog is what would be made anew, whatever was recorded since. */
class RememberedOfDogsTest {

  private static final int HISTORIES = 300;
  private static final long BYTES_MAX = 1L << 22;

  @TempDir private static Path folder;
  private static FoldedRows rows;

  @BeforeAll
  static void open() {
    rows = new FoldedRows(folder);
  }

  @AfterAll
  static void close() {
    rows.close();
  }

  /** Something of what a dog ran, or followed from then on. */
  private record Done(@Nullable Instant time, String what) {

    static Done of(PlacedRep rep) {
      return new Done(
          rep.moment().time(),
          "%s %s %s %s %s %s %s"
              .formatted(
                  rep.rep(),
                  rep.dog(),
                  rep.manoeuvre(),
                  rep.outcome(),
                  rep.details(),
                  rep.angle(),
                  rep.setup()));
    }

    boolean isBefore(Instant time) {
      return this.time == null || this.time.isBefore(time);
    }
  }

  /** All that a dog ran and followed; counts how often it is made. */
  private static final class Diary implements Making<List<Done>> {

    private int made;

    @Override
    public List<String> dogs(Placement placement, Registry registry) {
      return placement.facts().announced(EntityKind.DOG, "", 100).stream()
          .filter(dog -> placement.identity().of(dog).equals(dog))
          .filter(dog -> registry.dog(dog).filter(known -> !known.isGuest()).isPresent())
          .toList();
    }

    @Override
    public List<Done> made(Placement placement, Registry registry, String dog) {
      made++;
      List<Done> done = new ArrayList<>();
      placement.ofDog(dog).forEach(rep -> done.add(Done.of(rep)));
      ProgrammesFollowed.of(dog, registry)
          .periods()
          .forEach(each -> done.add(new Done(each.from(), "follows " + each.inForce())));
      return done;
    }

    List<Done> before(List<Done> done, Instant time) {
      return done.stream().filter(each -> each.isBefore(time)).toList();
    }
  }

  private final Diary diary = new Diary();
  private RememberedOfDogs<List<Done>> remembered = memory();

  private RememberedOfDogs<List<Done>> memory() {
    return new RememberedOfDogs<>(diary, BYTES_MAX, done -> 100L * done.size());
  }

  private void assertAsMadeAnew(Reading reading, @Nullable Instant knownAt, Instant before) {
    View view = new View(null, knownAt);
    Placement placement = new Placement(reading.facts(), view);
    Registry registry = new Registry(placement, view);
    RememberedOfDogs.Dogs<List<Done>> dogs = remembered.at(reading, knownAt);

    assertThat(dogs.dogs()).isEqualTo(diary.dogs(placement, registry));
    for (String dog : dogs.dogs()) {
      assertThat(diary.before(dogs.of(dog, before), before))
          .isEqualTo(diary.before(diary.made(placement, registry, dog), before));
    }
  }

  private static Instant anyTimeOrNever(Random random) {
    return random.nextBoolean() ? Instant.MAX : GeneratedHistory.anyTime(random);
  }

  @Test
  void itIsWhatWouldBeMadeAnewWhateverIsRecordedMeanwhile() {
    forRecordings(
        HISTORIES,
        (events, random) -> {
          // Given
          remembered = memory();
          String club = rows.aClub();
          List<Entry> told = HistoryEntries.of(club, events);
          List<Entry> said = random.nextBoolean() ? told : HistoryEntries.muddled(told, random);
          Instant knownAt = GeneratedHistory.anyRecordingTime(random);

          for (Entry entry : said) {
            try (Reading before = rows.open(club)) {
              // When
              rows.apply(List.of(entry));

              // Then
              try (Reading now = rows.open(club)) {
                assertAsMadeAnew(now, null, anyTimeOrNever(random));
                assertAsMadeAnew(now, knownAt, anyTimeOrNever(random));
              }
              // One that opened before and asks late sees nothing of what came since.
              assertAsMadeAnew(before, null, anyTimeOrNever(random));
            }
          }
        });
  }

  /** What had happened by then is in a look back what is before it in the whole. */
  @Test
  void whatLiesBeforeATimeIsWhatALookBackSees() {
    forRecordings(
        HISTORIES / 2,
        (events, random) -> {
          // Given
          String club = rows.aClub();
          rows.apply(HistoryEntries.of(club, events));
          Instant before = GeneratedHistory.anyTime(random);
          View back = new View(before.minusNanos(1), null);

          try (Reading reading = rows.open(club)) {
            Placement then = new Placement(reading.facts(), back);
            RememberedOfDogs.Dogs<List<Done>> dogs = remembered.at(reading, null);
            for (String dog : dogs.dogs()) {
              // Then
              assertThat(diary.before(dogs.of(dog, before), before))
                  .isEqualTo(diary.before(diary.made(then, new Registry(then, back), dog), before));
            }
          }
        });
  }

  @Test
  void whatNoNewsConcernIsMadeOnce() {
    forRecordings(
        HISTORIES / 10,
        (events, random) -> {
          // Given
          remembered = memory();
          String club = rows.aClub();
          rows.apply(HistoryEntries.of(club, events));
          askAll(club);
          int before = diary.made;

          // When
          askAll(club);

          // Then
          assertThat(diary.made).isEqualTo(before);
        });
  }

  private void askAll(String club) {
    try (Reading reading = rows.open(club)) {
      RememberedOfDogs.Dogs<List<Done>> dogs = remembered.at(reading, null);
      dogs.dogs().forEach(dog -> dogs.of(dog, Instant.MAX));
    }
  }
}
