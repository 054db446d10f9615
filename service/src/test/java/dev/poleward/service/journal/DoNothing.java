package dev.poleward.service.journal;

import dev.poleward.service.journal.PersonKeyTopic.WrappedKey;
import java.time.Duration;
import java.util.List;
import java.util.function.Consumer;

/** Ports that claim success and do nothing, which no conformance suite may let pass. */
final class DoNothing {

  private DoNothing() {}

  /** Not found by the build: its name is no test's. */
  static final class JournalSuite implements JournalConformance {

    @Override
    public Duration patience() {
      return Duration.ofMillis(100);
    }

    @Override
    public Journal journal() {
      return new DoNothingJournal();
    }

    @Override
    public Journal anotherJournal() {
      return new DoNothingJournal();
    }
  }

  /** Not found by the build: its name is no test's. */
  static final class PersonKeySuite implements PersonKeyTopicConformance {

    @Override
    public PersonKeyTopic topic() {
      return new DoNothingPersonKeyTopic();
    }

    @Override
    public PersonKeyTopic sameTopicElsewhere() {
      return new DoNothingPersonKeyTopic();
    }
  }

  private static final class DoNothingJournal implements Journal {

    @Override
    public AppendOutcome append(List<Entry> entries, Duration wait) {
      return new AppendOutcome.Appended(entries.stream().map(_ -> new Place(0, 0)).toList());
    }

    @Override
    public int partitionOf(String club) {
      return 0;
    }

    @Override
    public long[] ends(Duration wait) {
      return new long[PARTITIONS];
    }

    @Override
    public Tail tail(List<Integer> partitions, long[] from) {
      return new DoNothingTail();
    }

    @Override
    public void close() {}
  }

  private static final class DoNothingTail implements Tail {

    @Override
    public List<JournalRecord> poll(Duration wait) {
      return List.of();
    }

    @Override
    public void wakeup() {}

    @Override
    public void close() {}
  }

  private static final class DoNothingPersonKeyTopic implements PersonKeyTopic {

    @Override
    public void follow(Consumer<WrappedKey> receiver, Duration wait) {}

    @Override
    public void append(WrappedKey key, Duration wait) {}

    @Override
    public void catchUp(Duration wait) {}

    @Override
    public Duration lastCopyGoneWithin() {
      return Duration.ZERO;
    }

    @Override
    public void close() {}
  }
}
