package dev.poleward.domain.outlook;

import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.judgement.StandingReading;
import dev.poleward.domain.learner.SimulatedDog;
import dev.poleward.domain.learner.Temper;
import dev.poleward.domain.programme.DocumentReading.Faulty;
import dev.poleward.domain.programme.DocumentReading.Sound;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.programme.ProgrammeDocument;
import dev.poleward.domain.record.PlacedRep;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A small programme that dogs get through, and dogs that are taught by it. */
final class Walkable {

  static final Instant BEGIN = Instant.parse("2026-01-05T18:00:00Z");

  private static final Map<String, Object> ALONGSIDE = Map.of("manoeuvre", "alongside");

  static final Programme PROGRAMME =
      programme(
          stage("three", 3, "none", clocks("12:00", "12:30", "11:30"), List.of())
              .with("handlings", List.of(ALONGSIDE, Map.of("manoeuvre", "recall"))),
          stage("four", 4, "none", clocks("12:00", "1:00", "11:00"), List.of("three")),
          stage(
              "tunnel",
              4,
              "tunnel",
              Map.of(
                  "rungs", Map.of("start", 15L, "end", 45L, "stepDegrees", 15L, "sides", "both")),
              List.of("four")),
          stage("six", 6, "none", clocks("12:00"), List.of("three")).with("probe", true),
          stage("close", 4, "none", clocks("12:00"), List.of("tunnel"))
              .with("handlings", List.of(Map.of("manoeuvre", "pressure"))));

  /** A stage being written. */
  private record Written(Map<String, Object> members) {

    Written with(String member, Object value) {
      Map<String, Object> more = new HashMap<>(members);
      more.put(member, value);
      return new Written(more);
    }
  }

  private static Written stage(
      String id, long poles, String leadIn, Map<String, Object> entries, List<String> after) {
    Written stage =
        new Written(
            Map.of(
                "stage",
                id,
                "poles",
                poles,
                "leadIn",
                leadIn,
                "entries",
                entries,
                "handlings",
                List.of(ALONGSIDE)));
    return after.isEmpty() ? stage : stage.with("prerequisites", after);
  }

  private static Map<String, Object> clocks(String... clocks) {
    return Map.of("clocks", List.of(clocks));
  }

  private static Programme programme(Written... stages) {
    Map<String, Object> document =
        Map.of(
            "programme",
            "walkable",
            "name",
            "Walkable",
            "rule",
            Map.of("method", "sequential", "mastered", 0.9, "notYet", 0.6),
            "stages",
            Stream.of(stages).map(Written::members).toList());
    return switch (ProgrammeDocument.read(document)) {
      case Sound(Programme programme) -> programme;
      case Faulty faulty -> throw new AssertionError(faulty.faults());
    };
  }

  private Walkable() {}

  /** A dog after so many sessions of ten reps, two a week. */
  static Schooling after(int sessions, Temper temper, long seed) {
    Schooling schooling =
        new Schooling("juniper", new SimulatedDog(temper), PROGRAMME, new SplittableRandom(seed));
    for (int session = 0; session < sessions; session++) {
      schooling.session(BEGIN.plus(Duration.ofHours(84L * session)), 10);
    }
    return schooling;
  }

  /** Where a record leads to. */
  static StandingReading standing(Schooling schooling, @Nullable String startStage) {
    StandingReading reading = StandingReading.begun(PROGRAMME, startStage);
    schooling.reps().forEach(reading::read);
    return reading;
  }

  static long clean(List<PlacedRep> reps) {
    return reps.stream().filter(rep -> rep.outcome() == Outcome.CLEAN).count();
  }
}
