package dev.poleward.service.journal;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * A topic of wrapped keys for tests that need no broker. Receivers are called on the appending
 * thread. Safe for use by many threads.
 */
public final class MemoryPersonKeyTopic implements PersonKeyTopic {

  /** The records that several nodes share. Guarded by itself. */
  private static final class Records {
    final List<WrappedKey> all = new ArrayList<>();
    final List<MemoryPersonKeyTopic> followers = new ArrayList<>();
  }

  private final Records records;
  private @Nullable Consumer<WrappedKey> receiver;

  /** An empty topic. */
  public MemoryPersonKeyTopic() {
    this(new Records());
  }

  private MemoryPersonKeyTopic(Records records) {
    this.records = records;
  }

  /** The same topic as another node sees it. */
  public MemoryPersonKeyTopic elsewhere() {
    return new MemoryPersonKeyTopic(records);
  }

  @Override
  public void follow(Consumer<WrappedKey> receiver, Duration wait) {
    synchronized (records) {
      if (this.receiver != null) {
        throw new IllegalStateException("the topic is followed already");
      }
      this.receiver = receiver;
      records.all.forEach(receiver);
      records.followers.add(this);
    }
  }

  @Override
  public void append(WrappedKey key, Duration wait) {
    if (!PersonKeyReader.isNameOfAKey(key.name())) {
      throw new IllegalArgumentException("no wrapped key of a person: " + key.name());
    }
    synchronized (records) {
      requireFollowed();
      records.all.add(key);
      for (var follower : records.followers) {
        if (follower.receiver != null) {
          follower.receiver.accept(key);
        }
      }
    }
  }

  @Override
  public void catchUp(Duration wait) {
    synchronized (records) {
      requireFollowed();
    }
  }

  @Override
  public Duration lastCopyGoneWithin() {
    return PersonKeyTiming.DEFAULT.lastCopyGoneWithin();
  }

  @Override
  public void close() {
    synchronized (records) {
      records.followers.remove(this);
    }
  }

  private void requireFollowed() {
    if (receiver == null) {
      throw new IllegalStateException("the topic is not followed yet");
    }
  }
}
