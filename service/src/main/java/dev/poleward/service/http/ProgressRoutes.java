package dev.poleward.service.http;

import dev.poleward.domain.judgement.DrillCount;
import dev.poleward.domain.judgement.DrillCounts;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.Registry;
import dev.poleward.domain.record.View;
import dev.poleward.service.http.ClubReads.Reader;
import dev.poleward.service.render.CsvTable;
import java.util.List;

/** What a dog has run, drill by drill. Safe for use by many threads. */
final class ProgressRoutes {

  /** What it comes as, the usual form first. */
  static final List<String> FORMS = List.of(Answer.JSON, CsvTable.CSV);

  private final ClubReads reads;
  private final PlacedReps placed;
  private final RememberedAnswers remembered;
  private final ProgressShape shape;

  ProgressRoutes(
      ClubReads reads, PlacedReps placed, RememberedAnswers remembered, ProgressShape shape) {
    this.reads = reads;
    this.placed = placed;
    this.remembered = remembered;
    this.shape = shape;
  }

  /** {@code GET …/dogs/{dog}/progress}. */
  Answer progress(Call call) {
    return reads.read(
        call,
        (same, reader) ->
            remembered.of(
                same, reader, "", () -> Asked.inView(same, view -> answer(same, reader, view))));
  }

  private Answer answer(Call call, Reader reader, View view) {
    String dog = call.inPath("dog");
    Placement placement = new Placement(reader.reading().facts(), view);
    if (!reader.maySee(placement.identity(), dog)
        || new Registry(placement, view).dog(dog).isEmpty()) {
      return call.refused(ProblemKind.NOT_FOUND, "There is no such dog.");
    }
    DrillCounts counts = DrillCounts.of(placed.ofDog(reader, placement, view, dog));
    return call.form().equals(CsvTable.CSV)
        ? Answer.text(CsvTable.CSV + "; charset=utf-8", ProgressTable.of(dog, shown(counts)))
        : Answer.json(200, shape.of(dog, counts, shown(counts)));
  }

  private static List<DrillCount> shown(DrillCounts counts) {
    return counts.drills().stream().limit(ProgressShape.DRILLS_MAX).toList();
  }
}
