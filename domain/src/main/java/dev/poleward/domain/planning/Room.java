package dev.poleward.domain.planning;

import dev.poleward.domain.programme.Drill;

/** What is left of a session while its plan is made. For one thread. */
final class Room {

  private int reps;
  private int gaps;
  private int sharpBends;

  Room(Limits limits) {
    this.reps = limits.reps();
    this.gaps = limits.gaps();
    this.sharpBends = limits.sharpBends();
  }

  /** How many reps of a drill still fit, at most so many. */
  int of(Drill drill, int wanted) {
    int fit = Math.min(wanted, repsOver(drill.poles()));
    return Math.max(0, Limits.isSharp(drill) ? Math.min(fit, sharpBends) : fit);
  }

  void take(Drill drill, int taken) {
    reps -= taken;
    gaps -= taken * (drill.poles() - 1);
    sharpBends -= Limits.isSharp(drill) ? taken : 0;
  }

  void giveBack(Drill drill, int taken) {
    take(drill, -taken);
  }

  /** How many reps over so many poles are left. */
  int repsOver(int poles) {
    return Math.min(reps, gaps / (poles - 1));
  }

  /** How many entries from sharp angles are left. */
  int sharpBends() {
    return sharpBends;
  }
}
