package dev.poleward.domain.programme;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Gathers faults: the first for each pointer, so many at most. For one thread. */
final class DocumentFaults {

  private final Map<String, String> found = new LinkedHashMap<>();

  void add(String pointer, String detail) {
    if (found.size() < ProgrammeDocument.FAULTS_MAX) {
      found.putIfAbsent(pointer, detail);
    }
  }

  boolean isEmpty() {
    return found.isEmpty();
  }

  List<DocumentFault> all() {
    List<DocumentFault> all = new ArrayList<>(found.size());
    found.forEach((pointer, detail) -> all.add(new DocumentFault(pointer, detail)));
    return all;
  }
}
