package dev.poleward.service.journal;

/** Room on the disk under the journal. Safe for use by many threads. */
@FunctionalInterface
public interface DiskSpace {

  /** A disk that somebody else looks after, such as those of a cluster. */
  DiskSpace ELSEWHERE = () -> false;

  /** Whether so little is left that nothing new may be written. Cheap enough to ask each time. */
  boolean nearlyFull();
}
