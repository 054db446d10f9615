package dev.poleward.service.http;

import dev.poleward.domain.outlook.Quantiles;
import dev.poleward.domain.outlook.Rhythm;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/** How many of ten dogs finish when, as a trainer would say it. */
final class OutlookWords {

  private static final int DAYS_OF_YEAR = 365;

  private OutlookWords() {}

  /** {@code one finishes within 3 weeks, five within 5 and nine within 9}. */
  static String finish(Rhythm rhythm, Duration horizon, Quantiles quantiles) {
    Map<String, OptionalInt> dogs = new LinkedHashMap<>();
    dogs.put("one", quantiles.early());
    dogs.put("five", quantiles.middle());
    dogs.put("nine", quantiles.late());
    // Of several who need as many weeks the most say all.
    Map<Long, String> weeksOf = new LinkedHashMap<>();
    String tooFew = null;
    for (Map.Entry<String, OptionalInt> each : dogs.entrySet()) {
      if (each.getValue().isPresent()) {
        weeksOf.put(weeks(rhythm, each.getValue()), each.getKey());
      } else if (tooFew == null) {
        tooFew = each.getKey();
      }
    }
    List<String> parts = new ArrayList<>();
    weeksOf.forEach((weeks, who) -> parts.add(part(parts.isEmpty(), who, weeks)));
    if (tooFew != null) {
      String within = " within " + inYears(horizon);
      parts.add("fewer than " + tooFew + (parts.isEmpty() ? " finishes" : "") + within);
    }
    return joined(parts);
  }

  /** In years where they are whole ones. */
  private static String inYears(Duration horizon) {
    long days = horizon.toDays();
    return days % DAYS_OF_YEAR == 0 ? days / DAYS_OF_YEAR + " years" : days / 7 + " weeks";
  }

  private static String part(boolean first, String who, long weeks) {
    if (!first) {
      return who + " within " + weeks;
    }
    String finish = who.equals("one") ? " finishes within " : " finish within ";
    return who + finish + weeks + (weeks == 1 ? " week" : " weeks");
  }

  private static String joined(List<String> parts) {
    return parts.size() == 1
        ? parts.getFirst()
        : String.join(", ", parts.subList(0, parts.size() - 1)) + " and " + parts.getLast();
  }

  private static long weeks(Rhythm rhythm, OptionalInt sessions) {
    return Math.round(Math.ceil(rhythm.weeks(sessions.orElseThrow())));
  }
}
