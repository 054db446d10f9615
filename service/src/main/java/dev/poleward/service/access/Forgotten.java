package dev.poleward.service.access;

/** Who is forgotten. The club's record is the authority. Safe for use by many threads. */
@FunctionalInterface
public interface Forgotten {

  /**
   * Whether nobody is left for whom a key under that name may be kept, going by all that was
   * recorded when this was called.
   *
   * @param person as {@link PersonalMembers} names people
   * @throws dev.poleward.service.journal.JournalException when that cannot be found out in time
   */
  boolean isForgotten(String club, String person);
}
