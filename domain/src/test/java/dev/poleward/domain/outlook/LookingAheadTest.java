package dev.poleward.domain.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.poleward.domain.event.AimEvent.GoalSet;
import dev.poleward.domain.event.DogEvent.DogRested;
import dev.poleward.domain.event.ProgrammeEvent.ProgrammeAssigned;
import dev.poleward.domain.event.ProgrammeEvent.ProgrammePublished;
import dev.poleward.domain.judgement.ExpectedRetention;
import dev.poleward.domain.judgement.StandingHistory;
import dev.poleward.domain.learner.Temper;
import dev.poleward.domain.outlook.Outlook.CannotTell;
import dev.poleward.domain.outlook.Outlook.Reason;
import dev.poleward.domain.outlook.Outlook.Told;
import dev.poleward.domain.programme.ProgrammeInForce;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Moment;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class LookingAheadTest {

  private static final OutlookTerms TERMS =
      new OutlookTerms(40, 40, Duration.ofDays(365), 10_000, 20, 3);

  private static ProgrammeInForce inForce(@Nullable String startStage) {
    Moment moment = new Moment(Walkable.BEGIN, "e-1");
    return new ProgrammeInForce.Assigned(
        new Fact<>(
            moment, Walkable.BEGIN, new ProgrammeAssigned("juniper", "walkable", startStage), null),
        new Fact<>(moment, Walkable.BEGIN, new ProgrammePublished("walkable", 1, Map.of()), null),
        Walkable.PROGRAMME);
  }

  private static DogCase of(Schooling schooling) {
    return of(schooling, null, null);
  }

  private static DogCase of(
      Schooling schooling, @Nullable String startStage, @Nullable Fact<DogRested> rested) {
    return new DogCase(
        "juniper",
        schooling.reps(),
        new StandingHistory(Walkable.standing(schooling, startStage), inForce(startStage)),
        ExpectedRetention.USUAL,
        rested);
  }

  private static OutlookQuestion asked(DogCase dog, @Nullable Double sessionsPerWeek) {
    Instant last = dog.reps().isEmpty() ? Walkable.BEGIN : dog.reps().getLast().moment().time();
    LocalDate today = last.atZone(ZoneOffset.UTC).toLocalDate();
    return new OutlookQuestion(
        today,
        today.plusDays(1).atStartOfDay(ZoneOffset.UTC).toInstant(),
        sessionsPerWeek,
        null,
        TERMS);
  }

  private static Told told(DogCase dog, OutlookQuestion asked) {
    Outlook outlook = LookingAhead.of(dog, asked, () -> ClubOfDogs.UNKNOWN);
    assertThat(outlook).isInstanceOf(Told.class);
    return (Told) outlook;
  }

  private static int middle(RhythmAhead ahead) {
    return ahead.programme().quantiles().middle().orElse(Ahead.NEVER);
  }

  @Test
  void tellsSessionsToEachStageAndToTheEnd() {
    DogCase dog = of(Walkable.after(8, Temper.ORDINARY, 1));
    RhythmAhead own = told(dog, asked(dog, null)).likeliest();

    assertThat(own.isOwn()).isTrue();
    assertThat(own.rhythm().repsPerSession()).isEqualTo(10);
    assertThat(own.rhythm().sessionsPerWeek()).isBetween(1.9, 2.4);
    Quantiles end = own.programme().quantiles();
    assertThat(end.early().getAsInt()).isPositive().isLessThanOrEqualTo(end.middle().getAsInt());
    assertThat(end.middle().getAsInt()).isLessThanOrEqualTo(end.late().orElse(Ahead.NEVER));
    int before = 0;
    for (RhythmAhead.StageAhead stage : own.stages()) {
      int middle = stage.reaching().quantiles().middle().getAsInt();
      assertThat(middle).isBetween(before, end.middle().getAsInt());
      before = middle;
    }
  }

  @Test
  void moreSessionsAWeekTakeFewerWeeks() {
    DogCase dog = of(Walkable.after(8, Temper.ORDINARY, 1));
    List<RhythmAhead> rhythms = told(dog, asked(dog, null)).rhythms();

    assertThat(rhythms).extracting(each -> each.rhythm().sessionsPerWeek()).endsWith(1.0, 2.0, 3.0);
    double once = rhythms.get(1).rhythm().weeks(middle(rhythms.get(1)));
    double thrice = rhythms.get(3).rhythm().weeks(middle(rhythms.get(3)));
    assertThat(thrice).isLessThan(once);
  }

  @Test
  void theSameRecordHasTheSameOutlook() {
    DogCase dog = of(Walkable.after(8, Temper.SENSITIVE, 1));

    assertThat(told(dog, asked(dog, 1.5))).isEqualTo(told(dog, asked(dog, 1.5)));
  }

  @Test
  void whoTrainsVeryMuchIsNotLookedAheadWithSoFar() {
    OutlookTerms terms = new OutlookTerms(1, 1, Duration.ofDays(1_460), 10_000, 20, 3);

    assertThat(terms.horizon(new Rhythm(3, 16))).isEqualTo(Duration.ofSeconds(625 * 201_600L));
    assertThat(terms.horizon(new Rhythm(2, 20))).isEqualTo(Duration.ofDays(1_460));
    assertThat(terms.horizon(new Rhythm(7, 40))).isEqualTo(Duration.ofDays(250));
    assertThatThrownBy(() -> new OutlookTerms(1, 1, Duration.ofDays(1), 39, 20, 3))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void whatIsNotReachedInSoManyRepsLiesBeyond() {
    DogCase dog = of(Walkable.after(4, Temper.ORDINARY, 1));
    OutlookQuestion asked = asked(dog, 2.0);
    OutlookTerms few = new OutlookTerms(40, 40, Duration.ofDays(365), 40, 20, 3);

    RhythmAhead ahead =
        told(
                dog,
                new OutlookQuestion(
                    asked.today(), asked.agedTo(), asked.sessionsPerWeek(), 10, few))
            .rhythms()
            .getLast();

    assertThat(ahead.horizon()).isEqualTo(Duration.ofDays(14));
    assertThat(ahead.programme().unfinished()).isEqualTo(1);
    assertThat(ahead.programme().quantiles().early()).isEmpty();
  }

  @Test
  void aQuickDogIsThereSooner() {
    DogCase quick = of(Walkable.after(6, Temper.ORDINARY.quicker(2), 3));
    DogCase slow = of(Walkable.after(6, Temper.ORDINARY.quicker(0.5), 3));

    assertThat(middle(told(quick, asked(quick, 2.0)).likeliest()))
        .isLessThan(middle(told(slow, asked(slow, 2.0)).likeliest()));
  }

  @Test
  void whoHasFinishedIsThere() {
    Schooling finished = Walkable.after(80, Temper.QUICK, 2);
    assertThat(finished.notebook().isFinished()).isTrue();
    DogCase dog = of(finished);
    RhythmAhead ahead = told(dog, asked(dog, 2.0)).likeliest();

    assertThat(ahead.programme().isReached()).isTrue();
    assertThat(ahead.stages()).allMatch(stage -> stage.reaching().isReached());
  }

  @Test
  void startedFurtherOnThereIsLessAhead() {
    Schooling schooling = Walkable.after(4, Temper.ORDINARY, 1);
    DogCase further = of(schooling, "tunnel", null);

    assertThat(told(further, asked(further, 2.0)).likeliest().stages().getFirst().reaching())
        .matches(Reaching::isReached);
  }

  @Test
  void saysWhyItCannotTell() {
    DogCase few = of(Walkable.after(1, Temper.ORDINARY, 1));
    DogCase twice = of(Walkable.after(2, Temper.ORDINARY, 1));
    DogCase resting = of(Walkable.after(8, Temper.ORDINARY, 1), null, rest(null));

    assertThat(reason(few)).isEqualTo(Reason.TOO_FEW_REPS);
    assertThat(reason(twice)).isEqualTo(Reason.TOO_FEW_SESSIONS);
    assertThat(reason(resting)).isEqualTo(Reason.RESTING);
    assertThat(reason(of(Walkable.after(0, Temper.ORDINARY, 1)))).isEqualTo(Reason.TOO_FEW_REPS);
  }

  private static Fact<DogRested> rest(@Nullable LocalDate until) {
    return new Fact<>(
        new Moment(Walkable.BEGIN, "e-9"),
        Walkable.BEGIN,
        new DogRested("juniper", null, until),
        null);
  }

  private static Reason reason(DogCase dog) {
    Outlook outlook = LookingAhead.of(dog, asked(dog, null), () -> ClubOfDogs.UNKNOWN);
    assertThat(outlook).isInstanceOf(CannotTell.class);
    return ((CannotTell) outlook).reason();
  }

  @Test
  void aRestIsOverBeforeAnythingBegins() {
    Schooling schooling = Walkable.after(8, Temper.ORDINARY, 1);
    LocalDate until = LocalDate.parse("2026-06-01");
    DogCase resting = of(schooling, null, rest(until));

    Told told = told(resting, asked(resting, 2.0));

    assertThat(told.from()).isEqualTo(until);
    int rested = told.likeliest().programme().quantiles().middle().getAsInt();
    DogCase fit = of(schooling);
    assertThat(rested).isGreaterThanOrEqualTo(middle(told(fit, asked(fit, 2.0)).likeliest()));
  }

  @Test
  void aDogThatHardlyTrainsHasNoRhythmOfItsOwn() {
    Schooling schooling = Walkable.after(8, Temper.ORDINARY, 1);
    LocalDate later = LocalDate.parse("2026-12-01");
    DogCase dog = of(schooling);
    Told told =
        told(
            dog,
            new OutlookQuestion(
                later, later.plusDays(1).atStartOfDay(ZoneOffset.UTC).toInstant(), null, 6, TERMS));

    assertThat(told.own().rhythm()).isEmpty();
    assertThat(told.rhythms()).hasSize(3).noneMatch(RhythmAhead::isOwn);
    assertThat(told.rhythms()).allMatch(each -> each.rhythm().repsPerSession() == 6);
  }

  @Test
  void goalsAreAnsweredFromTheRuns() {
    DogCase dog = of(Walkable.after(8, Temper.ORDINARY, 1));
    OutlookQuestion asked = asked(dog, null);
    Told told = told(dog, asked);
    RhythmAhead ahead = told.likeliest();
    LocalDate soon = asked.today().plusDays(1);
    LocalDate middle = ahead.dayOf(middle(ahead), told.from());

    List<Goal> goals =
        Goal.of(
            List.of(
                goal(soon, null),
                goal(middle, null),
                goal(LocalDate.parse("2027-01-01"), "no-such"),
                goal(asked.today().minusDays(1), null),
                goal(LocalDate.parse("2027-01-01"), "six")),
            told,
            dog,
            asked);

    assertThat(goals)
        .extracting(Goal::state)
        .containsExactly(
            Goal.State.AHEAD,
            Goal.State.AHEAD,
            Goal.State.NO_SUCH_STAGE,
            Goal.State.MISSED,
            Goal.State.NO_SUCH_STAGE);
    assertThat(Objects.requireNonNull(goals.get(0).chance()).value()).isZero();
    assertThat(Objects.requireNonNull(goals.get(1).chance()).value()).isBetween(0.5, 0.65);
    assertThat(ahead.runsBy("no-such", middle, told.from())).isEqualTo(OptionalInt.empty());
  }

  @Test
  void whatNeedsNoLookAheadIsToldThoughTheOutlookCannotTell() {
    DogCase through =
        new DogCase(
            "juniper",
            List.of(),
            new StandingHistory(
                Walkable.standing(Walkable.after(60, Temper.ORDINARY, 1), null), inForce(null)),
            ExpectedRetention.USUAL,
            null);
    DogCase begun = of(Walkable.after(0, Temper.ORDINARY, 1));

    assertThat(stateOf(through, null)).isEqualTo(Goal.State.REACHED);
    assertThat(stateOf(through, "three")).isEqualTo(Goal.State.REACHED);
    assertThat(stateOf(through, "thre")).isEqualTo(Goal.State.NO_SUCH_STAGE);
    assertThat(stateOf(begun, null)).isEqualTo(Goal.State.CANNOT_TELL);
    assertThat(stateOf(begun, "three")).isEqualTo(Goal.State.CANNOT_TELL);
    assertThat(stateOf(begun, "six")).isEqualTo(Goal.State.NO_SUCH_STAGE);
  }

  private static Goal.State stateOf(DogCase dog, @Nullable String stage) {
    OutlookQuestion asked = asked(dog, null);
    Outlook outlook = LookingAhead.of(dog, asked, () -> ClubOfDogs.UNKNOWN);
    assertThat(outlook).isInstanceOf(CannotTell.class);
    return Goal.of(List.of(goal(LocalDate.parse("2027-01-01"), stage)), outlook, dog, asked)
        .getFirst()
        .state();
  }

  private static Fact<GoalSet> goal(LocalDate by, @Nullable String stage) {
    return new Fact<>(
        new Moment(Walkable.BEGIN, "g"), Walkable.BEGIN, new GoalSet("juniper", by, stage), null);
  }
}
