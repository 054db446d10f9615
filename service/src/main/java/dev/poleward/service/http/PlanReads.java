package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.event.ProgrammeEvent.PlanIssued;
import dev.poleward.domain.planning.PlanOutcome;
import dev.poleward.domain.record.EntityKind;
import dev.poleward.domain.record.EntityRef;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.Precedence;
import dev.poleward.domain.record.View;
import dev.poleward.service.codec.Documents;
import dev.poleward.service.http.ClubReads.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Plans as they were handed out, and what came of them. Safe for use by many threads. */
final class PlanReads {

  private final ClubReads reads;
  private final PlacedReps placed;

  PlanReads(ClubReads reads, PlacedReps placed) {
    this.reads = reads;
    this.placed = placed;
  }

  /** {@code GET …/plans/{plan}}. */
  Answer plan(Call call) {
    return reads.read(
        call, (same, reader) -> Asked.inView(same, view -> answer(same, reader, view)));
  }

  private Answer answer(Call call, Reader reader, View view) {
    Placement placement = new Placement(reader.reading().facts(), view);
    Optional<Fact<PlanIssued>> found = issued(reader, view, call.inPath("plan"));
    if (found.isEmpty() || !reader.maySee(placement.identity(), found.get().event().dog())) {
      return call.refused(ProblemKind.NOT_FOUND, "There is no such plan.");
    }
    Fact<PlanIssued> plan = found.get();
    ObjectNode document = Documents.write(plan.event().document());
    PlanOutcome outcome =
        PlanOutcome.of(
            PlanShape.planned(document),
            placed.ofDog(reader.reading(), placement, view, plan.event().dog()),
            plan.time());
    return Answer.json(
        200, PlanOrder.of(PlanShape.answer(document, plan.time().toString(), outcome)));
  }

  private static Optional<Fact<PlanIssued>> issued(Reader reader, View view, String plan) {
    List<Fact<PlanIssued>> issued = new ArrayList<>();
    for (Fact<?> fact : reader.reading().facts().about(new EntityRef(EntityKind.PLAN, plan))) {
      Fact<PlanIssued> typed = fact.as(PlanIssued.class);
      if (typed != null && view.knew(typed.recorded()) && view.happened(typed)) {
        issued.add(typed);
      }
    }
    return Precedence.standingFirst(issued).stream().findFirst();
  }
}
