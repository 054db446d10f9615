package dev.poleward.service.journal;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.service.journal.SegmentCheck.Outcome;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the check lets pass, and what it finds. */
class SegmentCheckTest {

  private static final long[] NOTHING_KNOWN = new long[Journal.PARTITIONS];

  @TempDir Path folder;
  private JournalFiles files;

  @BeforeEach
  void aJournal() throws IOException {
    files = JournalFiles.in(folder);
  }

  @Test
  void anUntouchedJournalIsSound() throws IOException {
    assertThat(check())
        .isEqualTo(new Outcome.Sound(Collections.nCopies(12, JournalFiles.END), List.of()));
  }

  @Test
  void anEmptyFolderIsSound(@TempDir Path empty) throws IOException {
    assertThat(SegmentCheck.check(empty, NOTHING_KNOWN))
        .isEqualTo(new Outcome.Sound(Collections.nCopies(12, 0L), List.of()));
  }

  @Test
  void aFlippedByteIsFoundWhereverItIs() throws IOException {
    var random = seeded();
    for (int round = 0; round < 200; round++) {
      // Given
      int partition = random.nextInt(Journal.PARTITIONS);
      var segments = files.segments(partition);
      var segment = segments.get(random.nextInt(segments.size()));
      int at = random.nextInt((int) Files.size(segment));
      int bits = 1 + random.nextInt(255);

      // When
      JournalFiles.flip(segment, at, bits);

      // Then
      assertThat(faults())
          .as("byte %d of %s, bits %d", at, segment, bits)
          .singleElement()
          .asString()
          .contains(segment.toString())
          .contains("offset");
      JournalFiles.flip(segment, at, bits);
    }
    assertThat(check()).isInstanceOf(Outcome.Sound.class);
  }

  @Test
  void everyByteOfTheLastBatchIsGuarded() throws IOException {
    var segment = files.lastSegment(7);
    int size = (int) Files.size(segment);
    int batch = JournalFiles.batch(0, 0).remaining();
    for (int at = size - batch; at < size; at++) {
      for (int bits : new int[] {1, 128, 255}) {
        JournalFiles.flip(segment, at, bits);
        assertThat(faults()).as("byte %d, bits %d", at, bits).hasSize(1);
        JournalFiles.flip(segment, at, bits);
      }
    }
  }

  @Test
  void thePersonKeysAreGuardedToo() throws IOException {
    var segment = folder.resolve("person-keys-0/00000000000000000020.log");

    JournalFiles.flip(segment, 100, 4);

    assertThat(faults()).singleElement().asString().contains("person-keys-0");
  }

  @Test
  void theFirstBadOffsetIsNamed() throws IOException {
    var segment = files.segments(3).get(1);
    int batch = JournalFiles.batch(0, 0).remaining();

    JournalFiles.flip(segment, 2 * batch + 70, 16);

    assertThat(faults())
        .containsExactly(
            "%s: the batch with offset 30, at byte %d, is damaged: its checksum does not fit"
                .formatted(segment, 2 * batch));
  }

  @Test
  void whateverIsLeftOfAnUnfinishedAppendIsLetPass() throws IOException {
    var segment = files.lastSegment(5);
    long whole = Files.size(segment);
    var next = JournalFiles.batch(JournalFiles.END, 3);
    for (int bytes = 1; bytes < next.limit(); bytes++) {
      JournalFiles.append(segment, next.duplicate().limit(bytes));

      assertThat(check())
          .as("%d bytes", bytes)
          .isInstanceOfSatisfying(
              Outcome.Sound.class,
              sound -> {
                assertThat(sound.ends().get(5)).isEqualTo(JournalFiles.END);
                assertThat(sound.torn()).singleElement().asString().contains(segment.toString());
              });
      JournalFiles.cut(segment, whole);
    }
  }

