package dev.poleward.service.access;

import dev.poleward.service.journal.PersonKeyTopic.WrappedKey;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import java.util.function.Predicate;

/**
 * Wrapped keys that were made and not destroyed, each person's in the order of the topic. Written
 * by the one thread that follows the topic; read by any.
 */
final class LiveKeys {

  private record Key(PersonKeyName name, String wrapped) {}

  private final ConcurrentMap<Person, List<Key>> keys = new ConcurrentHashMap<>();

  /** Takes a record of the topic. */
  void take(PersonKeyName name, WrappedKey record) {
    keys.compute(
        name.person(),
        (_, before) -> {
          List<Key> after = changed(before == null ? List.of() : before, name, record);
          return after.isEmpty() ? null : after;
        });
  }

  private static List<Key> changed(List<Key> before, PersonKeyName name, WrappedKey record) {
    List<Key> after = new ArrayList<>(before);
    // Where a name comes again its last place counts, as compaction leaves it for later readers.
    after.removeIf(key -> key.name().equals(name));
    if (record.wrapped() != null) {
      after.add(new Key(name, record.wrapped()));
    }
    return List.copyOf(after);
  }

  /** A person's first key. */
  Optional<PersonKeyName> first(Person person) {
    return of(person).stream().findFirst();
  }

  /** A person's keys. */
  List<PersonKeyName> of(Person person) {
    return keys.getOrDefault(person, List.of()).stream().map(Key::name).toList();
  }

  /** A key, still wrapped. */
  Optional<String> wrapped(PersonKeyName name) {
    return keys.getOrDefault(name.person(), List.of()).stream()
        .filter(key -> key.name().equals(name))
        .map(Key::wrapped)
        .findFirst();
  }

  /** Those people that have a key and fit. */
  List<Person> people(Predicate<Person> wanted) {
    return keys.keySet().stream().filter(wanted).toList();
  }
}
