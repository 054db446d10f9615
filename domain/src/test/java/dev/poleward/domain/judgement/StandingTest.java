package dev.poleward.domain.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.programme.DefaultProgramme;
import dev.poleward.domain.programme.DocumentReading;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.programme.ProgrammeDocument;
import dev.poleward.domain.programme.StageOrder;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Where a dog stands in its programme, and what is next. */
class StandingTest {

  private static final Programme PROGRAMME = DefaultProgramme.programme();
  private static final ExpectedClean BY_ANGLE = drill -> 0.9 - drill.rung().size() / 400;

  private static StageStanding stage(DogStanding dog, String id) {
    return dog.stages().stream().filter(s -> s.stage().id().equals(id)).findFirst().orElseThrow();
  }

  private static PoolStanding pool(DogStanding dog, String stage, int pool) {
    return stage(dog, stage).pools().get(pool);
  }

  @Test
  void aDogWithoutRepsHasItAllBeforeIt() {
    DogStanding dog = new Course(PROGRAMME).standing();

    assertThat(dog.finished()).isFalse();
    assertThat(dog.current()).map(s -> s.stage().id()).hasValue("three-bare");
    assertThat(stage(dog, "four-bare").waitsFor()).containsExactly("three-bare");
    assertThat(dog.pools()).allMatch(each -> each.state() == DrillState.UNTOUCHED);
    assertThat(NextRungs.of(dog, BY_ANGLE))
        .singleElement()
        .satisfies(next -> assertThat(next.standing().pool().rung().size()).isZero())
        .satisfies(next -> assertThat(next.why()).isEqualTo(NextRung.Reason.FRONTIER));
  }

  @Test
  void aRungIsBehindTheDogOnceItsTestAndAllHandlingsSaySo() {
    Course course = new Course(PROGRAMME).run("three-bare", 0, 20, true);
    DogStanding dog = course.standing();

    PoolStanding straight = pool(dog, "three-bare", 0);
    assertThat(straight.state()).isEqualTo(DrillState.SOLID);
    assertThat(straight.movedOn()).isNotNull();
    assertThat(straight.drills()).allMatch(drill -> drill.state() == DrillState.SOLID);
    assertThat(NextRungs.of(dog, BY_ANGLE))
        .extracting(next -> next.standing().pool().rung().angle().degrees())
        .containsExactly(30.0, -30.0);
  }

  @Test
  void untilThenWhatWasRunIsLearnedAndTheRestUntouched() {
    Course course = new Course(PROGRAMME);
    course.run(course.drill("three-bare", 0, 0).drill(), true);
    PoolStanding straight = pool(course.standing(), "three-bare", 0);

    assertThat(straight.drills())
        .extracting(DrillStanding::state)
        .containsExactly(DrillState.LEARNING, DrillState.UNTOUCHED, DrillState.UNTOUCHED);
    assertThat(straight.judgement().missing()).hasSize(2);
  }

  @Test
  void aStageOpensOnceThoseBeforeItAreDone() {
    DogStanding dog = new Course(PROGRAMME).learn("three-bare").standing();

    assertThat(stage(dog, "three-bare").state()).isEqualTo(StageState.DONE);
    assertThat(stage(dog, "four-bare").state()).isEqualTo(StageState.OPEN);
    assertThat(stage(dog, "tunnel-straight").state()).isEqualTo(StageState.LOCKED);
    assertThat(dog.current()).map(s -> s.stage().id()).hasValue("four-bare");
  }

  @Test
  void stagesBeforeTheOneWhereADogStartsArePassedOver() {
    DogStanding dog =
        StandingReading.begun(PROGRAMME, "tunnel-straight")
            .standing(Course.BEGUN, ClubRetention.UNKNOWN);

    assertThat(stage(dog, "four-jump").state()).isEqualTo(StageState.DONE);
    assertThat(pool(dog, "four-jump", 0).passedOver()).isTrue();
    assertThat(pool(dog, "four-jump", 0).state()).isEqualTo(DrillState.UNTOUCHED);
    assertThat(dog.current()).map(s -> s.stage().id()).hasValue("tunnel-straight");
  }

