package dev.poleward.domain.programme;

import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.Setup;
import dev.poleward.domain.programme.DrillMatch.Counts;
import dev.poleward.domain.programme.DrillMatch.Helped;
import dev.poleward.domain.programme.DrillMatch.Misfit;
import dev.poleward.domain.programme.DrillMatch.NoDrill;
import dev.poleward.domain.programme.DrillMatch.Voided;
import dev.poleward.domain.record.PlacedRep;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Finds the drills that placed reps belong to. Of the rungs of a stage on the rep's entry side the
 * nearest wins, whatever it is run with, and of two as near the smaller angle. The rep belongs to
 * that rung's drill when poles, run-up and handling are the drill's and its angle lies within the
 * stage's tolerance of the rung; where the handling is not asked for there, it belongs to none.
 * Distances and spacing are left to the trainer. Immutable; safe for use by many threads.
 */
public final class DrillMatching {

  /** All of a rep that has to be the drill's own, but for its angle. */
  private record Cell(int poles, RunUp runUp, Manoeuvre manoeuvre, @Nullable DogSide dogSide) {}

  private record Course(int poles, RunUp runUp) {}

  /** The rungs of a stage in one cell, with a drill for each where the handling is asked for. */
  private record Row(NearestRung nearest, Map<Rung, DrillOfStage> drills) {

    /** The drill of the nearest rung; null where none is near, or the nearest has none. */
    @Nullable DrillOfStage drill(EntryAngle angle) {
      return nearest.to(angle).map(drills::get).orElse(null);
    }
  }

  private final Set<Integer> poles = new HashSet<>();
  private final Set<Course> courses = new HashSet<>();

  /** In the order of the stages: thousands of reps are looked up for one answer. */
  private final Map<Cell, List<Row>> rows = new HashMap<>();

  private DrillMatching(Programme programme) {
    programme.stages().forEach(this::add);
  }

  /** Matches reps with the drills of a programme. */
  public static DrillMatching of(Programme programme) {
    return new DrillMatching(programme);
  }

  private void add(Stage stage) {
    NearestRung nearest = NearestRung.of(stage);
    int count = stage.ground().line().poles();
    poles.add(count);
    for (RunUp runUp : stage.runUps()) {
      courses.add(new Course(count, runUp.asRun()));
      for (Handling handling : stage.handlings()) {
        Map<Rung, DrillOfStage> drills = new HashMap<>();
        for (Rung rung : nearest.rungs()) {
          if (handling.isAskedAt(rung)) {
            drills.put(rung, new DrillOfStage(stage.id(), new Drill(count, runUp, rung, handling)));
          }
        }
        Row row = new Row(nearest, drills);
        for (DogSide side : handling.sidesDescribed()) {
          Cell cell = new Cell(count, runUp.asRun(), handling.manoeuvre(), side);
          rows.computeIfAbsent(cell, _ -> new ArrayList<>()).add(row);
        }
      }
    }
  }

  /** Where a rep belongs. */
  public DrillMatch match(PlacedRep rep) {
    if (rep.outcome() == Outcome.VOID) {
      return new Voided();
    }
    if (rep.setup() == null) {
      return new NoDrill(Misfit.NO_SETUP);
    }
    if (rep.angle() == null) {
      return new NoDrill(Misfit.NO_ANGLE);
    }
    return match(rep, rep.setup(), rep.angle());
  }

  private DrillMatch match(PlacedRep rep, Setup setup, EntryAngle angle) {
    RunUp runUp = RunUp.asRun(setup.leadIn(), rep.details());
    if (runUp == null || !courses.contains(new Course(setup.poles(), runUp))) {
      return new NoDrill(poles.contains(setup.poles()) ? Misfit.RUN_UP : Misfit.POLES);
    }
    List<Row> found =
        rows.get(new Cell(setup.poles(), runUp, rep.manoeuvre(), rep.details().dogSide()));
    if (found == null) {
      return new NoDrill(Misfit.HANDLING);
    }
    List<DrillOfStage> drills = new ArrayList<>(found.size());
    for (Row row : found) {
      DrillOfStage drill = row.drill(angle);
      if (drill != null) {
        drills.add(drill);
      }
    }
    if (drills.isEmpty()) {
      return new NoDrill(Misfit.ANGLE);
    }
    return rep.isHelped() ? new Helped(drills) : new Counts(drills);
  }
}
