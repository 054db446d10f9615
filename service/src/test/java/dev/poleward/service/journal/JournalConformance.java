package dev.poleward.service.journal;

import static dev.poleward.service.journal.Entries.entry;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.poleward.service.journal.AppendOutcome.Appended;
import dev.poleward.service.journal.AppendOutcome.Unavailable;
import dev.poleward.service.journal.JournalRecord.Recorded;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/**
 * What every journal promises. Run by a test class for each; the journal may hold entries of other
 * tests already.
 */
@Timeout(60)
interface JournalConformance {

  Duration SHORT = Duration.ofMillis(50);

  /** The journal under test, open. */
  Journal journal();

  /** How long something that has to come is waited for. */
  default Duration patience() {
    return Duration.ofSeconds(20);
  }

  /** A journal of its own, to be closed by the test. */
  Journal anotherJournal();

  @Test
  default void whatWasAppendedIsReadAsItWasWritten() {
    // Given
    var whole = Entries.withEverything(Entries.aClub());
    var bare = entry(whole.club(), 2);

    // When
    var places = append(whole, bare);

    // Then
    assertThat(read(places.getFirst(), 2))
        .containsExactly(new Recorded(places.get(0), whole), new Recorded(places.get(1), bare));
  }

  @Test
  default void entriesOfAClubStandInItsPartitionInOrder() {
    // Given
    var club = Entries.aClub();

    // When
    var places = new ArrayList<Place>();
    places.addAll(append(entry(club, 1)));
    places.addAll(append(entry(club, 2), entry(club, 3)));
    places.addAll(append(entry(club, 4)));

    // Then
    assertThat(places).extracting(Place::partition).containsOnly(journal().partitionOf(club));
    assertThat(places).extracting(Place::offset).isSorted().doesNotHaveDuplicates().hasSize(4);
    assertThat(ids(read(places.getFirst(), 4))).containsExactly("1", "2", "3", "4");
  }

  @Test
  default void anEndIsWhereTheNextEntryGoes() {
    // Given
    var club = Entries.aClub();
    int partition = journal().partitionOf(club);

    // When
    var first = append(entry(club, 1)).getFirst();
    long end = journal().ends(patience())[partition];
    var second = append(entry(club, 2)).getFirst();

    // Then
    assertThat(end).isEqualTo(first.offset() + 1).isEqualTo(second.offset());
    assertThat(journal().ends(patience())).hasSize(Journal.PARTITIONS);
  }

  @Test
  default void aTailSeesWhatComesLaterAndNothingFromBefore() {
    // Given
    var club = Entries.aClub();
    append(entry(club, 1));
    try (var tail =
        journal().tail(List.of(journal().partitionOf(club)), journal().ends(patience()))) {
      assertThat(tail.poll(SHORT)).isEmpty();

      // When
      append(entry(club, 2));

      // Then
      assertThat(ids(poll(tail, 1))).containsExactly("2");
    }
  }

  @Test
  default void aTailKeepsToItsPartitions() {
    // Given
    var mine = Entries.aClub();
    var other = Entries.aClubElsewhere(mine);
    try (var tail =
        journal().tail(List.of(journal().partitionOf(mine)), journal().ends(patience()))) {

      // When
      append(entry(other, 1));
      append(entry(mine, 2));

      // Then
      assertThat(ids(poll(tail, 1))).containsExactly("2");
      assertThat(tail.poll(SHORT)).isEmpty();
    }
  }

  @Test
  default void aTailCannotBeginBeyondTheEnd() {
    // Given
    var club = Entries.aClub();
    append(entry(club, 1));
    long[] from = journal().ends(patience());
    from[journal().partitionOf(club)] += 1_000;

    // When
    try (var tail = journal().tail(List.of(journal().partitionOf(club)), from)) {

      // Then
      assertThatThrownBy(() -> poll(tail, 1)).isInstanceOf(JournalException.class);
    }
  }

  @Test
  default void wakingEndsAPoll() throws Exception {
    // Given
    var club = Entries.aClub();
    var partition = List.of(journal().partitionOf(club));
    try (var tail = journal().tail(partition, journal().ends(patience()));
        var threads = Executors.newVirtualThreadPerTaskExecutor()) {
      var records = threads.submit(() -> tail.poll(Duration.ofSeconds(50)));

      // When
      tail.wakeup();

      // Then
      assertThat(records.get()).isEmpty();
      append(entry(club, 1));
      assertThat(ids(poll(tail, 1))).containsExactly("1");
    }
  }