  @Test
  void theEndAsksForNeitherProbesNorPressure() {
    Course course = new Course(PROGRAMME);
    List.of("three-bare", "four-bare", "four-jump", "tunnel-straight", "tunnel-turned")
        .forEach(course::learn);
    DogStanding dog = course.standing();

    assertThat(dog.finished()).isTrue();
    assertThat(dog.current()).isEmpty();
    assertThat(stage(dog, "tunnel-pressure").state()).isEqualTo(StageState.OPEN);
    assertThat(stage(dog, "six-probe").state()).isEqualTo(StageState.OPEN);
    assertThat(NextRungs.of(dog, BY_ANGLE))
        .extracting(NextRung::why)
        .contains(NextRung.Reason.PROBE);
  }

  @Test
  void aProbeMayBeTriedEarlyAndFailingCostsNothing() {
    Course course = new Course(PROGRAMME).run("six-probe", 0, 5, false);
    PoolStanding failed = pool(course.standing(), "six-probe", 0);

    assertThat(failed.state()).isEqualTo(DrillState.LEARNING);
    assertThat(failed.judgement().verdict()).isInstanceOf(Verdict.Hold.class);

    PoolStanding passed =
        pool(
            course.run("six-probe", 0, 3, true).run("six-probe", 0, 9, false).standing(),
            "six-probe",
            0);
    assertThat(passed.state()).isEqualTo(DrillState.SOLID);
    assertThat(passed.slippedSince()).isNull();
  }

  @Test
  void threeMissesInARowLeadBackToWhatIsEasierOnThatSide() {
    Course course =
        new Course(PROGRAMME)
            .run("three-bare", 0, 20, true)
            .run("three-bare", 1, 20, true)
            .run("three-bare", 2, 20, true)
            .run("three-bare", 4, 3, false);
    DogStanding dog = course.standing();

    assertThat(pool(dog, "three-bare", 4).judgement().verdict())
        .isInstanceOf(Verdict.StepBack.class);
    assertThat(NextRungs.of(dog, BY_ANGLE))
        .extracting(NextRung::why, next -> next.standing().pool().rung().angle().degrees())
        .containsExactly(
            tuple(NextRung.Reason.FRONTIER, 60.0),
            tuple(NextRung.Reason.EASIER, -30.0),
            tuple(NextRung.Reason.FRONTIER, -60.0));
  }

  @Test
  void whatSlipsIsNamedWithItsBeginningAndComesFirst() {
    Course course = new Course(PROGRAMME).learn("three-bare").daysPass(1);
    int before = course.reps().size();
    course.run("three-bare", 3, 6, false);
    DogStanding dog = course.standing();

    PoolStanding slipping = pool(dog, "three-bare", 3);
    assertThat(slipping.state()).isEqualTo(DrillState.SLIPPING);
    assertThat(slipping.slippedSince()).isEqualTo(course.reps().get(before).moment().time());
    assertThat(stage(dog, "three-bare").state()).isEqualTo(StageState.DONE);
    assertThat(NextRungs.of(dog, BY_ANGLE).getFirst())
        .isEqualTo(
            new NextRung(
                slipping, NextRung.Reason.SLIPPING, BY_ANGLE.share(slipping.pool().drills())));
  }

  @Test
  void aRungThatTwoStagesAskForSlipsOnce() {
    Course course = new Course(PROGRAMME);
    List.of("three-bare", "four-bare").forEach(course::learn);
    course.run("four-jump", 0, 20, true).daysPass(1).run("four-bare", 0, 8, false);
    DogStanding dog = course.standing();

    assertThat(dog.pools())
        .filteredOn(pool -> pool.state() == DrillState.SLIPPING)
        .extracting(pool -> pool.stage().id(), pool -> pool.pool().step())
        .containsExactly(tuple("four-bare", null), tuple("four-jump", BackChainStep.POLES_ONLY));
    assertThat(dog.slips()).hasSize(1);

    course.run("four-bare", 1, 8, false);
    assertThat(course.standing().slips()).hasSize(2);
  }

  @Test
  void whatWasLeftAloneTooLongIsDueAndItsHardestAreRefreshed() {
    Course course = new Course(PROGRAMME).learn("three-bare").daysPass(60);
    DogStanding dog = course.standing();

    assertThat(stage(dog, "three-bare").pools())
        .allMatch(each -> each.state() == DrillState.DUE)
        .allMatch(each -> each.dueOn() != null && each.dueOn().isBefore(course.now()));
    assertThat(NextRungs.of(dog, BY_ANGLE))
        .filteredOn(next -> next.why() == NextRung.Reason.DUE)
        .extracting(next -> next.standing().pool().rung().angle().degrees())
        .containsExactly(90.0, -90.0);
  }

