package dev.poleward.domain.history;

import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.DrillState;
import dev.poleward.domain.judgement.NextRungs;
import dev.poleward.domain.judgement.StandingHistory;
import dev.poleward.domain.planning.CleanForecast;
import dev.poleward.domain.programme.ProgrammesFollowed;
import dev.poleward.domain.record.PlacedRep;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** Where a dog stands, without what nobody has touched: thousands of these are compared. */
final class StandingInBrief {

  private StandingInBrief() {}

  static List<Object> of(List<PlacedRep> reps, ProgrammesFollowed followed, Instant agedTo) {
    List<Object> brief = new ArrayList<>();
    StandingHistory history = StandingHistory.of(reps, followed, null);
    DogStanding standing = history.reading().standing(agedTo);
    brief.add(standing.programme().id() + " " + standing.programme().version());
    brief.add(standing.retention());
    standing.stages().forEach(stage -> brief.add(stage.stage().id() + " " + stage.state()));
    standing.pools().stream()
        .filter(pool -> pool.state() != DrillState.UNTOUCHED || pool.practised() != null)
        .forEach(brief::add);
    CleanForecast forecast = CleanForecast.of(reps, agedTo);
    NextRungs.of(standing, forecast)
        .forEach(
            next -> brief.add(next.why() + " " + next.standing().pool().rung() + next.expected()));
    return brief;
  }
}
