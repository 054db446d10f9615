package dev.poleward.service.http;

import dev.poleward.domain.record.DaySpan;
import dev.poleward.domain.report.Overview;
import dev.poleward.service.http.ReportReads.Asking;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;

/** The whole club at a glance. Safe for use by many threads. */
final class OverviewRoutes {

  private static final int DOGS_USUAL = 100;
  private static final int UNTRAINED_DAYS_USUAL = 21;
  private static final int UNTRAINED_DAYS_MAX = 3_650;

  private final ReportReads reports;
  private final OverviewShape shape = new OverviewShape();

  OverviewRoutes(ReportReads reports) {
    this.reports = reports;
  }

  /** {@code GET …/overview}. */
  Answer overview(Call call) {
    return reports.ofWholeClub(call, Set.of("limit", "cursor", "untrainedDays"), this::answer);
  }

  private Answer answer(Asking asking) {
    Parameters parameters = asking.parameters();
    int limit = (int) parameters.whole("limit", 1, Overview.DOGS_MAX, DOGS_USUAL);
    String after = Cursors.id(parameters);
    int untrainedDays =
        (int) parameters.whole("untrainedDays", 1, UNTRAINED_DAYS_MAX, UNTRAINED_DAYS_USUAL);
    Optional<Problem> problem = parameters.problem();
    if (problem.isPresent()) {
      return asking.call().refused(problem.get());
    }
    LocalDate day = asking.day().date();
    DaySpan span = new DaySpan(day, day, asking.day().zone());
    Overview overview = Overview.of(reports.sources(asking, span), after, limit);
    Answer answer = Answer.json(200, shape.of(overview, asking.day(), untrainedDays));
    return overview
        .next()
        .map(next -> Page.link(asking.call(), answer, "cursor", Parameters.cursor(next)))
        .orElse(answer);
  }
}
