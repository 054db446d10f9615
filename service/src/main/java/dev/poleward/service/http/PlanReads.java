package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.event.ProgrammeEvent.PlanIssued;
import dev.poleward.domain.planning.PlanOutcome;
import dev.poleward.domain.programme.DefaultProgramme;
import dev.poleward.domain.programme.DocumentReading.Faulty;
import dev.poleward.domain.programme.DocumentReading.Sound;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.programme.ProgrammeDocument;
import dev.poleward.domain.record.DogRecord;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.Registry;
import dev.poleward.domain.record.View;
import dev.poleward.service.codec.Documents;
import dev.poleward.service.http.ClubReads.Reader;
import dev.poleward.service.page.HtmlPages;
import dev.poleward.service.page.PdfPages;
import dev.poleward.service.page.PlanLeaves;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;

/** Plans as they were handed out, and what came of them. Safe for use by many threads. */
final class PlanReads {

  /** What a plan comes as, the usual form first. */
  static final List<String> FORMS = List.of(Answer.JSON, HtmlPages.HTML, PdfPages.PDF);

  private final ClubReads reads;
  private final PlacedReps placed;
  private final Papers papers;

  PlanReads(ClubReads reads, PlacedReps placed, Papers papers) {
    this.reads = reads;
    this.placed = placed;
    this.papers = papers;
  }

  /** {@code GET …/plans/{plan}}. */
  Answer plan(Call call) {
    return reads.read(
        call, (same, reader) -> Asked.inView(same, view -> answer(same, reader, view)));
  }

  private Answer answer(Call call, Reader reader, View view) {
    Placement placement = new Placement(reader.reading().facts(), view);
    Registry registry = new Registry(placement, view);
    Optional<Fact<PlanIssued>> found = registry.plan(call.inPath("plan"));
    if (found.isEmpty() || !reader.maySee(placement.identity(), found.get().event().dog())) {
      return call.refused(ProblemKind.NOT_FOUND, "There is no such plan.");
    }
    Fact<PlanIssued> plan = found.get();
    ObjectNode document = Documents.write(plan.event().document());
    if (!call.form().equals(Answer.JSON)) {
      return onPaper(call, registry, plan, document);
    }
    PlanOutcome outcome =
        PlanOutcome.of(
            PlanShape.planned(document),
            placed.ofDog(reader.reading(), placement, view, plan.event().dog()),
            plan.time());
    return Answer.json(
        200, PlanOrder.of(PlanShape.answer(document, plan.time().toString(), outcome)));
  }

  private Answer onPaper(Call call, Registry registry, Fact<PlanIssued> plan, ObjectNode document) {
    ZoneId zone = registry.club().map(LocalDays::zone).orElse(ZoneOffset.UTC);
    String callName =
        registry.dog(plan.event().dog()).map(DogRecord::callName).orElse(plan.event().dog());
    return papers.of(
        call,
        PlanLeaves.sheaf(
            PlanPaper.of(
                document,
                programme(registry, document),
                callName,
                LocalDate.ofInstant(plan.time(), zone))));
  }

  /** The programme that a plan was made from; empty where that version is no longer known. */
  private static Optional<Programme> programme(Registry registry, ObjectNode plan) {
    String id = plan.path("programme").asText("");
    int version = plan.path("programmeVersion").asInt();
    if (id.equals(DefaultProgramme.ID)) {
      return Optional.of(DefaultProgramme.programme());
    }
    return registry.programme(id).stream()
        .flatMap(known -> known.versions().stream())
        .map(known -> known.standing().event())
        .filter(published -> published.version() == version)
        .findFirst()
        .flatMap(
            published ->
                switch (ProgrammeDocument.read(published.document())) {
                  case Sound(Programme programme) -> Optional.of(programme);
                  case Faulty _ -> Optional.empty();
                });
  }
}
