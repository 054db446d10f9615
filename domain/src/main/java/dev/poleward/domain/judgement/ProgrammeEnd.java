package dev.poleward.domain.judgement;

import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.programme.Stage;
import dev.poleward.domain.programme.StageKind;

/** What the end of a programme asks for. */
public final class ProgrammeEnd {

  private ProgrammeEnd() {}

  /**
   * Whether a dog has to be through a stage to be through the programme. Probes are a look ahead,
   * and pressure is not for every dog.
   */
  public static boolean asksFor(Stage stage) {
    return stage.terms().kind() == StageKind.REGULAR
        && stage.handlings().stream().anyMatch(each -> each.manoeuvre() != Manoeuvre.PRESSURE);
  }
}
