package dev.poleward.domain.planning;

import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.RunUp;
import dev.poleward.domain.programme.Rung;

/** Where a drill is run, whatever the handler does and whatever stage asks for it. */
record Place(int poles, RunUp runUp, Rung rung) {

  static Place of(Drill drill) {
    return new Place(drill.poles(), drill.runUp().asRun(), drill.rung());
  }
}
