package dev.poleward.domain.history;

import dev.poleward.domain.judgement.DrillState;
import dev.poleward.domain.judgement.PoolStanding;
import dev.poleward.domain.report.ClassReport;
import dev.poleward.domain.report.DogPage;
import dev.poleward.domain.report.StandingAt;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A report without rungs that nobody has touched: thousands of these are compared. */
final class ReportInBrief {

  private ReportInBrief() {}

  static List<Object> of(Optional<ClassReport> report) {
    List<Object> brief = new ArrayList<>();
    report.ifPresent(
        known -> {
          brief.add(known.formed());
          brief.add(known.page());
          brief.add(known.omitted());
          known.dogs().forEach(page -> add(brief, page));
        });
    return brief;
  }

  private static void add(List<Object> brief, DogPage page) {
    brief.add(page.dog());
    brief.add(page.known());
    brief.add(page.memberships());
    brief.add(page.attended());
    brief.add(page.reps());
    brief.add(page.season());
    add(brief, page.begin());
    add(brief, page.end());
    brief.add(page.sides());
    brief.add(page.worked());
    brief.add(page.faults());
    brief.add(page.load());
    brief.add(page.care());
    brief.add(page.homework());
    brief.add(page.atHome());
    brief.add(page.rewards());
    brief.add(page.trials());
    brief.add(page.notKnown());
  }

  private static void add(List<Object> brief, StandingAt at) {
    brief.add(at.followed());
    brief.add(at.standing().programme().id());
    brief.add(at.standing().forgetting());
    at.standing().stages().forEach(stage -> brief.add(stage.stage().id() + " " + stage.state()));
    at.standing().pools().stream().filter(ReportInBrief::isTouched).forEach(brief::add);
  }

  private static boolean isTouched(PoolStanding pool) {
    return pool.state() != DrillState.UNTOUCHED || pool.practised() != null;
  }
}
