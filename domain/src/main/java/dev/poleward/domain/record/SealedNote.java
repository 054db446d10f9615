package dev.poleward.domain.record;

/**
 * A sealed note and the event it came with.
 *
 * @param event id of the event, which is needed to open it
 */
public record SealedNote(String event, Sealed sealed) {

  static SealedNote of(Fact<?> fact, Sealed sealed) {
    return new SealedNote(fact.id(), sealed);
  }
}
