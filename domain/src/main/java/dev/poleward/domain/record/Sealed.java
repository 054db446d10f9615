package dev.poleward.domain.record;

/**
 * Personal members of an event (names, mail addresses, notes) as they were sealed before it was
 * recorded. Nothing here can open them.
 *
 * @param person whose key they are sealed under
 * @param keyId which of that person's keys; empty when the members were dropped
 * @param box the sealed members, base64url; empty when they were dropped
 */
public record Sealed(String person, String keyId, String box) {

  /** What is left of the personal members of somebody who had been forgotten when they came. */
  public static Sealed dropped(String person) {
    return new Sealed(person, "", "");
  }

  /** Whether there is nothing in it, because the person had been forgotten. */
  public boolean isDropped() {
    return box.isEmpty();
  }
}
