package dev.poleward.domain.judgement;

import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.mastery.Proportion;
import dev.poleward.domain.record.PlacedRep;
import java.time.YearMonth;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** How many reps of a month were clean, and how many were not. */
public record CleanMonth(YearMonth month, Proportion clean) {

  /**
   * Month after month, those without a rep left out.
   *
   * @param reps that count: without void and helped ones
   * @param zone of the club's days
   */
  public static List<CleanMonth> of(List<PlacedRep> reps, ZoneId zone) {
    Map<YearMonth, Proportion> months = new TreeMap<>();
    for (PlacedRep rep : reps) {
      boolean clean = rep.outcome() == Outcome.CLEAN;
      months.merge(
          YearMonth.from(rep.moment().time().atZone(zone)),
          new Proportion(clean ? 1 : 0, clean ? 0 : 1),
          (some, more) -> new Proportion(some.made() + more.made(), some.missed() + more.missed()));
    }
    return months.entrySet().stream()
        .map(month -> new CleanMonth(month.getKey(), month.getValue()))
        .toList();
  }
}
