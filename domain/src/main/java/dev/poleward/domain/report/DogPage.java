package dev.poleward.domain.report;

import dev.poleward.domain.care.CarePermit;
import dev.poleward.domain.care.LoadReview;
import dev.poleward.domain.event.AimEvent.TrialRun;
import dev.poleward.domain.judgement.DrillState;
import dev.poleward.domain.judgement.FaultReview;
import dev.poleward.domain.judgement.PoolStanding;
import dev.poleward.domain.judgement.StageRewards;
import dev.poleward.domain.mastery.SideComparison;
import dev.poleward.domain.outlook.Homework;
import dev.poleward.domain.outlook.Season;
import dev.poleward.domain.record.DogRecord;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Membership;
import java.util.List;
import java.util.Optional;

/**
 * What a report says of one dog.
 *
 * @param dog its id after merges
 * @param known what is registered of it
 * @param memberships in the class, as far as they lie in the span
 * @param attended sessions of the class in which it was a member or was there, ascending
 * @param reps within the span, wherever they were run
 * @param season how much there was, what was moved on from, the curves before and after
 * @param begin where it stood before the first day
 * @param end where it stood after the last day
 * @param sides which entry side lags after the last day
 * @param worked rungs that it worked on within the span
 * @param faults within the span
 * @param load within the span
 * @param care what it may be asked for at the end of the last day
 * @param homework that lay in the span, what was set last first
 * @param atHome what to practise after the last day
 * @param rewards of the stage that it works on; empty where nothing was told of rewards there
 * @param trials within the span, ascending by (time, id)
 * @param notKnown what the page cannot say
 */
public record DogPage(
    String dog,
    DogRecord known,
    List<Membership> memberships,
    List<AttendedSession> attended,
    RepTally reps,
    Season season,
    StandingAt begin,
    StandingAt end,
    SideComparison sides,
    List<WorkedRung> worked,
    FaultReview faults,
    LoadReview load,
    CarePermit care,
    List<Homework> homework,
    AtHome atHome,
    Optional<StageRewards> rewards,
    List<Fact<TrialRun>> trials,
    List<NotKnown> notKnown) {

  /** Fewer reps without help than that are few: shares of them say little [C]. */
  public static final int REPS_FEW = 10;

  /** Keeps the lists from changing. */
  public DogPage {
    memberships = List.copyOf(memberships);
    attended = List.copyOf(attended);
    worked = List.copyOf(worked);
    homework = List.copyOf(homework);
    trials = List.copyOf(trials);
    notKnown = List.copyOf(notKnown);
  }

  /** Whether it trains here without being of the club. */
  public boolean isGuest() {
    return Boolean.TRUE.equals(known.traits().guest());
  }

  /** What slips after the last day, in the programme's order. */
  public List<PoolStanding> slipping() {
    return inState(DrillState.SLIPPING);
  }

  /** What is due after the last day, in the programme's order. */
  public List<PoolStanding> due() {
    return inState(DrillState.DUE);
  }

  private List<PoolStanding> inState(DrillState state) {
    return end.standing().pools().stream().filter(pool -> pool.state() == state).toList();
  }

  /** What it is stuck on, in the programme's order. */
  public List<WorkedRung> stuck() {
    return worked.stream().filter(WorkedRung::isStuck).toList();
  }
}
