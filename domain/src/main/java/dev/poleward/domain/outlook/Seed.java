package dev.poleward.domain.outlook;

import dev.poleward.domain.programme.Programme;

/**
 * Seeds that follow from what things are called: the same on every node, and whatever the order in
 * which events came.
 */
final class Seed {

  private static final long OFFSET = 0xcbf29ce484222325L;
  private static final long PRIME = 0x100000001b3L;

  private Seed() {}

  static long of(String dog, Programme programme) {
    return of(dog + '\n' + programme.id() + '\n' + programme.version());
  }

  /** FNV-1a over the characters. */
  static long of(String text) {
    long hash = OFFSET;
    for (int i = 0; i < text.length(); i++) {
      hash = (hash ^ text.charAt(i)) * PRIME;
    }
    return hash;
  }
}
