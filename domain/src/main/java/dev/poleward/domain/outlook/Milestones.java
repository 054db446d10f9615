package dev.poleward.domain.outlook;

import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.PoolStanding;
import dev.poleward.domain.judgement.StageStanding;
import dev.poleward.domain.outlook.Season.RungDone;
import dev.poleward.domain.outlook.Season.StageDone;
import dev.poleward.domain.record.DaySpan;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What was moved on from within a span of days, and when.
 *
 * @param stages in the order in which they were done
 * @param rungs in the order in which they were moved on from
 */
record Milestones(List<StageDone> stages, List<RungDone> rungs) {

  /** Something done, and the instant of it. */
  private record At<T>(Instant time, T done) {}

  static Milestones of(DogStanding standing, DaySpan span) {
    List<At<RungDone>> rungs = new ArrayList<>();
    List<At<StageDone>> stages = new ArrayList<>();
    for (StageStanding stage : standing.stages()) {
      for (PoolStanding pool : stage.pools()) {
        Instant movedOn = pool.movedOn();
        if (movedOn != null) {
          rungs.add(new At<>(movedOn, new RungDone(stage.stage(), pool.pool(), span.day(movedOn))));
        }
      }
      done(stage)
          .ifPresent(
              last -> stages.add(new At<>(last, new StageDone(stage.stage(), span.day(last)))));
    }
    return new Milestones(within(stages, span), within(rungs, span));
  }

  /** When the last of its rungs was moved on from; empty when one was not, or was passed over. */
  private static Optional<Instant> done(StageStanding stage) {
    return stage.pools().stream().allMatch(pool -> pool.movedOn() != null)
        ? stage.pools().stream()
            .flatMap(pool -> Optional.ofNullable(pool.movedOn()).stream())
            .max(Comparator.naturalOrder())
        : Optional.empty();
  }

  private static <T> List<T> within(List<At<T>> all, DaySpan span) {
    return all.stream()
        .filter(each -> span.has(each.time()))
        .sorted(Comparator.comparing(At::time))
        .map(At::done)
        .toList();
  }
}
