package dev.poleward.domain.history;

import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.DrillState;
import dev.poleward.domain.judgement.NextRungs;
import dev.poleward.domain.planning.CleanForecast;
import java.util.ArrayList;
import java.util.List;

/** Where a dog stands, without what nobody has touched: thousands of these are compared. */
final class StandingInBrief {

  private StandingInBrief() {}

  static List<Object> of(DogStanding standing, CleanForecast forecast) {
    List<Object> brief = new ArrayList<>();
    brief.add(standing.programme().id() + " " + standing.programme().version());
    brief.add(standing.forgetting());
    standing.stages().forEach(stage -> brief.add(stage.stage().id() + " " + stage.state()));
    standing.pools().stream()
        .filter(pool -> pool.state() != DrillState.UNTOUCHED || pool.practised() != null)
        .forEach(brief::add);
    NextRungs.of(standing, forecast)
        .forEach(
            next -> brief.add(next.why() + " " + next.standing().pool().rung() + next.expected()));
    return brief;
  }
}
