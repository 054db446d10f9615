package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.DrillCount;
import dev.poleward.domain.judgement.DrillCounts;
import dev.poleward.domain.judgement.DrillRun;
import dev.poleward.domain.judgement.NextRung;
import dev.poleward.domain.mastery.Estimate;
import dev.poleward.domain.programme.ProgrammeInForce;
import dev.poleward.service.codec.Writing;
import java.time.LocalDate;
import java.util.List;
import java.util.function.ToIntFunction;
import org.jspecify.annotations.Nullable;

/** Drills that were run, as the contract shows them. Immutable; safe for use by many threads. */
final class ProgressShape {

  /** Most drills of one answer; those whose last run is longest ago are left out. */
  static final int DRILLS_MAX = 1_000;

  /**
   * Where the dog stands, and all counts with some of the drills that were run.
   *
   * @param shown the first of them
   */
  ObjectNode of(
      String dog,
      LocalDate agedTo,
      ProgrammeInForce inForce,
      DogStanding standing,
      List<NextRung> next,
      DrillCounts counts,
      List<DrillCount> shown) {
    Writing out = new Writing().put("dog", dog).putPrinted("agedTo", agedTo);
    StandingShape.write(out, inForce, standing, next);
    return out.put("totals", totals(counts.drills()))
        .put("notPlaced", counts.notPlaced())
        .put("voided", counts.voided())
        .put("omitted", counts.drills().size() - shown.size())
        .putObjects("ran", shown, ProgressShape::count)
        .done();
  }

  private static ObjectNode totals(List<DrillCount> drills) {
    return new Writing()
        .put("drills", drills.size())
        .put("reps", sum(drills, DrillCount::reps))
        .put("clean", sum(drills, DrillCount::clean))
        .put("made", sum(drills, DrillCount::made))
        .put("helped", sum(drills, DrillCount::helped))
        .done();
  }

  private static int sum(List<DrillCount> drills, ToIntFunction<DrillCount> number) {
    return drills.stream().mapToInt(number).sum();
  }

  private static ObjectNode count(DrillCount count) {
    return new Writing()
        .put("drill", drill(count.drill()))
        .put("reps", count.reps())
        .put("clean", count.clean())
        .put("made", count.made())
        .put("cleanShare", share(count.cleanShare()))
        .put(
            "recent",
            new Writing()
                .put("clean", count.recent().clean())
                .put("of", count.recent().of())
                .done())
        .put("helped", count.helped())
        .putPrinted("first", count.first())
        .putPrinted("last", count.last())
        .done();
  }

  private static ObjectNode drill(DrillRun drill) {
    return new Writing()
        .put("poles", drill.poles())
        .put("leadIn", drill.leadIn())
        .put("backChainStep", drill.step())
        .put("jumpTurn", drill.turn())
        .put("entrySide", drill.angle().side())
        .put("angle", drill.angle().degrees())
        .putPrinted("clock", drill.angle().clock().orElse(null))
        .put("manoeuvre", drill.manoeuvre())
        .put("dogSide", drill.dogSide())
        .done();
  }

  private static @Nullable ObjectNode share(@Nullable Estimate share) {
    return share == null
        ? null
        : new Writing()
            .put("share", share.value())
            .put("lower", share.lower())
            .put("upper", share.upper())
            .done();
  }
}
