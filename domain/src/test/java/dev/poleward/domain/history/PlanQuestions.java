package dev.poleward.domain.history;

import dev.poleward.domain.care.Conditions;
import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.layout.PoleLine;
import dev.poleward.domain.planning.Available;
import dev.poleward.domain.planning.PlannedDrill;
import dev.poleward.domain.programme.DocumentReading.Faulty;
import dev.poleward.domain.programme.DocumentReading.Sound;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.Handling;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.programme.ProgrammeDocument;
import dev.poleward.domain.programme.RunUp;
import dev.poleward.domain.programme.Rung;
import dev.poleward.domain.programme.StageGround;
import dev.poleward.domain.running.Pace;
import dev.poleward.domain.running.PoleSet;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What the laws ask of the next session, of as few reps as are generated. */
final class PlanQuestions {

  /** The next day, and when much of what was solid is due. */
  static final List<Instant> TIMES =
      List.of(Instant.parse("2026-03-03T17:00:00Z"), Instant.parse("2026-07-01T17:00:00Z"));

  /** Every condition takes something back. */
  static final Conditions HOT_AND_WET =
      new Conditions(24.0, 40.0, Conditions.Sky.SUN, Conditions.Footing.WET);

  static final List<Conditions> DAYS = List.of(Conditions.NOT_SAID, HOT_AND_WET);

  /** What a session is asked for. */
  static final int REPS = 12;

  static final Set<EntrySide> SIDES = Set.of(EntrySide.POLE, EntrySide.GAP);

  /** All there is, and something that stands already. */
  static final Available AVAILABLE =
      new Available(
          true,
          true,
          12,
          new Drill(
              4,
              new RunUp(LeadIn.TUNNEL, null, null),
              new Rung(new EntryAngle(45)),
              new Handling(Manoeuvre.ALONGSIDE, DogSide.LEFT, null)));

  /** So lenient that a few reps get through, over most of the setups that are generated. */
  static final Programme PROGRAMME = programme();

  /** What drills stand on. */
  static final StageGround GROUND =
      new StageGround(new PoleLine(4, StageGround.SPACING_USUAL), LeadIn.NONE, null);

  /** What any plan is taken to have asked for. */
  static final List<PlannedDrill> PLANNED =
      List.of(planned(LeadIn.TUNNEL, 45), planned(LeadIn.NONE, 0), planned(LeadIn.TUNNEL, -45));

  static final Duration CLASS_LASTS = Duration.ofMinutes(8);
  static final Pace PACE = new Pace(120, 90, 60);
  static final List<PoleSet> POLE_SETS =
      List.of(new PoleSet("main", null), new PoleSet("second", Tell.tunnelAt(30)));

  private PlanQuestions() {}

  private static PlannedDrill planned(LeadIn leadIn, double degrees) {
    return new PlannedDrill(
        4, leadIn, null, null, new EntryAngle(degrees), Manoeuvre.ALONGSIDE, null, 2);
  }

  private static Programme programme() {
    Map<String, Object> document =
        Map.of(
            "programme",
            "lenient",
            "name",
            "Lenient",
            "stages",
            List.of(
                stage("three", 3, "none", List.of("12:00", "1:30"), false),
                stage("tunnel", 4, "tunnel", List.of("12:00", "10:30"), false),
                stage("six", 6, "none", List.of("12:00"), true)));
    return switch (ProgrammeDocument.read(document)) {
      case Sound(Programme programme) -> programme;
      case Faulty faulty -> throw new AssertionError(faulty.faults());
    };
  }

  private static Map<String, Object> stage(
      String name, long poles, String leadIn, List<String> clocks, boolean probe) {
    return Map.of(
        "stage",
        name,
        "probe",
        probe,
        "poles",
        poles,
        "leadIn",
        leadIn,
        "entries",
        Map.of("clocks", clocks),
        "handlings",
        List.of(Map.of("manoeuvre", "alongside")),
        "toleranceDegrees",
        15L,
        "rule",
        Map.of("method", "run", "length", 1L));
  }
}
