package dev.poleward.service.journal;

import java.util.concurrent.Semaphore;

/** The room in front of the journal, by entries and by bytes. Safe for use by many threads. */
final class QueueRoom {

  private final Semaphore entries;
  private final Semaphore bytes;

  QueueRoom(QueueLimits limits) {
    entries = new Semaphore(limits.entriesMax());
    bytes = new Semaphore(limits.bytesMax());
  }

  /** Takes room for all or for nothing; never waits. */
  boolean take(int entryCount, int byteCount) {
    if (!entries.tryAcquire(entryCount)) {
      return false;
    }
    if (!bytes.tryAcquire(byteCount)) {
      entries.release(entryCount);
      return false;
    }
    return true;
  }

  /** Gives room back that was taken. */
  void giveBack(int entryCount, int byteCount) {
    bytes.release(byteCount);
    entries.release(entryCount);
  }
}
