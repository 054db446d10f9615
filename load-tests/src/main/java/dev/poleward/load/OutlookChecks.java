package dev.poleward.load;

import dev.poleward.domain.programme.DefaultProgramme;
import dev.poleward.domain.programme.Programme;
import dev.poleward.load.figures.Arguments;
import dev.poleward.load.figures.Report;
import dev.poleward.load.figures.TimeLimit;
import dev.poleward.load.outlook.Clubs;
import dev.poleward.load.outlook.Foreseen;
import dev.poleward.load.outlook.ForeseenByPlan;
import dev.poleward.load.outlook.GoalsReached;
import dev.poleward.load.outlook.Kennel;
import dev.poleward.load.outlook.LimitsHeld;
import dev.poleward.load.outlook.Programmes;
import dev.poleward.load.outlook.Recovered;
import dev.poleward.load.outlook.Started;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How well the learner is fitted, how often outlooks hold, and how well a starting stage is found,
 * over simulated dogs that differ as those of a club do.
 */
public final class OutlookChecks {

  private static final List<Integer> WEEKS = List.of(2, 4, 8, 16);

  /** Dogs of each club whose records are known, where any are. */
  private static final int OTHERS = 12;

  private static final int WEEKS_BY_PLAN = 8;

  /** Reps after which a dog that nobody knows is asked for no more. */
  private static final List<Integer> REPS_TO_START = List.of(6, 10, 20);

  private final int dogs;
  private final int dogsByPlan;
  private final long seed;
  private final String part;
  private final String settings;
  private final Map<String, Programme> programmes = new LinkedHashMap<>();
  private final Map<String, Clubs> clubs = new LinkedHashMap<>();

  private OutlookChecks(Arguments arguments) {
    dogs = arguments.whole("dogs", 100, 20);
    dogsByPlan = arguments.whole("dogsByPlan", 60, 1);
    seed = arguments.whole("seed", 1, 0);
    TimeLimit.set(arguments.limit(60));
    part = arguments.oneOf("part", "all", "starting");
    settings = arguments.settings();
    programmes.put("in steps to 60", Programmes.inSteps());
    programmes.put("default", DefaultProgramme.programme());
  }

  public static void main(String[] args) {
    OutlookChecks program = new OutlookChecks(new Arguments(args));
    if (program.part.equals("all")) {
      program.fitting();
      program.lookingAhead();
      program.byPlan();
    }
    program.starting();
  }

  private Clubs clubs(String name, Programme programme) {
    return clubs.computeIfAbsent(name, _ -> Clubs.of(Kennel.ofClub(programme), dogs, OTHERS, seed));
  }

  private void fitting() {
    Report report =
        new Report(
            "OutlookChecks: quickness",
            settings,
            "programme",
            "other dogs of the club",
            "weeks",
            "reps",
            "correlation with the truth",
            "truth within 80% limits",
            "deviation left, of 1");
    programmes.forEach(
        (name, programme) -> {
          for (Clubs known : List.of(Clubs.unknown(), clubs(name, programme))) {
            for (int weeks : WEEKS) {
              Recovered found = Recovered.of(Kennel.ofClub(programme), known, dogs, weeks, seed);
              report.row(
                  name,
                  known.others(),
                  weeks,
                  "%.0f".formatted(found.reps()),
                  "%.2f".formatted(found.correlation()),
                  percent(found.held()),
                  "%.2f".formatted(found.deviation()));
            }
          }
        });
    report.print();
  }

