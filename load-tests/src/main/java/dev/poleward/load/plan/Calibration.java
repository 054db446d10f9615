package dev.poleward.load.plan;

import dev.poleward.domain.learner.Population;
import dev.poleward.domain.learner.Temper;
import dev.poleward.domain.mastery.Estimate;
import dev.poleward.domain.planning.PlanBlock;
import dev.poleward.domain.planning.SessionPlan;
import dev.poleward.domain.programme.DefaultProgramme;
import dev.poleward.domain.programme.Programme;
import dev.poleward.load.figures.Report;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What plans expect of dogs against what the dogs do, block by block as the plans are run. For one
 * thread.
 */
public final class Calibration implements PlanWitness {

  private static final String PROGRAM = "ForecastCalibration";

  /** Expected shares are looked at between these. */
  private static final List<Double> BOUNDS = List.of(0.6, 0.7, 0.75, 0.8, 0.85, 0.9, 0.95);

  private final Foretold all = new Foretold();
  private final Map<Integer, Foretold> byShare = new TreeMap<>();
  private final Map<PlanBlock.Purpose, Foretold> byPurpose = new EnumMap<>(PlanBlock.Purpose.class);
  private final SessionsForetold sessions = new SessionsForetold();
  private @Nullable PlanBlock begun;
  private double chance;

  private Calibration() {}

  /** Takes so many dogs through the default programme by plan. */
  public static Calibration of(int dogs, long seed, int repsOfSession) {
    Calibration calibration = new Calibration();
    Programme programme = DefaultProgramme.programme();
    for (int dog = 0; dog < dogs; dog++) {
      Temper temper = Population.CLUB.draw(new SplittableRandom(seed * 1_000_003 + dog));
      Schooling.of(temper, programme, dog, new ByPlan(calibration), repsOfSession);
    }
    return calibration;
  }

  @Override
  public void begins(SessionPlan plan, Trainee dog) {
    begun = null;
    sessions.begins(plan, dog);
  }

  @Override
  public void runs(PlanBlock block, Trainee dog) {
    if (!block.equals(begun)) {
      begun = block;
      double fresh = dog.chanceWhenFresh(block.drill());
      of(block).forEach(each -> each.begins(block, fresh));
    }
    chance = dog.chance(block.drill());
  }

  @Override
  public void ran(PlanBlock block, boolean clean) {
    of(block).forEach(each -> each.ran(block, chance, clean));
    sessions.ran(chance, clean);
  }

  private List<Foretold> of(PlanBlock block) {
    int bin = (int) BOUNDS.stream().filter(each -> each <= block.expected().value()).count();
    return List.of(
        all,
        byShare.computeIfAbsent(bin, _ -> new Foretold()),
        byPurpose.computeIfAbsent(block.purpose(), _ -> new Foretold()));
  }

  /** Prints what was expected and what came, by share and by purpose, and session by session. */
  public void print(String settings) {
    Report report =
        new Report(
            PROGRAM,
            settings,
            "blocks",
            "blocks that were run",
            "reps",
            "expected",
            "true chance",
            "clean",
            "95% limits",
            "limits hold",
            "Brier score",
            "of the base rate",
            "at best");
    byShare.forEach((bin, foretold) -> row(report, name(bin), foretold));
    byPurpose.forEach((purpose, foretold) -> row(report, name(purpose), foretold));
    row(report, "all", all);
    report.print();
    sessions.print(PROGRAM, settings);
  }

  private static String name(PlanBlock.Purpose purpose) {
    return purpose.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static String name(int bin) {
    if (bin == 0) {
      return "below " + BOUNDS.getFirst();
    }
    return bin == BOUNDS.size()
        ? "from " + BOUNDS.getLast()
        : BOUNDS.get(bin - 1) + " to " + BOUNDS.get(bin);
  }

  private static void row(Report report, String name, Foretold foretold) {
    Estimate clean = foretold.clean();
    List<Object> row = new ArrayList<>(List.of(name, foretold.blocks(), foretold.reps()));
    row.add(share(foretold.expected()));
    row.add(share(foretold.chance()));
    row.add(share(clean.value()));
    row.add(share(clean.lower()) + " to " + share(clean.upper()));
    row.add(share(foretold.withinLimits()));
    row.add(share(foretold.brier()));
    row.add(share(foretold.brierOfBaseRate()));
    row.add(share(foretold.brierAtBest()));
    report.row(row.toArray());
  }

  static String share(double share) {
    return "%.3f".formatted(share);
  }
}
