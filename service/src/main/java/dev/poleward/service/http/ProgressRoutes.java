package dev.poleward.service.http;

import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.DrillCount;
import dev.poleward.domain.judgement.DrillCounts;
import dev.poleward.domain.judgement.NextRung;
import dev.poleward.domain.judgement.NextRungs;
import dev.poleward.domain.judgement.StandingHistory;
import dev.poleward.domain.planning.CleanForecast;
import dev.poleward.domain.programme.ProgrammesFollowed;
import dev.poleward.domain.record.PlacedRep;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.Registry;
import dev.poleward.domain.record.View;
import dev.poleward.service.http.ClubReads.Reader;
import dev.poleward.service.render.CsvTable;
import java.util.List;

/** Where a dog stands in its programme, and what it has run. Safe for use by many threads. */
final class ProgressRoutes {

  /** What it comes as, the usual form first. */
  static final List<String> FORMS = List.of(Answer.JSON, CsvTable.CSV);

  private final ClubReads reads;
  private final PlacedReps placed;
  private final LocalDays days;
  private final ProgressShape shape;

  ProgressRoutes(ClubReads reads, PlacedReps placed, LocalDays days, ProgressShape shape) {
    this.reads = reads;
    this.placed = placed;
    this.days = days;
    this.shape = shape;
  }

  /** {@code GET …/dogs/{dog}/progress}. */
  Answer progress(Call call) {
    // What is due depends on the day.
    return reads.remembered(
        call,
        days::agedTo,
        (same, reader) -> Asked.inView(same, view -> answer(same, reader, view)));
  }

  private Answer answer(Call call, Reader reader, View view) {
    String dog = call.inPath("dog");
    Placement placement = new Placement(reader.reading().facts(), view);
    Registry registry = new Registry(placement, view);
    if (!reader.maySee(placement.identity(), dog) || registry.dog(dog).isEmpty()) {
      return call.refused(ProblemKind.NOT_FOUND, "There is no such dog.");
    }
    List<PlacedRep> reps = placed.ofDog(reader.reading(), placement, view, dog);
    DrillCounts counts = DrillCounts.of(reps);
    if (call.form().equals(CsvTable.CSV)) {
      return Answer.text(CsvTable.CSV + "; charset=utf-8", ProgressTable.of(dog, shown(counts)));
    }
    LocalDay day = days.of(reader, view);
    StandingHistory history =
        StandingHistory.of(reps, ProgrammesFollowed.of(dog, registry), view.asOf());
    DogStanding standing = history.reading().standing(day.end());
    List<NextRung> next = NextRungs.of(standing, CleanForecast.of(reps, day.end()));
    return Answer.json(
        200, shape.of(dog, day.date(), history.inForce(), standing, next, counts, shown(counts)));
  }

  private static List<DrillCount> shown(DrillCounts counts) {
    return counts.drills().stream().limit(ProgressShape.DRILLS_MAX).toList();
  }
}
