package dev.poleward.domain.care;

import java.util.Map;

/**
 * What a club asks of no dog. Every number is common practice [C] where the club says none; one
 * that cannot be is passed over, for settings of old may hold anything.
 *
 * @param ageMonths below it a dog is young; never a safe age
 * @param poles the most that may stand, 2 to 24
 * @param gapsPerSession 0 to 2,000
 * @param gapsPerWeek 0 to 10,000, over seven days
 * @param growthPercent by how much a week may exceed the mean of the four before it, 0 to 1,000
 * @param sharpBendsPerSession entries from beyond 60 degrees, 0 to 200
 * @param polesYoung most poles for a young dog
 * @param gapsYoung most gaps a session for a young dog
 * @param barHeightYoung highest bar for a young dog, metres, 0 to 1
 * @param easeBackDays so many days after a rest or a long break load rises from a third to all of
 *     it
 * @param breakDays so many days after its last run a dog that was not resting comes back as from a
 *     rest, 7 to 365
 * @param heatCaution degrees Celsius as a dog feels them ({@link Heat}) from which it does half
 * @param heatStop degrees Celsius as a dog feels them from which it does nothing
 */
public record CareLimits(
    int ageMonths,
    int poles,
    int gapsPerSession,
    int gapsPerWeek,
    int growthPercent,
    int sharpBendsPerSession,
    int polesYoung,
    int gapsYoung,
    double barHeightYoung,
    int easeBackDays,
    int breakDays,
    int heatCaution,
    int heatStop) {

  /** Where a club says nothing. */
  public static final CareLimits USUAL =
      new CareLimits(18, 24, 90, 240, 50, 10, 4, 24, 0.1, 14, 28, 24, 32);

  /** The limits of a club whose settings say so much; numbers that cannot be are passed over. */
  public static CareLimits of(Map<String, Object> settings) {
    return USUAL.as(settings);
  }

  private CareLimits as(Map<String, Object> settings) {
    return new CareLimits(
        CareSetting.AGE_MONTHS.in(settings, ageMonths),
        CareSetting.POLES.in(settings, poles),
        CareSetting.GAPS_PER_SESSION.in(settings, gapsPerSession),
        CareSetting.GAPS_PER_WEEK.in(settings, gapsPerWeek),
        CareSetting.GROWTH_PERCENT.in(settings, growthPercent),
        CareSetting.SHARP_BENDS_PER_SESSION.in(settings, sharpBendsPerSession),
        CareSetting.POLES_YOUNG.in(settings, polesYoung),
        CareSetting.GAPS_YOUNG.in(settings, gapsYoung),
        metres(settings, "barHeightYoung", barHeightYoung),
        CareSetting.EASE_BACK_DAYS.in(settings, easeBackDays),
        CareSetting.BREAK_DAYS.in(settings, breakDays),
        CareSetting.HEAT_CAUTION.in(settings, heatCaution),
        CareSetting.HEAT_STOP.in(settings, heatStop));
  }

  /**
   * These and what a dog was cleared up to, whichever is less of poles, gaps, sharp bends and heat.
   * A clearance never loosens what the club holds to.
   */
  public CareLimits within(Map<String, Object> clearance) {
    CareLimits cleared = as(clearance);
    return new CareLimits(
        ageMonths,
        Math.min(poles, cleared.poles),
        Math.min(gapsPerSession, cleared.gapsPerSession),
        Math.min(gapsPerWeek, cleared.gapsPerWeek),
        Math.min(growthPercent, cleared.growthPercent),
        Math.min(sharpBendsPerSession, cleared.sharpBendsPerSession),
        polesYoung,
        gapsYoung,
        barHeightYoung,
        Math.max(easeBackDays, cleared.easeBackDays),
        breakDays,
        Math.min(heatCaution, cleared.heatCaution),
        Math.min(heatStop, cleared.heatStop));
  }

  private static double metres(Map<String, Object> settings, String name, double otherwise) {
    return settings.get(name) instanceof Number said
            && said.doubleValue() >= 0
            && said.doubleValue() <= 1
        ? said.doubleValue()
        : otherwise;
  }
}
