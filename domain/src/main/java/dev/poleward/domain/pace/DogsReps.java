package dev.poleward.domain.pace;

import dev.poleward.domain.record.PlacedRep;
import dev.poleward.domain.record.Placement;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The reps of one animal, found by what timings name.
 *
 * @param animal the dog after merges
 * @param ascending by (time, id)
 */
record DogsReps(
    String animal, List<PlacedRep> ascending, Map<String, PlacedRep> byId, Set<String> sessions) {

  static DogsReps of(String dog, List<PlacedRep> ascending, Placement placement) {
    Map<String, PlacedRep> byId = new HashMap<>();
    Set<String> sessions = new HashSet<>();
    for (PlacedRep rep : ascending) {
      byId.put(rep.rep(), rep);
      sessions.add(rep.session());
    }
    return new DogsReps(placement.identity().of(dog), ascending, byId, sessions);
  }
}
