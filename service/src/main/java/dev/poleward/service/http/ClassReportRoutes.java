package dev.poleward.service.http;

import dev.poleward.domain.record.DaySpan;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.Registry;
import dev.poleward.domain.record.View;
import dev.poleward.domain.report.ClassReport;
import dev.poleward.domain.report.ReportSources;
import dev.poleward.service.http.ClubReads.Reader;
import dev.poleward.service.render.CsvTable;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/** The report of a class. Safe for use by many threads. */
final class ClassReportRoutes {

  /** What it comes as, the usual form first. */
  static final List<String> FORMS = List.of(Answer.JSON, CsvTable.CSV);

  /** Days of a report at most. */
  static final int DAYS_MAX = 366;

  private static final int DAYS_USUAL = 28;
  private static final Set<String> PARAMETERS = Set.of("asOf", "knownAt", "from", "to");

  private final ClubReads reads;
  private final PlacedReps placed;
  private final LocalDays days;
  private final ClassReportShape shape = new ClassReportShape();

  ClassReportRoutes(ClubReads reads, PlacedReps placed, LocalDays days) {
    this.reads = reads;
    this.placed = placed;
    this.days = days;
  }

  /** {@code GET …/classes/{class}/report}. */
  Answer report(Call call) {
    return reads.remembered(
        call,
        (same, reader) ->
            days.of(reader, new Parameters(same, PARAMETERS).view()).date().toString(),
        this::answer);
  }

  private Answer answer(Call call, Reader reader) {
    Parameters parameters = new Parameters(call, PARAMETERS);
    View asked = parameters.view();
    LocalDay day = days.of(reader, asked);
    LocalDate to = Objects.requireNonNullElse(parameters.date("to"), day.date());
    LocalDate from =
        Objects.requireNonNullElse(parameters.date("from"), to.minusDays(DAYS_USUAL - 1));
    if (to.isAfter(day.date())) {
      parameters.refuse("to", "must not be after " + day.date() + ", the day of asOf or today");
    }
    if (from.isAfter(to)) {
      parameters.refuse("from", "must not be after to");
    } else if (!from.plusDays(DAYS_MAX).isAfter(to)) {
      parameters.refuse("from", "must leave at most %d days up to to".formatted(DAYS_MAX));
    }
    return parameters
        .problem()
        .map(call::refused)
        .orElseGet(() -> answer(call, reader, asked, new DaySpan(from, to, day.zone())));
  }

  private Answer answer(Call call, Reader reader, View asked, DaySpan span) {
    View view = ReportSources.view(asked, span);
    Placement placement = new Placement(reader.reading().facts(), view);
    Registry registry = new Registry(placement, view);
    ReportSources sources =
        new ReportSources(
            reader.reading().facts(),
            placement,
            registry,
            span,
            Care.limits(registry),
            dog -> placed.ofDog(reader.reading(), placement, view, dog));
    String group = call.inPath("class");
    Optional<ClassReport> report =
        reader.mayTouchEveryDog()
            ? ClassReport.whole(group, sources)
            : ClassReport.ofDogs(group, sources, dog -> reader.maySee(placement.identity(), dog));
    return report
        .map(made -> written(call, made))
        .orElseGet(() -> call.refused(ProblemKind.NOT_FOUND, "There is no such class."));
  }

  private Answer written(Call call, ClassReport report) {
    return call.form().equals(CsvTable.CSV)
        ? Answer.text(CsvTable.CSV + "; charset=utf-8", ClassReportTable.of(report))
        : Answer.json(200, shape.of(report));
  }
}
