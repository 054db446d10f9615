package dev.poleward.load;

import dev.poleward.domain.programme.DefaultProgramme;
import dev.poleward.domain.programme.Programme;
import dev.poleward.load.figures.Arguments;
import dev.poleward.load.figures.Report;
import dev.poleward.load.figures.TimeLimit;
import dev.poleward.load.outlook.Foreseen;
import dev.poleward.load.outlook.Kennel;
import dev.poleward.load.outlook.Programmes;
import dev.poleward.load.outlook.Recovered;
import dev.poleward.load.outlook.Started;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How well the learner is fitted, how often outlooks hold, and how well a starting stage is found,
 * over simulated dogs that differ as those of a club do.
 */
public final class OutlookChecks {

  private static final int[] WEEKS = {2, 4, 8, 16};

  private final int dogs;
  private final long seed;
  private final String settings;
  private final Map<String, Programme> programmes = new LinkedHashMap<>();

  private OutlookChecks(Arguments arguments) {
    dogs = arguments.whole("dogs", 100, 20);
    seed = arguments.whole("seed", 1, 0);
    TimeLimit.set(arguments.limit(20));
    settings = arguments.settings();
    programmes.put("in steps to 60", Programmes.inSteps());
    programmes.put("default", DefaultProgramme.programme());
  }

  public static void main(String[] args) {
    OutlookChecks program = new OutlookChecks(new Arguments(args));
    program.fitting();
    program.lookingAhead();
    program.starting();
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
          for (int clubDogs : new int[] {0, 12}) {
            for (int weeks : WEEKS) {
              Recovered found = Recovered.of(new Kennel(programme), dogs, clubDogs, weeks, seed);
              report.row(
                  name,
                  clubDogs,
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
    Report report =
        new Report(
            "OutlookChecks: ends of stages",
            settings,
            "programme",
            "weeks on record",
            "ends ahead",
            "before early",
            "between",
            "after late",
            "not within two years",
            "late over early",
            "ms an outlook");
    programmes.forEach(
        (name, programme) -> {
          for (int weeks : WEEKS) {
            Foreseen foreseen = Foreseen.of(new Kennel(programme), dogs, weeks, seed);
            report.row(
                name,
                weeks,
                foreseen.ends(),
                percent(foreseen.early()),
                percent(foreseen.held()),
                percent(foreseen.late()),
                percent(foreseen.never()),
                "%.1f".formatted(foreseen.width()),
                "%.0f".formatted(foreseen.millis()));
          }
        });
    report.print();
  }

  private void starting() {
    Report report =
        new Report(
            "OutlookChecks: starting stage",
            settings,
            "programme",
            "dogs",
            "the very stage",
            "it or one beside it",
            "too far on",
            "clear",
            "reps");
    programmes.forEach(
        (name, programme) -> {
          Started started = Started.of(programme, dogs, seed);
          report.row(
              name,
              started.dogs(),
              percent(started.right()),
              percent(started.near()),
              percent(started.tooFar()),
              percent(started.clear()),
              "%.1f".formatted(started.reps()));
        });
    report.print();
  }

  private static String percent(double share) {
    return "%.1f%%".formatted(100 * share);
  }
}
