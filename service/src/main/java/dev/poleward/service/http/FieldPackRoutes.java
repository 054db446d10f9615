package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import dev.poleward.domain.running.RunningOrder;
import dev.poleward.domain.running.RunningOrders;
import dev.poleward.domain.running.RunningQuestion;
import dev.poleward.domain.running.SwungPoles;
import dev.poleward.service.access.Scope;
import dev.poleward.service.contract.Fault;
import dev.poleward.service.http.ClubReads.Marking;
import dev.poleward.service.http.ClubReads.Reader;
import dev.poleward.service.page.PdfPages;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * All that a class needs for a day without network. Records nothing. Safe for use by many threads.
 */
final class FieldPackRoutes {

  /** What it comes as, the usual form first. */
  static final List<String> FORMS = List.of(Answer.JSON, PdfPages.PDF);

  private static final Fault TOO_MANY =
      new Fault(
          "class",
          "has more than %d members, or they come to more than %d turns or %d setups: ask for plans and a running order of those who come"
              .formatted(
                  RunningQuestion.DOGS_MAX, RunningQuestion.TURNS_MAX, FieldPack.SETUPS_MAX));

  private final ClubReads reads;
  private final PlacedReps placed;
  private final ClubsForgetting clubs;
  private final LocalDays days;
  private final Papers papers;

  /** A pack has a running order in it, which takes up to a second or two: one at a time. */
  private final Turns turns = new Turns();

  FieldPackRoutes(
      ClubReads reads, PlacedReps placed, ClubsForgetting clubs, LocalDays days, Papers papers) {
    this.reads = reads;
    this.placed = placed;
    this.clubs = clubs;
    this.days = days;
    this.papers = papers;
  }

  /** {@code GET …/field-pack}. */
  Answer fieldPack(Call call) {
    return reads.read(
        call,
        Set.of(Scope.RECORDS_READ),
        new Marking.Remembered(days::today),
        ClubReads.ofWholeClub(this::answer));
  }

  private Answer answer(Call call, Reader reader) {
    Parameters parameters = new Parameters(call, Set.of("date", "class"));
    LocalDay today = days.today(reader);
    LocalDate date = Objects.requireNonNullElse(parameters.date("date"), today.date());
    String group = parameters.id("class");
    if (!parameters.isGiven("class")) {
      parameters.refuse("class", "is required");
    }
    Optional<Problem> problem = parameters.problem();
    if (problem.isPresent() || group == null) {
      return call.refused(problem.orElseThrow());
    }
    return turns.take(reader.club(), () -> made(call, reader, group, date, today.zone()));
  }

  private Answer made(Call call, Reader reader, String group, LocalDate date, ZoneId zone) {
    Instant noon = date.atTime(LocalTime.NOON).atZone(zone).toInstant();
    RunningAsked asked = RunningAsked.of(JsonNodeFactory.instance.objectNode(), noon);
    Optional<DogsPresent> present = DogsPresent.of(asked, reader, placed, clubs, group);
    if (present.isEmpty()) {
      return call.refused(ProblemKind.NOT_FOUND, "There is no such class.");
    }
    DogsPresent dogs = present.get();
    if (!dogs.faults().isEmpty() || FieldPack.setups(dogs).size() > FieldPack.SETUPS_MAX) {
      return call.refused(Problem.inParameters(List.of(TOO_MANY)));
    }
    RunningOrder order = RunningOrders.of(dogs.question(), new SwungPoles());
    FieldPack pack = new FieldPack(group, date, zone, asked, dogs, order);
    return call.form().equals(PdfPages.PDF)
        ? papers.of(call, FieldPackPaper.of(pack))
        : Answer.json(200, FieldPackShape.of(pack));
  }
}
