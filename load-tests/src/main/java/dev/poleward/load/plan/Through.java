package dev.poleward.load.plan;

import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.StageState;
import dev.poleward.domain.programme.Stage;

/** What either trainer takes a dog through: all of a programme but pressure, probes included. */
final class Through {

  private Through() {}

  static boolean asksFor(Stage stage) {
    return stage.handlings().stream().anyMatch(each -> each.manoeuvre() != Manoeuvre.PRESSURE);
  }

  static boolean is(DogStanding dog) {
    return dog.stages().stream()
        .filter(each -> asksFor(each.stage()))
        .allMatch(each -> each.state() == StageState.DONE);
  }
}
