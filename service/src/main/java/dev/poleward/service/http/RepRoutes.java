package dev.poleward.service.http;

import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.Registry;
import dev.poleward.domain.record.View;
import dev.poleward.service.http.Asked.ByMoment;
import dev.poleward.service.http.ClubReads.Reader;

/** Reps, those of a dog and each by itself. Safe for use by many threads. */
final class RepRoutes {

  private final ClubReads reads;
  private final PlacedReps placed;
  private final RepShape shape;
  private final RepList list;

  RepRoutes(ClubReads reads, PlacedReps placed, RepShape shape, RepList list) {
    this.reads = reads;
    this.placed = placed;
    this.shape = shape;
    this.list = list;
  }

  /** {@code GET …/dogs/{dog}/reps}. */
  Answer ofDog(Call call) {
    return reads.read(
        call, (same, reader) -> Asked.byMoment(same, asked -> ofDog(same, reader, asked)));
  }

  private Answer ofDog(Call call, Reader reader, ByMoment asked) {
    String dog = call.inPath("dog");
    Placement placement = new Placement(reader.reading().facts(), asked.view());
    if (!reader.maySee(placement.identity(), dog)
        || new Registry(placement, asked.view()).dog(dog).isEmpty()) {
      return call.refused(ProblemKind.NOT_FOUND, "There is no such dog.");
    }
    return list.page(
        call, reader, placed.ofDog(reader.reading(), placement, asked.view(), dog), asked);
  }

  /** {@code GET …/reps/{rep}}. */
  Answer rep(Call call) {
    return reads.read(call, (same, reader) -> Asked.inView(same, view -> rep(same, reader, view)));
  }

  private Answer rep(Call call, Reader reader, View view) {
    Placement placement = new Placement(reader.reading().facts(), view);
    return placement
        .ofRep(call.inPath("rep"))
        .filter(rep -> reader.maySee(placement.identity(), rep.dog()))
        .map(rep -> Answer.json(200, shape.of(reader.personal(), rep)))
        .orElseGet(() -> call.refused(ProblemKind.NOT_FOUND, "There is no such rep."));
  }
}
