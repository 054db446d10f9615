package dev.poleward.domain.mastery;

import dev.poleward.domain.layout.EntryAngle;

/** The reps at one entry angle. For one thread. */
final class AngleCell {

  private final EntryAngle angle;
  private int reps;
  private int made;
  private double weightMade;
  private double weightMissed;

  AngleCell(EntryAngle angle) {
    this.angle = angle;
  }

  void add(boolean success, double weight) {
    reps++;
    if (success) {
      made++;
      weightMade += weight;
    } else {
      weightMissed += weight;
    }
  }

  EntryAngle angle() {
    return angle;
  }

  int reps() {
    return reps;
  }

  int made() {
    return made;
  }

  Proportion weighted() {
    return new Proportion(weightMade, weightMissed);
  }
}
