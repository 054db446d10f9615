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
 * stage as likely as any other before the first rep)? What is proposed is the earliest stage that
 * the reps do not rule out, and nothing while they hardly tell the stages apart ({@link
 * PlacesSeen}).
 *
 * @param reps that were looked at
 * @param stages with the chance that the dog stands in each; they and {@code finished} sum to 1
 * @param finished the chance that there is nothing left to learn in the programme
 * @param next reps that would tell most, the easiest first; none when it is clear, or the dog may
 *     run nothing
 */
public record StartingStage(
    Programme programme,
    int reps,
    List<Chance> stages,
    double finished,
    Finding finding,
    List<ToTry> next) {

  /** Reps below which nothing is proposed. */
  public static final int REPS_MIN = 6;

  /** The latest reps that are looked at. */
  public static final int REPS_MAX = 20;

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

  /**
   * The chance that a dog stands in a stage.
   *
   * @param ruledOut whether the reps show that the dog is beyond it, and beyond all before
   */
  public record Chance(Stage stage, double chance, boolean ruledOut) {}

  /**
   * A rep to run.
   *
   * @param clean the chance that it is clean, as far as is known now
   */
  public record ToTry(Drill drill, double clean) {}

  /** What the reps come to. */
  public sealed interface Finding {

    /** Fewer than {@value StartingStage#REPS_MIN} reps. */
    record TooFewReps() implements Finding {}

    /** The reps hardly tell the stages apart. */
    record Undecided() implements Finding {}

    /** For its age or its health the dog may run nothing of any stage that could be proposed. */
    record NothingAllowed() implements Finding {}

    /**
     * A stage is proposed.
     *
     * @param shown the earliest that the reps do not rule out; the last where they rule out all
     * @param proposed it, or the latest before it that the dog may run anything of
     * @param clear whether more reps would hardly change what is shown
     */
    record Proposed(Stage shown, Stage proposed, boolean clear) implements Finding {}
  }

  /** What is proposed; null where nothing is. */
  public @Nullable Stage proposed() {
    return finding instanceof Finding.Proposed found ? found.proposed() : null;
  }

  /** Whether a stage is proposed, and more reps would hardly change what is shown. */
  public boolean clear() {
    return finding instanceof Finding.Proposed found && found.clear();
  }

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
      PlacesSeen places = PlacesSeen.of(WeighedPanel.of(panel, List.of()), weighed);
      Finding finding = finding(places, reps.size());
      List<Chance> chances = new ArrayList<>();
      for (int i = 0; i < curriculum.stages().size(); i++) {
        chances.add(
            new Chance(curriculum.stages().get(i), places.chance(i), places.areRuledOutUpTo(i)));
      }
      boolean clear = finding instanceof Finding.Proposed found && found.clear();
      return new StartingStage(
          curriculum.programme(),
          reps.size(),
          chances,
          places.chance(curriculum.stages().size()),
          finding,
          clear ? List.of() : next(weighed));
    }

    private Finding finding(PlacesSeen places, int reps) {
      int latest = latestAllowed(places.earliestLeft());
      if (latest < 0) {
        return new Finding.NothingAllowed();
      }
      if (reps < REPS_MIN) {
        return new Finding.TooFewReps();
      }
      if (!places.areToldApart()) {
        return new Finding.Undecided();
      }
      int shown = places.earliestLeft();
      boolean clear = places.reach(shown) >= CLEAR && places.reach(shown + 1) <= 1 - CLEAR;
      return new Finding.Proposed(
          curriculum.stages().get(shown), curriculum.stages().get(latest), clear);
    }

    /** The latest stage up to one that the dog may run anything of; below 0 where none is. */
    private int latestAllowed(int stage) {
      int latest = stage;
      while (latest >= 0 && !mayBegin(latest)) {
        latest--;
      }
      return latest;
    }

    private boolean mayBegin(int stage) {
      return curriculum.pools().stream()
          .filter(pool -> pool.stage() == stage)
          .flatMap(pool -> pool.drills().stream())
          .anyMatch(exercise -> allowed.test(exercise.drill()));
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