  private void lookingAhead() {
    Report limits =
        new Report(
            "OutlookChecks: ends of stages",
            settings,
            "programme",
            "dogs",
            "others known",
            "weeks on record",
            "ends ahead",
            "late limit told",
            "of these before early",
            "between",
            "after late",
            "not within four years",
            "late over early",
            "of all, ties told apart",
            "standard error",
            "processor ms an outlook");
    Report goals =
        new Report(
            "OutlookChecks: goals",
            settings,
            "programme",
            "weeks on record",
            "chance",
            "goals",
            "told on average",
            "reached",
            "Brier score of all");
    programmes.forEach(
        (name, programme) -> {
          Kennel expected = Kennel.asExpected(programme);
          Kennel club = Kennel.ofClub(programme);
          for (int weeks : List.of(WEEKS.getFirst(), WEEKS.getLast())) {
            row(limits, name, "as expected", expected, Clubs.unknown(), weeks);
            row(limits, name, "of a club", club, Clubs.unknown(), weeks);
          }
          for (int weeks : WEEKS) {
            Foreseen foreseen = row(limits, name, "of a club", club, clubs(name, programme), weeks);
            for (GoalsReached.Group group : foreseen.goals().groups()) {
              goals.row(
                  name,
                  weeks,
                  "%.2f to %.2f".formatted(group.from(), group.to()),
                  group.goals(),
                  "%.2f".formatted(group.told()),
                  "%.2f".formatted(group.reached()),
                  "%.3f".formatted(foreseen.goals().brier()));
            }
          }
        });
    limits.print();
    goals.print();
  }

  private Foreseen row(
      Report report, String name, String drawn, Kennel kennel, Clubs known, int weeks) {
    Foreseen foreseen = Foreseen.of(kennel, known, dogs, weeks, seed);
    LimitsHeld limits = foreseen.limits();
    report.row(
        name,
        drawn,
        known.others(),
        weeks,
        limits.ends(),
        percent(limits.told()),
        percent(limits.early()),
        percent(limits.between()),
        percent(limits.late()),
        percent(limits.never()),
        "%.1f".formatted(limits.width()),
        percent(limits.held()),
        percent(limits.error()),
        "%.0f".formatted(foreseen.millis()));
    return foreseen;
  }

  private void byPlan() {
    Report report =
        new Report(
            "OutlookChecks: dogs that follow plans",
            settings,
            "programme",
            "weeks on record",
            "what",
            "ends ahead",
            "late limit told",
            "of these before early",
            "between",
            "after late",
            "of all, ties told apart",
            "taken over the middle told, median",
            "by the middle");
    Programme programme = DefaultProgramme.programme();
    ForeseenByPlan foreseen =
        ForeseenByPlan.of(
            Kennel.ofClub(programme),
            clubs("default", programme),
            dogsByPlan,
            WEEKS_BY_PLAN,
            seed + 2_000_000);
    byPlan(report, "stages", foreseen.limits(), "", "");
    byPlan(
        report,
        "the whole",
        foreseen.programme(),
        "%.2f".formatted(foreseen.ofMiddle()),
        percent(foreseen.byMiddle()));
    report.print();
  }

  private static void byPlan(
      Report report, String what, LimitsHeld limits, String ofMiddle, String byMiddle) {
    report.row(
        "default",
        WEEKS_BY_PLAN,
        what,
        limits.ends(),
        percent(limits.told()),
        percent(limits.early()),
        percent(limits.between()),
        percent(limits.late()),
        percent(limits.held()),
        ofMiddle,
        byMiddle);
  }

  private void starting() {
    Report report =
        new Report(
            "OutlookChecks: starting stage",
            settings,
            "programme",
            "reps at most",
            "dogs",
            "the very stage",
            "it or one beside it",
            "too far on",
            "nothing proposed",
            "clear",
            "reps");
    programmes.forEach(
        (name, programme) -> {
          for (int most : REPS_TO_START) {
            Started started = Started.of(programme, dogs, most, seed);
            report.row(
                name,
                most,
                started.dogs(),
                percent(started.right()),
                percent(started.near()),
                percent(started.tooFar()),
                percent(started.undecided()),
                percent(started.clear()),
                "%.1f".formatted(started.reps()));
          }
        });
    report.print();
  }

  private static String percent(double share) {
    return "%.1f%%".formatted(100 * share);
  }
}
