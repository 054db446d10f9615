package dev.poleward.service.render;

import dev.poleward.domain.judgement.CleanMonth;
import dev.poleward.domain.judgement.RewardMonth;
import dev.poleward.domain.judgement.StageRewards;
import java.time.YearMonth;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.Stream;

/**
 * The last months of a stage.
 *
 * @param first the first that is shown
 * @param months how many, from 1
 * @param rewards of those months, in their order
 * @param clean likewise
 * @param isCut whether there were months before
 */
record FadeMonths(
    YearMonth first, int months, List<RewardMonth> rewards, List<CleanMonth> clean, boolean isCut) {

  /** So many are shown at most. */
  static final int MONTHS_MAX = 24;

  /** Of a stage with a rep of which something was told. */
  static FadeMonths of(StageRewards stage, ZoneId zone) {
    List<RewardMonth> rewards = RewardMonth.of(stage.reps(), zone);
    List<CleanMonth> clean = CleanMonth.of(stage.reps(), zone);
    List<YearMonth> all =
        Stream.concat(
                rewards.stream().map(RewardMonth::month), clean.stream().map(CleanMonth::month))
            .sorted()
            .toList();
    YearMonth last = all.getLast();
    YearMonth cut = last.minusMonths(MONTHS_MAX - 1L);
    boolean isCut = all.getFirst().isBefore(cut);
    YearMonth first = isCut ? cut : all.getFirst();
    return new FadeMonths(
        first,
        (int) ChronoUnit.MONTHS.between(first, last) + 1,
        rewards.stream().filter(month -> !month.month().isBefore(first)).toList(),
        clean.stream().filter(month -> !month.month().isBefore(first)).toList(),
        isCut);
  }
}
