package dev.poleward.service.render;

import dev.poleward.domain.judgement.ClubRetention;
import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.NextRung;
import dev.poleward.domain.judgement.NextRungs;
import dev.poleward.domain.judgement.StandingReading;
import dev.poleward.domain.programme.DefaultProgramme;
import dev.poleward.domain.programme.DocumentReading;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.DrillMatch;
import dev.poleward.domain.programme.DrillOfStage;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.programme.ProgrammeDocument;
import dev.poleward.domain.programme.ProgrammeInForce;
import dev.poleward.domain.programme.Stage;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Ways of invented dogs, read from reps that were run a minute apart. */
final class SampleWays {

  static final LocalDate DAY = LocalDate.parse("2026-05-04");
  private static final Instant END = Instant.parse("2026-05-05T00:00:00Z");

  private final Programme programme;
  private final StandingReading reading;
  private Instant now = Instant.parse("2026-03-02T17:00:00Z");

  private SampleWays(Programme programme, @Nullable String startStage) {
    this.programme = programme;
    this.reading = StandingReading.begun(programme, startStage);
  }

  /** A dog in the second stage, with a rung of every kind. */
  static DogWay usual(String callName) {
    SampleWays way = new SampleWays(DefaultProgramme.programme(), null);
    for (int rung = 0; rung < 7; rung++) {
      way.run("three-bare", rung, 20, true);
    }
    way.now = Instant.parse("2026-04-30T17:00:00Z");
    for (int rung = 0; rung < 4; rung++) {
      way.run("four-bare", rung, 20, true);
    }
    way.run("four-bare", 2, 8, false);
    way.run("four-bare", 5, 20, true).run("four-bare", 4, 3, true).run("six-probe", 0, 1, false);
    return way.of(callName);
  }

  /** A dog that never ran. */
  static DogWay withoutReps() {
    return new SampleWays(DefaultProgramme.programme(), null).of("Bracken");
  }

  /** A dog that was said to start in the middle. */
  static DogWay startedLater() {
    return new SampleWays(DefaultProgramme.programme(), "tunnel-straight").of("Aske");
  }

  /** A programme of angles half a degree apart, with long names in several scripts. */
  static DogWay closeTogether() {
    return new SampleWays(programme(half("b", "ジュニパー・フォン・デア".repeat(5), "a")), null).of("Zorro");
  }

  /** A hundred stages, none with a name. */
  static DogWay ofManyStages() {
    return new SampleWays(
            programme(
                IntStream.range(0, 98)
                    .mapToObj(i -> half("s-" + i, null, i == 0 ? "a" : "s-" + (i - 1)))
                    .map(SampleWays::straightOn)
                    .toArray(Object[]::new)),
            null)
        .of("Thistle");
  }

  private static Map<String, Object> straightOn(Map<String, Object> stage) {
    Map<String, Object> straight = new HashMap<>(stage);
    straight.put("entries", Map.of("clocks", List.of("12:00")));
    return straight;
  }

  private static Map<String, Object> half(String id, @Nullable String name, String prerequisite) {
    Map<String, Object> stage =
        new HashMap<>(
            Map.of(
                "stage",
                id,
                "poles",
                4,
                "leadIn",
                "none",
                "entries",
                Map.of(
                    "rungs", Map.of("start", 0, "end", 175, "stepDegrees", 0.5, "sides", "both")),
                "handlings",
                List.of(Map.of("manoeuvre", "alongside")),
                "prerequisites",
                List.of(prerequisite)));
    if (name != null) {
      stage.put("name", name);
    }
    return stage;
  }

  private static Programme programme(Object... stages) {
    Map<String, Object> first = new HashMap<>(straightOn(half("a", "W".repeat(200), "none")));
    first.remove("prerequisites");
    List<Object> all = new ArrayList<>(List.of(first));
    all.addAll(List.of(stages));
    return switch (ProgrammeDocument.read(
        Map.of("programme", "a-programme", "version", 1, "name", "Ό".repeat(200), "stages", all))) {
      case DocumentReading.Sound(Programme programme) -> programme;
      case DocumentReading.Faulty faulty ->
          throw new IllegalStateException(faulty.faults().toString());
    };
  }

  /** So many reps of a rung of a stage, its drills in turn. */
  private SampleWays run(String stage, int rung, int reps, boolean clean) {
    Stage of = programme.stage(stage).orElseThrow();
    List<Drill> drills = of.pools().get(rung).drills();
    for (int i = 0; i < reps; i++) {
      now = now.plus(Duration.ofMinutes(1));
      DrillOfStage drill = new DrillOfStage(stage, drills.get(i % drills.size()));
      reading.read(new DrillMatch.Counts(List.of(drill)), clean, now);
    }
    return this;
  }

  private DogWay of(String callName) {
    DogStanding standing = reading.standing(END, ClubRetention.UNKNOWN);
    List<DogWay.Next> next =
        NextRungs.of(standing, _ -> 0.8).stream()
            .map(each -> new DogWay.Next(each, reason(each)))
            .toList();
    return new DogWay(
        new DogInPicture("juniper", callName, DAY),
        new ProgrammeInForce.Unassigned(),
        standing,
        next);
  }

  private static String reason(NextRung next) {
    Drill drill = next.standing().pool().drills().getFirst();
    String what =
        drill.poles()
            + " poles, "
            + MasteryWords.degrees(drill.rung().size())
            + ", "
            + WayWords.name(drill.rung().side());
    return switch (next.why()) {
      case SLIPPING -> what + ": was solid and slips; mend it before anything new.";
      case DUE -> what + ": solid, but not practised for long; refresh it with a few easy reps.";
      case EASIER -> what + ": easier than what went wrong last, and solid; start here.";
      case FRONTIER -> what + ": next to be learned; about 80% of the reps can be expected clean.";
      case PROBE -> what + ": a look ahead; failing it costs nothing.";
    };
  }
}
