package dev.poleward.domain.report;

import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.judgement.FaultReview;
import dev.poleward.domain.judgement.FaultsOfLine;
import dev.poleward.domain.judgement.StageRewards;
import dev.poleward.domain.judgement.StandingHistory;
import dev.poleward.domain.programme.DrillMatch;
import dev.poleward.domain.programme.ProgrammeInForce;
import dev.poleward.domain.record.DogRecord;
import dev.poleward.domain.record.PlacedRep;
import dev.poleward.domain.report.NotKnown.Matter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Collects what the page of a dog cannot say. */
final class GapsOfDog {

  private final List<NotKnown> found = new ArrayList<>();

  private GapsOfDog() {}

  /**
   * What cannot be said.
   *
   * @param within reps of the span
   */
  static List<NotKnown> of(
      DogRecord dog,
      StandingHistory history,
      List<PlacedRep> within,
      RepTally tally,
      FaultReview faults,
      Optional<StageRewards> rewards,
      List<AttendedSession> attended) {
    GapsOfDog gaps = new GapsOfDog();
    gaps.ofReps(history, within, tally);
    gaps.add(Matter.POLE_OF_FAULTS, withoutPole(faults));
    gaps.add(Matter.AGE, dog.traits().born() == null ? 1 : 0);
    switch (history.inForce()) {
      case ProgrammeInForce.Unassigned _ -> gaps.add(Matter.PROGRAMME, 1);
      case ProgrammeInForce.Assigned _ -> {}
      case ProgrammeInForce.Unreadable _ -> gaps.add(Matter.READABLE_PROGRAMME, 1);
    }
    gaps.add(Matter.REWARDS, rewards.isEmpty() ? 1 : 0);
    gaps.add(
        Matter.ATTENDANCE,
        count(attended, each -> each.attendance().presence() == Presence.UNKNOWN));
    gaps.add(
        Matter.CONTRADICTED_ATTENDANCE,
        count(attended, each -> each.attendance().isContradicted()));
    return gaps.found;
  }

  private void ofReps(StandingHistory history, List<PlacedRep> within, RepTally tally) {
    if (within.isEmpty()) {
      add(Matter.REPS, 1);
    } else if (tally.reps() < DogPage.REPS_FEW) {
      found.add(new NotKnown(Matter.FEW_REPS, tally.reps()));
    }
    List<PlacedRep> counted = within.stream().filter(rep -> rep.outcome() != Outcome.VOID).toList();
    add(Matter.SETUP_OF_REPS, count(counted, rep -> rep.setup() == null));
    add(Matter.ANGLE_OF_REPS, count(counted, rep -> rep.angle() == null));
    add(
        Matter.DRILL_OF_REPS,
        count(
            counted,
            rep ->
                rep.setup() != null
                    && rep.angle() != null
                    && history.reading().match(rep) instanceof DrillMatch.NoDrill));
  }

  private static int withoutPole(FaultReview faults) {
    return faults.lines().stream().mapToInt(FaultsOfLine::withoutPole).sum();
  }

  private static <T> int count(List<T> all, Predicate<T> which) {
    return (int) all.stream().filter(which).count();
  }

  private void add(Matter matter, int count) {
    if (count > 0) {
      found.add(new NotKnown(matter, count));
    }
  }
}
