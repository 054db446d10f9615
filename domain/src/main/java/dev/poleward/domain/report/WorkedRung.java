package dev.poleward.domain.report;

import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.MovingOnTest;
import dev.poleward.domain.judgement.PoolStanding;
import dev.poleward.domain.judgement.RungJudgement;
import dev.poleward.domain.judgement.StandingReading;
import dev.poleward.domain.programme.DrillMatch;
import dev.poleward.domain.programme.DrillOfStage;
import dev.poleward.domain.programme.Rung;
import dev.poleward.domain.programme.StageKind;
import dev.poleward.domain.record.DaySpan;
import dev.poleward.domain.record.PlacedRep;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * A rung that a dog worked on within a span, and that was not behind it before. Probes are left
 * out.
 *
 * @param standing as it was at the end
 * @param since the day of its first rep
 * @param reps of it up to the end that count as evidence
 * @param days on which they were run
 * @param enough clean reps that would have moved on, had they been all there were
 */
public record WorkedRung(PoolStanding standing, LocalDate since, int reps, int days, int enough) {

  /** A dog that had so many times the reps that would have been enough is stuck [C]. */
  public static final int TIMES_ENOUGH = 2;

  /** On fewer days nobody is stuck [C]. */
  public static final int DAYS_MIN = 3;

  private record Place(String stage, Rung rung, @Nullable BackChainStep step) {}

  /** Reps of one rung. For one thread. */
  private static final class Work {
    private final TreeSet<LocalDate> days = new TreeSet<>();
    private int reps;
    private boolean within;
  }

  /**
   * Whether the dog is stuck: it was not moved on from, and had at least {@value #TIMES_ENOUGH}
   * times the reps that would have done, on {@value #DAYS_MIN} days or more.
   */
  public boolean isStuck() {
    return !standing.isBehind() && days >= DAYS_MIN && reps >= TIMES_ENOUGH * enough;
  }

  /**
   * What a dog worked on, in the programme's order.
   *
   * @param reading of all its reps
   * @param end where they led to
   * @param reps up to the end of the span, ascending by (time, id)
   */
  static List<WorkedRung> of(
      StandingReading reading, DogStanding end, List<PlacedRep> reps, DaySpan span) {
    Map<Place, Work> work = new HashMap<>();
    for (PlacedRep rep : reps) {
      Instant time = rep.moment().time();
      if (rep.outcome() != Outcome.VOID
          && reading.match(rep) instanceof DrillMatch.Counts(List<DrillOfStage> drills)) {
        for (DrillOfStage drill : drills) {
          Work of = work.computeIfAbsent(place(drill), _ -> new Work());
          of.reps++;
          of.days.add(span.day(time));
          of.within |= span.has(time);
        }
      }
    }
    List<WorkedRung> worked = new ArrayList<>();
    for (PoolStanding pool : end.pools()) {
      Work of = work.get(new Place(pool.stage().id(), pool.pool().rung(), pool.pool().step()));
      if (of != null && of.within && wasAhead(pool, span)) {
        worked.add(new WorkedRung(pool, of.days.first(), of.reps, of.days.size(), enough(pool)));
      }
    }
    return worked;
  }

  private static Place place(DrillOfStage drill) {
    return new Place(drill.stage(), drill.drill().rung(), drill.drill().runUp().step());
  }

  private static boolean wasAhead(PoolStanding pool, DaySpan span) {
    return pool.stage().terms().kind() == StageKind.REGULAR
        && !pool.passedOver()
        && (pool.movedOn() == null || !pool.movedOn().isBefore(span.begin()));
  }

  private static int enough(PoolStanding pool) {
    return Math.max(
        MovingOnTest.of(pool.stage().terms().rule()).begun().cleanRepsToDecide(),
        RungJudgement.handlingsOf(pool.pool()).size());
  }
}
