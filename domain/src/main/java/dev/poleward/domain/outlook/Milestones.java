package dev.poleward.domain.outlook;

import dev.poleward.domain.outlook.Curriculum.Pool;
import dev.poleward.domain.outlook.Season.RungDone;
import dev.poleward.domain.outlook.Season.StageDone;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.programme.Stage;
import dev.poleward.domain.record.PlacedRep;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What was done on the way to the end of a programme within a span of days, and when.
 *
 * @param stages in the order in which they were done
 * @param rungs in the order in which they were moved on from
 */
record Milestones(List<StageDone> stages, List<RungDone> rungs) {

  static Milestones of(
      List<PlacedRep> reps,
      Optional<Programme> programme,
      Optional<String> startStage,
      SeasonSpan span) {
    return programme
        .map(each -> of(reps, Curriculum.of(each), startStage, span))
        .orElseGet(() -> new Milestones(List.of(), List.of()));
  }

  private static Milestones of(
      List<PlacedRep> reps, Curriculum curriculum, Optional<String> startStage, SeasonSpan span) {
    Notebook notebook = Notebook.begun(curriculum);
    startStage.flatMap(curriculum::place).ifPresent(notebook::startedAt);
    List<StageDone> stages = new ArrayList<>();
    List<RungDone> rungs = new ArrayList<>();
    notebook.readAll(
        reps,
        (rep, pool) -> {
          if (span.has(rep.moment().time())) {
            LocalDate day = span.day(rep.moment().time());
            Pool passed = curriculum.pools().get(pool);
            Stage stage = curriculum.stages().get(passed.stage());
            rungs.add(new RungDone(stage, passed.pool(), day));
            if (notebook.isDone(passed.stage())) {
              stages.add(new StageDone(stage, day));
            }
          }
        });
    return new Milestones(stages, rungs);
  }
}
