package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.outlook.Season;
import dev.poleward.domain.outlook.Season.Amount;
import dev.poleward.domain.outlook.Season.Break;
import dev.poleward.domain.outlook.Season.RungDone;
import dev.poleward.domain.outlook.Season.StageDone;
import dev.poleward.service.codec.Writing;
import dev.poleward.service.http.MasteryShape.ThresholdShape;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A season as the contract shows it. Immutable; safe for use by many threads. */
final class SeasonShape {

  /** Most rungs of one answer; those that were moved on from last are left out. */
  static final int RUNGS_MAX = 500;

  ObjectNode of(String dog, LocalDay day, Season season) {
    List<RungDone> shown = season.movedOn().stream().limit(RUNGS_MAX).toList();
    return new Writing()
        .put("dog", dog)
        .putPrinted("agedTo", day.date())
        .putPrinted("from", season.span().from())
        .putPrinted("to", season.span().to())
        .put("total", amount(new Writing(), season.total()))
        .putObjects(
            "months",
            season.months(),
            month -> amount(new Writing().putPrinted("month", month.month()), month.amount()))
        .putObjects("stages", season.stages(), SeasonShape::done)
        .put("movedOnOmitted", season.movedOn().size() - shown.size())
        .putObjects("movedOn", shown, SeasonShape::done)
        .putObjects(
            "sides",
            season.sides(),
            side ->
                new Writing()
                    .put("entrySide", side.side())
                    .put("before", ThresholdShape.of(side.before()).written())
                    .put("after", ThresholdShape.of(side.after()).written())
                    .done())
        .put("longestBreak", longest(season.longestBreak()))
        .done();
  }

  /** A stage that was done. */
  static ObjectNode done(StageDone done) {
    return DrillShape.of(done.stage()).putPrinted("day", done.day()).done();
  }

  /** A rung that was moved on from. */
  static ObjectNode done(RungDone done) {
    return DrillShape.of(done.stage(), done.pool()).putPrinted("day", done.day()).done();
  }

  /** How much there was. */
  static ObjectNode amount(Writing shape, Amount amount) {
    return shape
        .put("sessions", amount.sessions())
        .put("days", amount.days())
        .put("reps", amount.reps())
        .put("clean", amount.clean())
        .put("gaps", amount.gaps())
        .put("trials", amount.trials())
        .put("cleanTrials", amount.cleanTrials())
        .done();
  }

  private static @Nullable ObjectNode longest(@Nullable Break longest) {
    return longest == null
        ? null
        : new Writing()
            .putPrinted("after", longest.after())
            .putPrinted("until", longest.until())
            .put("days", longest.days())
            .done();
  }
}
