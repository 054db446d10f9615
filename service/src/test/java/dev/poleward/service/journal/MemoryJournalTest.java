package dev.poleward.service.journal;

class MemoryJournalTest implements JournalConformance {

  private final Journal journal = new MemoryJournal();

  @Override
  public Journal journal() {
    return journal;
  }

  @Override
  public Journal anotherJournal() {
    return new MemoryJournal();
  }
}
