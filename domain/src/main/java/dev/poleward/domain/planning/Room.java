package dev.poleward.domain.planning;

import dev.poleward.domain.programme.Drill;

/** What is left of a session while its plan is made. For one thread. */
final class Room {

  private int reps;
  private int kept;
  private int gaps;
  private int sharpBends;

  Room(Limits limits) {
    this.reps = limits.reps();
    this.gaps = limits.gaps();
    this.sharpBends = limits.sharpBends();
  }

  /** How many reps of a drill still fit, at most so many. */
  int of(Drill drill, int wanted) {
    int fit = Math.min(wanted, Math.min(reps(), gaps / (drill.poles() - 1)));
    return Math.max(0, Limits.isSharp(drill) ? Math.min(fit, sharpBends) : fit);
  }

  void take(Drill drill, int taken) {
    reps -= taken;
    gaps -= taken * (drill.poles() - 1);
    sharpBends -= Limits.isSharp(drill) ? taken : 0;
  }

  /** Keeps one rep for the end. */
  void keepOne() {
    kept = 1;
  }

  void useKept() {
    kept = 0;
  }

  int reps() {
    return Math.max(0, reps - kept);
  }
}
