package dev.poleward.domain.history;

import static dev.poleward.domain.history.HistoryCheck.forHistories;
import static dev.poleward.domain.history.Laws.those;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.care.CareLimits;
import dev.poleward.domain.judgement.ClubForgetting;
import dev.poleward.domain.judgement.RecordedReturns;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Facts;
import dev.poleward.domain.record.MemoryFacts;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.Registry;
import dev.poleward.domain.record.View;
import dev.poleward.domain.report.ClassPage;
import dev.poleward.domain.report.ClassReport;
import dev.poleward.domain.report.DogPage;
import dev.poleward.domain.report.Overview;
import dev.poleward.domain.report.Presence;
import dev.poleward.domain.report.ReportSources;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What holds of every report, whatever a club tells. */
class ReportLawsTest {

  private static final int HISTORIES = 1_000;

  private static ReportSources sources(List<Fact<?>> all, View view) {
    Facts facts = MemoryFacts.of(all);
    Placement placement = new Placement(facts, view);
    return new ReportSources(
        facts,
        placement,
        new Registry(placement, view),
        AheadQuestions.SPAN,
        CareLimits.USUAL,
        placement::ofDog,
        new ClubForgetting(
            new RecordedReturns(facts, view), placement.identity(), view, ZoneOffset.UTC));
  }

  /** So the report of some days reads the same whenever it is asked for. */
  @Test
  void whatHappensAfterTheLastMomentDoesNotShow() {
    forHistories(
        HISTORIES,
        (facts, random) -> {
          Instant asOf = GeneratedHistory.anyTime(random);
          View view = new View(asOf, null);
          ReportSources all = sources(facts, view);
          ReportSources happened =
              sources(
                  those(facts, fact -> !fact.time().isAfter(asOf) || ViewLawsTest.lasts(fact)),
                  view);
          for (String group : GeneratedHistory.CLASSES) {
            assertThat(ReportInBrief.of(ClassReport.whole(group, all)))
                .isEqualTo(ReportInBrief.of(ClassReport.whole(group, happened)));
          }
          assertThat(Overview.of(all, "", Overview.DOGS_MAX))
              .isEqualTo(Overview.of(happened, "", Overview.DOGS_MAX));
        });
  }

  @Test
  void whoHasRepsWasThereAndNobodyIsReportedTwice() {
    Set<Presence> seen = new HashSet<>();
    forHistories(
        HISTORIES,
        (facts, _) -> {
          for (String group : GeneratedHistory.CLASSES) {
            Optional<ClassReport> report =
                ClassReport.whole(group, sources(facts, View.EVERYTHING));
            report.ifPresent(
                known -> {
                  assertThat(known.dogs()).extracting(DogPage::dog).doesNotHaveDuplicates();
                  ClassPage page = known.page().orElseThrow();
                  page.sessions().stream()
                      .flatMap(session -> session.members().stream())
                      .forEach(
                          attendance -> {
                            seen.add(attendance.presence());
                            assertThat(attendance.presence() == Presence.PRESENT)
                                .isEqualTo(
                                    attendance.reps() > 0
                                        || Boolean.TRUE.equals(attendance.noted()));
                          });
                  assertThat(page.reps().all())
                      .isEqualTo(
                          page.sessions().stream().mapToInt(each -> each.reps().size()).sum());
                });
          }
        });
    assertThat(seen).containsExactlyInAnyOrder(Presence.values());
  }
}