  @Test
  void zerosAtTheEndAreLetPass() throws IOException {
    JournalFiles.append(files.lastSegment(5), ByteBuffer.allocate(4_096));

    assertThat(check()).isInstanceOf(Outcome.Sound.class);
  }

  @Test
  void nothingIsUnfinishedAfterAStopInOrder() throws IOException {
    JournalFiles.append(files.lastSegment(5), JournalFiles.batch(JournalFiles.END, 3).limit(40));
    files.noteStoppedInOrder();

    assertThat(faults()).singleElement().asString().contains("it is not all there");
  }

  @Test
  void onlyTheLastSegmentCanBeUnfinished() throws IOException {
    var first = files.segments(5).getFirst();

    JournalFiles.cut(first, Files.size(first) - 10);

    assertThat(faults()).singleElement().asString().contains(first.toString());
  }

  @Test
  void aCutIsFoundByWhatTheBrokerNoted() throws IOException {
    files.noteFlushed(4, JournalFiles.END);
    var random = seeded();
    var last = files.lastSegment(4);
    byte[] whole = Files.readAllBytes(last);
    for (int round = 0; round < 100; round++) {
      JournalFiles.cut(last, random.nextInt(whole.length));

      assertThat(faults())
          .isNotEmpty()
          .allSatisfy(fault -> assertThat(fault).contains("journal-4"));
      Files.write(last, whole);
    }
  }

  @Test
  void aCutIsFoundByWhatWasAcknowledged() throws IOException {
    var acknowledged = new long[Journal.PARTITIONS];
    acknowledged[3] = JournalFiles.END;
    JournalFiles.cut(files.lastSegment(3), 0);

    assertThat(SegmentCheck.check(folder, acknowledged))
        .isEqualTo(
            new Outcome.Damaged(List.of("partition 3 ends at 40, but 60 were acknowledged")));
  }

  @Test
  void aMissingSegmentIsFound() throws IOException {
    files.noteFlushed(2, JournalFiles.END);
    for (var segment : files.segments(2)) {
      byte[] whole = Files.readAllBytes(segment);
      Files.delete(segment);

      assertThat(faults()).as("%s", segment).isNotEmpty();
      Files.write(segment, whole);
    }
  }

  @Test
  void aMissingPartitionIsFound() throws IOException {
    for (var segment : files.segments(9)) {
      Files.delete(segment);
    }
    Files.delete(files.partition(9).resolve("leader-epoch-checkpoint"));
    Files.delete(files.partition(9).resolve("partition.metadata"));
    Files.delete(files.partition(9));

    assertThat(faults()).singleElement().asString().contains("journal-9: is missing");
  }

  @Test
  void aPartitionThatTheBrokerWouldPutOutOfTheWayIsFound() throws IOException {
    Files.delete(files.partition(2).resolve("partition.metadata"));
    Files.writeString(
        files.partition(8).resolve("partition.metadata"), "topic_id: AAAAAAAAAAAAAAAAAAAAAg");

    assertThat(faults()).hasSize(2);
    assertThat(faults()).first().asString().contains("journal-2").contains("topic's id");
    assertThat(faults()).last().asString().contains("journal-8").contains("does not know");
  }

  @Test
  void everyFaultIsSaidAtOnce() throws IOException {
    JournalFiles.flip(files.lastSegment(1), 30, 1);
    JournalFiles.flip(files.lastSegment(6), 30, 1);
    Files.delete(folder.resolve("meta.properties"));

    assertThat(faults()).hasSize(3);
  }

  private Outcome check() throws IOException {
    return SegmentCheck.check(folder, NOTHING_KNOWN);
  }

  private List<String> faults() throws IOException {
    return switch (check()) {
      case Outcome.Damaged damaged -> damaged.faults();
      case Outcome.Sound _ -> List.of();
    };
  }

  private static Random seeded() {
    long seed = new Random().nextLong();
    System.out.println("SegmentCheckTest seed " + seed);
    return new Random(seed);
  }
}