  @Test
  default void aThousandEntriesGoTogether() {
    // Given
    var club = Entries.aClub();
    var thousand = IntStream.range(0, 1_000).mapToObj(at -> entry(club, at)).toList();

    // When
    var places = ((Appended) journal().append(thousand, patience())).places();

    // Then
    assertThat(places)
        .hasSize(1_000)
        .isSortedAccordingTo((a, b) -> Long.compare(a.offset(), b.offset()));
    assertThat(read(places.getFirst(), 1_000))
        .extracting(record -> ((Recorded) record).entry())
        .isEqualTo(thousand);
  }

  @Test
  default void noneTooManyOrThoseOfTwoClubsAreASlip() {
    var club = Entries.aClub();
    var tooMany = IntStream.range(0, 1_001).mapToObj(at -> entry(club, at)).toList();
    var ofTwo = List.of(entry(club, 1), entry(Entries.aClub(), 2));

    for (var slip : List.of(List.<Entry>of(), tooMany, ofTwo)) {
      assertThatThrownBy(() -> journal().append(slip, patience()))
          .isInstanceOf(IllegalArgumentException.class);
    }
  }

  @Test
  default void anEntryOfOneMebibyteIsTaken() {
    // Given
    var large = Entries.withData(Entries.aClub(), "{\"notes\":\"" + "ä".repeat(1 << 19) + "\"}");

    // When
    var place = append(large).getFirst();

    // Then
    assertThat(read(place, 1)).containsExactly(new Recorded(place, large));
  }

  @Test
  default void manyAppendAtOnceAndNothingIsLostOrOutOfOrder() throws Exception {
    // Given
    var clubs = IntStream.range(0, 40).mapToObj(_ -> Entries.aClub()).toList();
    long[] before = journal().ends(patience());

    // When
    try (var threads = Executors.newVirtualThreadPerTaskExecutor()) {
      var done = new ArrayList<Future<?>>();
      for (var club : clubs) {
        done.add(
            threads.submit(() -> IntStream.range(0, 25).forEach(at -> append(entry(club, at)))));
      }
      for (var each : done) {
        each.get();
      }
    }

    // Then
    try (var tail =
        journal().tail(IntStream.range(0, Journal.PARTITIONS).boxed().toList(), before)) {
      var read = poll(tail, 40 * 25);
      for (var club : clubs) {
        var ofClub = read.stream().filter(r -> ((Recorded) r).entry().club().equals(club)).toList();
        assertThat(ids(ofClub))
            .containsExactlyElementsOf(IntStream.range(0, 25).mapToObj(String::valueOf).toList());
      }
    }
  }

  @Test
  default void aClosedJournalTakesNothing() {
    // Given
    var closed = anotherJournal();
    closed.close();

    // When
    var outcome = closed.append(List.of(entry(Entries.aClub(), 1)), patience());

    // Then
    assertThat(outcome).isInstanceOf(Unavailable.class);
  }

  private List<Place> append(Entry... entries) {
    var outcome = journal().append(List.of(entries), patience());
    assertThat(outcome).isInstanceOf(Appended.class);
    return ((Appended) outcome).places();
  }

  private List<JournalRecord> read(Place from, int count) {
    var offsets = new long[Journal.PARTITIONS];
    offsets[from.partition()] = from.offset();
    try (var tail = journal().tail(List.of(from.partition()), offsets)) {
      return poll(tail, count);
    }
  }

  private List<JournalRecord> poll(Tail tail, int count) {
    var records = new ArrayList<JournalRecord>();
    long giveUpAt = System.nanoTime() + patience().toNanos();
    while (records.size() < count && System.nanoTime() - giveUpAt < 0) {
      records.addAll(tail.poll(Duration.ofMillis(200)));
    }
    assertThat(records).hasSizeGreaterThanOrEqualTo(count);
    return records.subList(0, count);
  }

  private static List<String> ids(List<JournalRecord> records) {
    return records.stream().map(record -> ((Recorded) record).entry().envelope().id()).toList();
  }
}
