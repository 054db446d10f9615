package dev.poleward.service.http;

import java.util.List;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/**
 * One at a time where a request looks whether a name is free before it takes it: of two at once
 * both would find it free, and both be told that it is theirs. Through two nodes that can still
 * happen; then the record decides which one stands. Likewise where an answer takes a processor for
 * a second or two: of those one at a time is enough for a club. Safe for use by many threads.
 */
final class Turns {

  private static final int LOCKS = 64;

  private final List<ReentrantLock> locks =
      IntStream.range(0, LOCKS).mapToObj(_ -> new ReentrantLock()).toList();

  /** Answers as {@code then} does, once nobody else does so in that club. */
  Answer take(String club, Supplier<Answer> then) {
    ReentrantLock lock = locks.get(Math.floorMod(club.hashCode(), LOCKS));
    lock.lock();
    try {
      return then.get();
    } finally {
      lock.unlock();
    }
  }
}
