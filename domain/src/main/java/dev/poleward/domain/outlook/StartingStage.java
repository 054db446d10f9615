package dev.poleward.domain.outlook;

import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.programme.Stage;
import dev.poleward.domain.record.PlacedRep;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * A stage proposed for a dog that nobody here knows, from its last few reps, with the doubt that is
 * left: which simulated dogs would have run so, and at which stage do they stand (Bayes, every
 * stage as likely as any other before the first rep). What is proposed is the furthest stage that
 * the dog is ready for with a chance of at least {@value #READY}.
 *
 * @param reps that were looked at
 * @param stages with the chance that the dog stands where each begins; they and {@code finished}
 *     sum to 1
 * @param finished the chance that there is nothing left to learn in the programme
 * @param proposed where to start; null while too few reps were run
 * @param clear whether more reps would hardly change it
 * @param next reps that would tell most, the easiest first; none when it is clear
 */
public record StartingStage(
    Programme programme,
    int reps,
    List<Chance> stages,
    double finished,
    @Nullable Stage proposed,
    boolean clear,
    List<ToTry> next) {

  /** Reps below which nothing is proposed. */
  public static final int REPS_MIN = 6;

  /** The latest reps that are looked at; after so many something is proposed, however doubtful. */
  public static final int REPS_MAX = 10;

  /** The chance that a dog is ready for what is proposed [C]. */
  public static final double READY = 0.7;

  /** It is clear when the chance is at least this [C]. */
  public static final double CLEAR = 0.9;

  /** No rep is asked for that is expected to be clean less often, if there is another [C]. */
  public static final double CLEAN_MIN = 0.5;

  private static final int TO_TRY = 3;

  /** Keeps the lists from changing. */
  public StartingStage {
    stages = List.copyOf(stages);
    next = List.copyOf(next);
  }

  /** The chance that a dog stands where a stage begins. */
  public record Chance(Stage stage, double chance) {}

  /**
   * A rep to run.
   *
   * @param clean the chance that it is clean, as far as is known now
   */
  public record ToTry(Drill drill, double clean) {}

  /**
   * Proposes a stage of the panel's programme.
   *
   * @param reps of the dog, ascending by (time, id)
   * @param allowed what the dog may run, for its age or its health: nothing else is asked for or
   *     proposed
   */
  public static StartingStage of(Panel panel, List<PlacedRep> reps, Predicate<Drill> allowed) {
    return new Proposing(panel, allowed).of(seen(reps));
  }

  private static List<SeenRep> seen(List<PlacedRep> reps) {
    List<SeenRep> seen = SeenRep.of(reps).stream().filter(SeenRep::isEvidence).toList();
    return seen.subList(Math.max(0, seen.size() - REPS_MAX), seen.size());
  }

  /** Proposes by one panel. */
  private record Proposing(Curriculum curriculum, Panel panel, Predicate<Drill> allowed) {

    Proposing(Panel panel, Predicate<Drill> allowed) {
      this(panel.curriculum(), panel, allowed);
    }

    StartingStage of(List<SeenRep> reps) {
      WeighedPanel weighed = WeighedPanel.of(panel, reps);
      double[] stages = weighed.places();
      int furthest = furthest(stages);
      boolean enough = reps.size() >= REPS_MIN;
      double beyond = reach(stages, furthest + 1);
      boolean clear = enough && reach(stages, furthest) >= CLEAR && beyond <= 1 - CLEAR;
      List<Chance> chances = new ArrayList<>();
      for (int i = 0; i < curriculum.stages().size(); i++) {
        chances.add(new Chance(curriculum.stages().get(i), stages[i]));
      }
      return new StartingStage(
          curriculum.programme(),
          reps.size(),
          chances,
          stages[stages.length - 1],
          enough ? curriculum.stages().get(furthest) : null,
          clear,
          clear || reps.size() >= REPS_MAX ? List.of() : next(weighed));
    }

    /** The furthest stage that the dog is ready for and may run anything of. */
    private int furthest(double[] stages) {
      int furthest = 0;
      for (int stage = 1; stage < curriculum.stages().size(); stage++) {
        if (reach(stages, stage) >= READY && mayBegin(stage)) {
          furthest = stage;
        }
      }
      return furthest;
    }

    private boolean mayBegin(int stage) {
      return curriculum.pools().stream()
          .filter(pool -> pool.stage() == stage)
          .flatMap(pool -> pool.drills().stream())
          .anyMatch(exercise -> allowed.test(exercise.drill()));
    }

    /** The chance that the dog stands at a stage or further. */
    private static double reach(double[] stages, int stage) {
      double sum = 0;
      for (int i = stage; i < stages.length; i++) {
        sum += stages[i];
      }
      return sum;
    }

    /** Where all is hard for the dog, the easiest there is. */
    private List<ToTry> next(WeighedPanel weighed) {
      record Told(ToTry drill, double information) {}
      List<Told> told = new ArrayList<>();
      for (int pool = 0; pool < curriculum.pools().size(); pool++) {
        Drill drill = curriculum.pools().get(pool).drills().getFirst().drill();
        if (allowed.test(drill)) {
          ToTry toTry = new ToTry(drill, weighed.clean(pool));
          told.add(new Told(toTry, weighed.information(pool)));
        }
      }
      Comparator<ToTry> easiestFirst = Comparator.comparingDouble(ToTry::clean).reversed();
      List<ToTry> telling =
          told.stream()
              .filter(each -> each.drill().clean() >= CLEAN_MIN)
              .sorted(Comparator.comparingDouble(Told::information).reversed())
              .limit(TO_TRY)
              .map(Told::drill)
              .sorted(easiestFirst)
              .toList();
      return telling.isEmpty()
          ? told.stream().map(Told::drill).sorted(easiestFirst).limit(1).toList()
          : telling;
    }
  }
}
