package dev.poleward.service.access;

import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** A record that says who is forgotten, and nothing else. */
final class ForgottenSet implements Forgotten {

  private final Set<Person> people = ConcurrentHashMap.newKeySet();

  void add(String club, String person) {
    people.add(new Person(club, person));
  }

  @Override
  public boolean isForgotten(String club, String person) {
    return people.contains(new Person(club, person));
  }
}
