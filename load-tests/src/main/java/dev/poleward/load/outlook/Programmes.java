package dev.poleward.load.outlook;

import dev.poleward.domain.programme.DocumentReading.Faulty;
import dev.poleward.domain.programme.DocumentReading.Sound;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.programme.ProgrammeDocument;
import java.util.List;
import java.util.Map;

/** Programmes that checks are made with, besides the default one. */
public final class Programmes {

  private static final Map<String, Object> RUNGS =
      Map.of("rungs", Map.of("start", 15L, "end", 60L, "stepDegrees", 15L, "sides", "both"));

  private static final Programme IN_STEPS =
      switch (ProgrammeDocument.read(
          Map.of(
              "programme",
              "in-steps",
              "name",
              "In steps",
              "rule",
              Map.of("method", "sequential", "mastered", 0.9, "notYet", 0.65),
              "stages",
              List.of(
                  stage("straight", 3, "none", Map.of("clocks", List.of("12:00"))),
                  stage("bare", 4, "none", RUNGS),
                  stage("tunnel", 4, "tunnel", RUNGS))))) {
        case Sound(Programme programme) -> programme;
        case Faulty faulty -> throw new IllegalStateException(faulty.faults().toString());
      };

  private Programmes() {}

  /** Small steps to 60 degrees, which most simulated dogs get through in a year. */
  public static Programme inSteps() {
    return IN_STEPS;
  }

  private static Map<String, Object> stage(
      String id, long poles, String leadIn, Map<String, Object> entries) {
    return Map.of(
        "stage",
        id,
        "poles",
        poles,
        "leadIn",
        leadIn,
        "entries",
        entries,
        "handlings",
        List.of(
            Map.of("manoeuvre", "alongside", "dogSide", "left"),
            Map.of("manoeuvre", "alongside", "dogSide", "right")));
  }
}
