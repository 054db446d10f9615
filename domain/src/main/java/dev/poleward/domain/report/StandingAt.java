package dev.poleward.domain.report;

import dev.poleward.domain.judgement.ClubRetention;
import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.StandingHistory;
import dev.poleward.domain.programme.ProgrammeInForce;
import dev.poleward.domain.programme.ProgrammesFollowed;
import dev.poleward.domain.record.PlacedRep;
import java.time.Instant;
import java.util.List;

/**
 * Where a dog stood at some time.
 *
 * @param followed what was followed then
 * @param standing in that, or in what was followed before where its document has faults
 */
public record StandingAt(ProgrammeInForce followed, DogStanding standing) {

  /**
   * Where a dog stood just before an instant.
   *
   * @param reps those before it, ascending by (time, id)
   * @param club how its club forgot then
   */
  static StandingAt before(
      Instant until, List<PlacedRep> reps, ProgrammesFollowed followed, ClubRetention club) {
    return of(StandingHistory.of(reps, followed, until.minusNanos(1)), until, club);
  }

  static StandingAt of(StandingHistory history, Instant agedTo, ClubRetention club) {
    return new StandingAt(history.inForce(), history.reading().standing(agedTo, club));
  }
}
