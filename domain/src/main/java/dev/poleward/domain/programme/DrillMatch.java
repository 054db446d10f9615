package dev.poleward.domain.programme;

import java.util.List;

/** Where a rep belongs in a programme. */
public sealed interface DrillMatch {

  /**
   * It is evidence for these drills: one in each stage that asks for what was done.
   *
   * @param drills in the order of the stages, never empty
   */
  record Counts(List<DrillOfStage> drills) implements DrillMatch {

    /** Keeps the drills from changing. */
    public Counts {
      drills = List.copyOf(drills);
    }
  }

  /**
   * The dog was helped: practice of these drills, no evidence.
   *
   * @param drills in the order of the stages, never empty
   */
  record Helped(List<DrillOfStage> drills) implements DrillMatch {

    /** Keeps the drills from changing. */
    public Helped {
      drills = List.copyOf(drills);
    }
  }

  /** Not the dog's fault: outside all statistics, whatever was done. */
  record Voided() implements DrillMatch {}

  /** It fits no drill; it still counts for curves. */
  record NoDrill(Misfit why) implements DrillMatch {}

  /** Why a rep fits no drill: how far the stage that came nearest agreed with it. */
  enum Misfit {
    /** No setup was in force. */
    NO_SETUP,
    /** Neither rep nor setup says a direction. */
    NO_ANGLE,
    /** No stage has so many poles. */
    POLES,
    /** None of those comes from there, or the rep is a wrap that does not say its turn. */
    RUN_UP,
    /** None of those lists the handling. */
    HANDLING,
    /** None of those has a rung near that angle, on that side, that asks for the handling. */
    ANGLE
  }
}
