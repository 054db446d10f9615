package dev.poleward.domain.report;

import dev.poleward.domain.care.CarePermit;
import dev.poleward.domain.care.CareQuestion;
import dev.poleward.domain.care.CareReview;
import dev.poleward.domain.care.DogLimits;
import dev.poleward.domain.care.Load;
import dev.poleward.domain.care.RestOfDog;
import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.DrillState;
import dev.poleward.domain.judgement.StageStanding;
import dev.poleward.domain.judgement.StandingHistory;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.programme.ProgrammesFollowed;
import dev.poleward.domain.programme.Stage;
import dev.poleward.domain.record.DogRecord;
import dev.poleward.domain.record.PlacedRep;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A dog at a glance, on one day.
 *
 * @param dog its id after merges
 * @param programme that it follows
 * @param stage that has its turn; empty when it is through
 * @param behind how many rungs of that stage it has behind it
 * @param slipping how many rungs slip
 * @param due how many are due
 * @param isResting whether it rests
 * @param angleWork whether entries may be turned: not while signs stand that something may hurt
 * @param lastTrained the day of its last rep; null without one
 * @param daysSince days since then; null without one
 * @param reps all it ever ran, of any kind
 * @param week what the last seven days asked of it
 * @param limits that hold for it
 */
public record DogGlance(
    String dog,
    DogRecord known,
    Programme programme,
    Optional<Stage> stage,
    int behind,
    int slipping,
    int due,
    boolean isResting,
    boolean angleWork,
    @Nullable LocalDate lastTrained,
    @Nullable Integer daysSince,
    int reps,
    Load week,
    DogLimits limits) {

  /**
   * Looks at a dog that is known.
   *
   * @param dog its id after merges
   */
  static DogGlance of(String dog, DogRecord known, ReportSources sources) {
    CareQuestion care = sources.care();
    List<PlacedRep> reps = sources.repsOf().apply(dog);
    DogStanding standing =
        StandingHistory.of(
                reps, ProgrammesFollowed.of(dog, sources.registry()), sources.span().last())
            .reading()
            .standing(sources.span().end(), sources.retention().of(dog, sources.span().end()));
    Optional<StageStanding> current = standing.current();
    CarePermit permit = CareReview.of(known, sources.trained(dog, reps, standing.slips()), care);
    LocalDate last = reps.isEmpty() ? null : sources.span().day(reps.getLast().moment().time());
    return new DogGlance(
        dog,
        known,
        standing.programme(),
        current.map(StageStanding::stage),
        current.map(StageStanding::behind).orElse(0),
        count(standing, DrillState.SLIPPING),
        count(standing, DrillState.DUE),
        RestOfDog.isOn(known, care.day(), care.zone()),
        permit.angleWork(),
        last,
        last == null ? null : (int) ChronoUnit.DAYS.between(last, care.day()),
        reps.size(),
        permit.load().week(),
        DogLimits.of(known, sources.limits(), care.day()));
  }

  private static int count(DogStanding standing, DrillState state) {
    return (int) standing.pools().stream().filter(pool -> pool.state() == state).count();
  }

  /** Whether it trains here without being of the club. */
  public boolean isGuest() {
    return known.isGuest();
  }

  /** Whether it was not trained for so many days, or never. */
  public boolean isUntrained(int days) {
    return daysSince == null || daysSince >= days;
  }

  /** Whether the last seven days asked more of it than the club allows. */
  public boolean isOverLoad() {
    return week.gaps() > limits.gapsPerWeek();
  }
}
