package dev.poleward.domain.judgement;

import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.event.Reward;
import dev.poleward.domain.event.RewardKind;
import dev.poleward.domain.record.PlacedRep;
import java.time.YearMonth;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What clean reps earned in a month.
 *
 * @param reps clean ones of which rewards were told, none included
 * @param food pieces in all
 * @param toys in all
 */
public record RewardMonth(YearMonth month, int reps, int food, int toys) {

  /** Month after month, those without such a rep left out. */
  public static List<RewardMonth> of(List<PlacedRep> reps, ZoneId zone) {
    Map<YearMonth, RewardMonth> months = new TreeMap<>();
    for (PlacedRep rep : reps) {
      List<Reward> rewards = rep.details().rewards();
      if (rep.outcome() == Outcome.CLEAN && rewards != null) {
        YearMonth month = YearMonth.from(rep.moment().time().atZone(zone));
        int food = count(rewards, RewardKind.FOOD);
        int toys = count(rewards, RewardKind.TOY);
        months.merge(
            month,
            new RewardMonth(month, 1, food, toys),
            (some, more) ->
                new RewardMonth(
                    month, some.reps + more.reps, some.food + more.food, some.toys + more.toys));
      }
    }
    return new ArrayList<>(months.values());
  }

  private static int count(List<Reward> rewards, RewardKind kind) {
    return rewards.stream()
        .filter(reward -> reward.kind() == kind)
        .mapToInt(reward -> reward.count() == null ? 1 : reward.count())
        .sum();
  }
}
