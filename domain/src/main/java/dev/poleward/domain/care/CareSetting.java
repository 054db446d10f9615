package dev.poleward.domain.care;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Whole numbers among a club's care limits, by name and range. */
enum CareSetting {
  AGE_MONTHS("ageMonths", 0, 60),
  POLES("poles", 2, 24),
  GAPS_PER_SESSION("gapsPerSession", 0, 2_000),
  GAPS_PER_WEEK("gapsPerWeek", 0, 10_000),
  GROWTH_PERCENT("growthPercent", 0, 1_000),
  SHARP_BENDS_PER_SESSION("sharpBendsPerSession", 0, 200),
  POLES_YOUNG("polesYoung", 2, 24),
  GAPS_YOUNG("gapsYoung", 0, 2_000),
  EASE_BACK_DAYS("easeBackDays", 0, 365),
  BREAK_DAYS("breakDays", 7, 365),
  HEAT_CAUTION("heatCaution", 0, 50),
  HEAT_STOP("heatStop", 0, 50);

  private final String written;
  private final int least;
  private final int most;

  CareSetting(String written, int least, int most) {
    this.written = written;
    this.least = least;
    this.most = most;
  }

  /** What settings say; null where they say nothing, or what cannot be. */
  @Nullable Integer in(Map<String, Object> settings) {
    return settings.get(written) instanceof Number said
            && said.doubleValue() >= least
            && said.doubleValue() <= most
        ? (Integer) said.intValue()
        : null;
  }

  int in(Map<String, Object> settings, int otherwise) {
    Integer said = in(settings);
    return said == null ? otherwise : said;
  }
}
