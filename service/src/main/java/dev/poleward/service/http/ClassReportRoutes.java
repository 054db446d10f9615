package dev.poleward.service.http;

import dev.poleward.domain.record.DaySpan;
import dev.poleward.domain.report.ClassReport;
import dev.poleward.domain.report.ReportSources;
import dev.poleward.service.http.ClubReads.Reader;
import dev.poleward.service.http.ReportReads.Asking;
import dev.poleward.service.page.HtmlPages;
import dev.poleward.service.page.PdfPages;
import dev.poleward.service.render.CsvTable;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/** The report of a class. Safe for use by many threads. */
final class ClassReportRoutes {

  /** What it comes as, the usual form first. */
  static final List<String> FORMS =
      List.of(Answer.JSON, CsvTable.CSV, HtmlPages.HTML, PdfPages.PDF);

  /** Days of a report at most. */
  static final int DAYS_MAX = 366;

  private static final int DAYS_USUAL = 28;

  private final ReportReads reports;
  private final Papers papers;
  private final ClassReportShape shape = new ClassReportShape();

  ClassReportRoutes(ReportReads reports, Papers papers) {
    this.reports = reports;
    this.papers = papers;
  }

  /** {@code GET …/classes/{class}/report}. */
  Answer report(Call call) {
    return reports.read(call, Set.of("from", "to"), this::answer);
  }

  private Answer answer(Asking asking) {
    Parameters parameters = asking.parameters();
    LocalDate day = asking.day().date();
    LocalDate to = Objects.requireNonNullElse(parameters.date("to"), day);
    LocalDate from =
        Objects.requireNonNullElse(parameters.date("from"), to.minusDays(DAYS_USUAL - 1));
    if (to.isAfter(day)) {
      parameters.refuse("to", "must not be after " + day + ", the day of asOf or today");
    }
    if (from.isAfter(to)) {
      parameters.refuse("from", "must not be after to");
    } else if (!from.plusDays(DAYS_MAX).isAfter(to)) {
      parameters.refuse("from", "must leave at most %d days up to to".formatted(DAYS_MAX));
    }
    return parameters
        .problem()
        .map(asking.call()::refused)
        .orElseGet(() -> answer(asking, new DaySpan(from, to, asking.day().zone())));
  }

  private Answer answer(Asking asking, DaySpan span) {
    Call call = asking.call();
    return report(asking.reader(), call.inPath("class"), reports.sources(asking, span))
        .map(made -> written(call, made))
        .orElseGet(() -> call.refused(ProblemKind.NOT_FOUND, "There is no such class."));
  }

  private static Optional<ClassReport> report(Reader reader, String group, ReportSources sources) {
    return reader.mayTouchEveryDog()
        ? ClassReport.whole(group, sources)
        : ClassReport.ofDogs(
            group, sources, dog -> reader.maySee(sources.placement().identity(), dog));
  }

  private Answer written(Call call, ClassReport report) {
    return switch (call.form()) {
      case CsvTable.CSV ->
          Answer.text(CsvTable.CSV + "; charset=utf-8", ClassReportTable.of(report));
      case HtmlPages.HTML, PdfPages.PDF -> papers.of(call, ReportPaper.of(report));
      default -> Answer.json(200, shape.of(report));
    };
  }
}
