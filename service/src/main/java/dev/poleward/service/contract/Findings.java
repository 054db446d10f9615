package dev.poleward.service.contract;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Gathers what is wrong with one body: one fault for each pointer, the weightiest, and 100 at most.
 * For one thread.
 */
final class Findings {

  /** The contract's own limit for the faults of one answer. */
  static final int FAULTS_MAX = 100;

  /** The contract's own limit for a pointer; a longer one ends at a member further out. */
  private static final int POINTER_CHARACTERS_MAX = 2_048;

  /** How much a fault says about its member; of two at one pointer the weightier stands. */
  enum Weight {
    /** A rule that supposes a member of the right form. */
    RULE,
    FORM,
    RANGE,
    CHOICE,
    KIND
  }

  private record Found(String detail, Weight weight) {}

  private final String prefix;
  private final Map<String, Found> found = new LinkedHashMap<>();

  /** Gathers below {@code prefix}, itself a pointer or empty. */
  Findings(String prefix) {
    this.prefix = prefix;
  }

  boolean isEmpty() {
    return found.isEmpty();
  }

  boolean isFull() {
    return found.size() >= FAULTS_MAX;
  }

  /** Notes a rule that is broken at a member which is in order by itself. */
  void broken(String pointer, String detail) {
    add(pointer, detail, Weight.RULE);
  }

  void add(String wholePointer, String detail, Weight weight) {
    String pointer = wholePointer;
    while (prefix.length() + pointer.length() > POINTER_CHARACTERS_MAX) {
      pointer = pointer.substring(0, pointer.lastIndexOf('/'));
    }
    Found known = found.get(pointer);
    if (known == null ? !isFull() : known.weight.compareTo(weight) < 0) {
      found.put(pointer, new Found(detail, weight));
    }
  }

  List<Fault> faults() {
    List<Fault> faults = new ArrayList<>(found.size());
    found.forEach((pointer, each) -> faults.add(new Fault(prefix + pointer, each.detail)));
    return faults;
  }
}
