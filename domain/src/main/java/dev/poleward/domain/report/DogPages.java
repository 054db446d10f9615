package dev.poleward.domain.report;

import dev.poleward.domain.care.CarePermit;
import dev.poleward.domain.care.CareQuestion;
import dev.poleward.domain.care.CareReview;
import dev.poleward.domain.care.LoadReview;
import dev.poleward.domain.event.AimEvent.TrialRun;
import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.FaultReview;
import dev.poleward.domain.judgement.StageRewards;
import dev.poleward.domain.judgement.StageStanding;
import dev.poleward.domain.judgement.StandingHistory;
import dev.poleward.domain.mastery.SideComparison;
import dev.poleward.domain.outlook.Homework;
import dev.poleward.domain.outlook.Season;
import dev.poleward.domain.planning.CleanForecast;
import dev.poleward.domain.programme.ProgrammesFollowed;
import dev.poleward.domain.record.DaySpan;
import dev.poleward.domain.record.DogRecord;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Membership;
import dev.poleward.domain.record.PlacedRep;
import dev.poleward.domain.record.Registry;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Makes the pages of dogs. For one thread. */
final class DogPages {

  private final ReportSources sources;
  private final List<ClassSession> sessions;
  private final DaySpan span;
  private final CareQuestion care;

  DogPages(ReportSources sources, List<ClassSession> sessions) {
    this.sources = sources;
    this.sessions = sessions;
    this.span = sources.span();
    this.care = sources.care();
  }

  /**
   * The page of a dog that is known.
   *
   * @param dog its id after merges
   */
  DogPage of(String dog, DogRecord known, List<Membership> memberships) {
    Registry registry = sources.registry();
    List<PlacedRep> reps = sources.repsOf().apply(dog);
    List<PlacedRep> before =
        reps.stream().filter(rep -> rep.moment().time().isBefore(span.begin())).toList();
    List<PlacedRep> within = reps.stream().filter(rep -> span.has(rep.moment().time())).toList();
    ProgrammesFollowed followed = ProgrammesFollowed.of(dog, registry);
    StandingHistory history = StandingHistory.of(reps, followed, span.last());
    StandingAt end = StandingAt.of(history, span.end(), sources.retention().of(dog, span.end()));
    List<Fact<TrialRun>> trials =
        registry.aims(dog, TrialRun.class).stream().filter(t -> span.has(t.time())).toList();
    Season season = Season.of(reps, trials, end.standing(), span);
    CarePermit permit =
        CareReview.of(known, sources.trained(dog, reps, end.standing().slips()), care)
            .unplanned(end.standing().mayCrowd());
    List<Homework> homework = Homework.of(dog, registry, reps, span.to(), span.zone());
    Optional<StageRewards> rewards = rewards(history, end.standing(), reps);
    FaultReview faults = FaultReview.of(within, span.begin(), span.end());
    RepTally tally = RepTally.of(within);
    List<AttendedSession> attended = attended(dog);
    return new DogPage(
        dog,
        known,
        memberships.stream().filter(m -> m.overlaps(span.begin(), span.end())).toList(),
        attended,
        tally,
        season,
        StandingAt.before(
            span.begin(), before, followed, sources.retention().of(dog, span.begin())),
        end,
        SideComparison.of(season.after()),
        WorkedRung.of(history.reading(), end.standing(), reps, span),
        faults,
        LoadReview.of(known, reps, sources.limits(), span),
        permit,
        homework.stream().filter(each -> !each.set().event().due().isBefore(span.from())).toList(),
        AtHome.of(
            known,
            homework,
            end.standing(),
            permit,
            care,
            () -> CleanForecast.of(reps, span.end())),
        rewards,
        trials,
        GapsOfDog.of(known, history, within, tally, faults, rewards, attended));
  }

  private List<AttendedSession> attended(String dog) {
    return sessions.stream()
        .flatMap(
            session ->
                session
                    .of(dog)
                    .map(
                        attendance ->
                            new AttendedSession(
                                session.session(), session.opened(), session.day(), attendance))
                    .stream())
        .toList();
  }

  /**
   * Of the stage that has its turn; else of that with the latest rep of which rewards were told.
   */
  private static Optional<StageRewards> rewards(
      StandingHistory history, DogStanding standing, List<PlacedRep> reps) {
    List<StageRewards> told =
        StageRewards.of(history.reading(), reps).stream()
            .filter(each -> !each.rewarded().isEmpty())
            .toList();
    Optional<String> current = standing.current().map(StageStanding::stage).map(s -> s.id());
    return told.stream()
        .filter(each -> current.equals(Optional.of(each.stage().id())))
        .findFirst()
        .or(() -> told.stream().max(Comparator.comparing(each -> each.reps().getLast())));
  }
}
