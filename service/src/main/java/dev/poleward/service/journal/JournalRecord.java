package dev.poleward.service.journal;

/** A record as read from the journal. */
public sealed interface JournalRecord {

  /** Where it stands. */
  Place place();

  /** An event. */
  record Recorded(Place place, Entry entry) implements JournalRecord {}

  /**
   * Something that is no event of ours, written by somebody else: passed over, but its place
   * counts.
   *
   * @param why for the log
   */
  record Foreign(Place place, String why) implements JournalRecord {}
}
