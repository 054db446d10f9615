package dev.poleward.service.access;

import java.util.Optional;

/** Name of one key of one person: {@code club/person/keyId}. No part holds a slash. */
record PersonKeyName(Person person, String keyId) {

  private static final int LENGTH_MAX = 200;

  /** Reads a name; empty when the text is none. */
  static Optional<PersonKeyName> parse(String text) {
    if (text.length() > LENGTH_MAX) {
      return Optional.empty();
    }
    String[] parts = text.split("/", -1);
    if (parts.length != 3 || parts[0].isEmpty() || parts[1].isEmpty() || parts[2].isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new PersonKeyName(new Person(parts[0], parts[1]), parts[2]));
  }

  /** The name as the topic has it. */
  String written() {
    return person.club() + '/' + person.id() + '/' + keyId;
  }
}
