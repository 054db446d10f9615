package dev.poleward.domain.history;

import static dev.poleward.domain.history.HistoryCheck.forHistories;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.Help;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.mastery.AnglePoint;
import dev.poleward.domain.mastery.MasteryCurve;
import dev.poleward.domain.mastery.MasteryQuestion;
import dev.poleward.domain.mastery.SideMastery;
import dev.poleward.domain.mastery.Threshold;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.MemoryFacts;
import dev.poleward.domain.record.PlacedRep;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.View;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;
import org.junit.jupiter.api.Test;

/** What holds of the curves of any record. That order does not show is checked with all else. */
class CurveLawsTest {

  private static final int HISTORIES = 1_000;

  @Test
  void everyRepThatCountsIsInOneCellOfEachSideThatItBelongsTo() {
    forHistories(
        HISTORIES,
        (facts, random) ->
            forDogs(
                facts,
                (dog, placed) -> {
                  MasteryCurve curve = curve(placed, CurveQuestions.OF_ANY_REPS);
                  for (SideMastery side : curve.sides()) {
                    List<PlacedRep> counted =
                        placed.stream().filter(rep -> counts(rep, side.side())).toList();
                    assertThat(side.reps()).isEqualTo(counted.size());
                    assertThat(side.points().stream().mapToInt(AnglePoint::reps).sum())
                        .isEqualTo(side.reps());
                    assertThat(side.points().stream().mapToInt(AnglePoint::made).sum())
                        .isEqualTo(side.made());
                    assertThat(side.effectiveReps()).isEqualTo(side.reps());
                  }
                }));
  }

  private static boolean counts(PlacedRep rep, EntrySide side) {
    Help help = rep.details().help();
    return rep.angle() != null
        && rep.outcome() != Outcome.VOID
        && (help == null || help == Help.NONE)
        && (rep.angle().side() == side || rep.angle().side() == EntrySide.BOTH);
  }

  @Test
  void whatIsEstimatedIsANumberBetweenItsLimits() {
    forHistories(
        HISTORIES,
        (facts, random) ->
            forDogs(
                facts,
                (dog, placed) -> {
                  for (MasteryQuestion question : CurveQuestions.ALL) {
                    curve(placed, question).sides().forEach(CurveLawsTest::assertSound);
                  }
                }));
  }

  private static void assertSound(SideMastery side) {
    double before = 1;
    for (AnglePoint point : side.points()) {
      assertThat(point.isotonic()).isBetween(0.0, before);
      before = point.isotonic();
      assertThat(point.weight()).isBetween(0.0, (double) point.reps());
      assertThat(point.observed().lower()).isBetween(0.0, point.observed().value());
      assertThat(point.observed().upper()).isBetween(point.observed().value(), 1.0);
      if (point.fitted() != null) {
        assertThat(point.fitted().value())
            .isBetween(point.fitted().lower(), point.fitted().upper());
      }
    }
    if (side.fit() != null) {
      assertThat(side.fit().intercept()).isFinite();
      assertThat(side.fit().slope()).isFinite();
      assertThat(side.fit().varianceOfIntercept()).isFinite().isPositive();
      assertThat(side.fit().covariance()).isFinite();
      assertThat(side.fit().varianceOfSlope()).isFinite().isPositive();
      assertThat(side.fit().penalisedLogLikelihood()).isFinite();
    }
    switch (side.threshold()) {
      case Threshold.Estimated it -> {
        assertThat(it.degrees())
            .isBetween(
                side.points().getFirst().angle().size(), side.points().getLast().angle().size());
        assertThat(it.lower() == null || it.lower() <= it.degrees()).isTrue();
        assertThat(it.upper() == null || it.upper() >= it.degrees()).isTrue();
      }
      case Threshold.BeyondTried it ->
          assertThat(it.lower() == null || it.lower() <= it.greatestTried()).isTrue();
      case Threshold.BelowTried it ->
          assertThat(it.upper() == null || it.upper() >= it.leastTried()).isTrue();
      case Threshold.NoFall() -> assertThat(side.fit()).isNotNull();
      case Threshold.NotEnoughReps() -> assertThat(side.fit()).isNull();
    }
  }

  /** Or else the laws would be checked on next to nothing. */
  @Test
  void generatedHistoriesHaveCurvesOfEveryKind() {
    Set<Class<?>> seen = new HashSet<>();
    forHistories(
        HISTORIES,
        (facts, random) ->
            forDogs(
                facts,
                (dog, placed) -> {
                  for (MasteryQuestion question : CurveQuestions.ALL) {
                    curve(placed, question)
                        .sides()
                        .forEach(side -> seen.add(side.threshold().getClass()));
                  }
                }));

    assertThat(seen).containsExactlyInAnyOrder(Threshold.class.getPermittedSubclasses());
  }

  private static void forDogs(List<Fact<?>> facts, BiConsumer<String, List<PlacedRep>> check) {
    Placement placement = new Placement(MemoryFacts.of(facts), View.EVERYTHING);
    GeneratedHistory.DOGS.forEach(dog -> check.accept(dog, placement.ofDog(dog)));
  }

  private static MasteryCurve curve(List<PlacedRep> placed, MasteryQuestion question) {
    return MasteryCurve.of(placed, question, CurveQuestions.AGED_TO);
  }
}
