package dev.poleward.domain.judgement;

import dev.poleward.domain.programme.Drill;

/** How well a dog can be expected to do what it may never have done. */
@FunctionalInterface
public interface ExpectedClean {

  /** Expected share of clean reps of a drill, above 0 and below 1. */
  double share(Drill drill);

  /** Over several drills, alike. */
  default double share(Iterable<Drill> drills) {
    double sum = 0;
    int count = 0;
    for (Drill drill : drills) {
      sum += share(drill);
      count++;
    }
    return sum / count;
  }
}