  @Test
  void whoRunsTheHarderKeepsTheEasierOnThatSideFresh() {
    Course course = new Course(PROGRAMME).learn("three-bare").daysPass(60);
    course.run("three-bare", 5, 1, true);
    DogStanding dog = course.standing();

    assertThat(stage(dog, "three-bare").pools())
        .filteredOn(each -> each.pool().rung().angle().degrees() >= 0)
        .allMatch(PoolStanding::isSolid);
    assertThat(stage(dog, "three-bare").pools())
        .filteredOn(each -> each.pool().rung().angle().degrees() < 0)
        .allMatch(each -> each.state() == DrillState.DUE);
  }

  @Test
  void whatWasRunBeforeAVersionThatJudgesOtherwiseIsNoEvidenceButIsNotDenied() {
    Course course = new Course(PROGRAMME).run("three-bare", 0, 4, true);

    DogStanding after =
        course
            .reading()
            .under(withRule(2, 0.95), null)
            .standing(course.now(), ClubRetention.UNKNOWN);
    PoolStanding straight = pool(after, "three-bare", 0);

    assertThat(straight.state()).isEqualTo(DrillState.LEARNING);
    assertThat(straight.judgement().verdict().evidence().clean()).isZero();
    assertThat(straight.drills().stream().mapToInt(DrillStanding::reps).sum()).isEqualTo(4);
    assertThat(straight.drills())
        .filteredOn(drill -> drill.reps() > 0)
        .allMatch(drill -> drill.state() == DrillState.LEARNING && drill.lastRun() != null);
    assertThat(pool(after, "three-bare", 1).state()).isEqualTo(DrillState.UNTOUCHED);
  }

  @Test
  void aNewVersionThatAsksTheSameGoesOnWhereItWas() {
    Course course = new Course(PROGRAMME).run("three-bare", 0, 4, true);
    StandingReading before = course.reading();

    StandingReading after = before.under(withRule(2, 0.9), null);

    assertThat(after.standing(course.now(), ClubRetention.UNKNOWN).pools())
        .isEqualTo(before.standing(course.now(), ClubRetention.UNKNOWN).pools());
  }

  @Test
  void aNewVersionWithAnotherRuleKeepsWhatWasMovedOnFromAndTestsTheRestAnew() {
    Course course =
        new Course(PROGRAMME).run("three-bare", 0, 20, true).run("three-bare", 1, 4, true);

    DogStanding after =
        course
            .reading()
            .under(withRule(2, 0.95), null)
            .standing(course.now(), ClubRetention.UNKNOWN);

    assertThat(pool(after, "three-bare", 0).state()).isEqualTo(DrillState.SOLID);
    assertThat(pool(after, "three-bare", 0).movedOn()).isNotNull();
    assertThat(pool(after, "three-bare", 1).state()).isEqualTo(DrillState.LEARNING);
    assertThat(pool(after, "three-bare", 1).judgement().standing())
        .isEqualTo(RungStanding.UNTOUCHED);
  }

  /** The default programme as a version of its own, mastered at that share. */
  private static Programme withRule(int version, double mastered) {
    Map<String, Object> document = new HashMap<>(DefaultProgramme.document());
    Map<String, Object> rule = new HashMap<>();
    ((Map<?, ?>) Objects.requireNonNull(document.get("rule")))
        .forEach((name, value) -> rule.put((String) name, value));
    rule.put("mastered", mastered);
    document.put("rule", rule);
    document.put("version", (long) version);
    DocumentReading reading = ProgrammeDocument.read(document);
    return ((DocumentReading.Sound) reading).programme();
  }

  @Test
  void insideAStageTheOrderIsTheMeasuredOneUnlessTheStageSaysOtherwise() {
    DogStanding dog = new Course(PROGRAMME).run("three-bare", 0, 20, true).standing();
    assertThat(stage(dog, "three-bare").stage().terms().order()).isEqualTo(StageOrder.MEASURED);

    assertThat(NextRungs.of(dog, drill -> drill.rung().size() == 90 ? 0.9 : 0.5))
        .extracting(next -> next.standing().pool().rung().angle().degrees())
        .containsExactly(90.0, -90.0);
  }
}
