package dev.poleward.domain.judgement;

import dev.poleward.domain.event.Outcome;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/** Counts outcomes. For one thread. */
final class FaultTally {

  private int reps;
  private final Map<Outcome, Integer> faults = new EnumMap<>(Outcome.class);

  void add(Outcome outcome) {
    reps++;
    if (outcome != Outcome.CLEAN) {
      faults.merge(outcome, 1, Integer::sum);
    }
  }

  int reps() {
    return reps;
  }

  int faulty() {
    return faults.values().stream().mapToInt(Integer::intValue).sum();
  }

  Map<Outcome, Integer> faults() {
    return Collections.unmodifiableMap(new EnumMap<>(faults));
  }
}
