package dev.poleward.domain.care;

import java.util.Map;

/**
 * What a club asks of no dog. Every number is common practice [C] where the club says none; one
 * that cannot be is passed over, for settings of old may hold anything.
 *
 * @param ageMonths below it a dog is young; never a safe age
 * @param gapsPerSession 0 to 2,000
 * @param gapsPerWeek 0 to 10,000, over seven days
 * @param sharpBendsPerSession entries from beyond 60 degrees, 0 to 200
 * @param polesYoung most poles for a young dog
 * @param gapsYoung most gaps a session for a young dog
 * @param easeBackDays so many days after a rest load rises from a third to all of it
 */
public record CareLimits(
    int ageMonths,
    int gapsPerSession,
    int gapsPerWeek,
    int sharpBendsPerSession,
    int polesYoung,
    int gapsYoung,
    int easeBackDays) {

  /** Where a club says nothing. */
  public static final CareLimits USUAL = new CareLimits(18, 90, 240, 10, 4, 24, 14);

  /** The limits of a club whose settings say so much; numbers that cannot be are passed over. */
  public static CareLimits of(Map<String, Object> settings) {
    return new CareLimits(
        number(settings, "ageMonths", 0, 60, USUAL.ageMonths),
        number(settings, "gapsPerSession", 0, 2_000, USUAL.gapsPerSession),
        number(settings, "gapsPerWeek", 0, 10_000, USUAL.gapsPerWeek),
        number(settings, "sharpBendsPerSession", 0, 200, USUAL.sharpBendsPerSession),
        number(settings, "polesYoung", 2, 24, USUAL.polesYoung),
        number(settings, "gapsYoung", 0, 2_000, USUAL.gapsYoung),
        number(settings, "easeBackDays", 0, 365, USUAL.easeBackDays));
  }

  private static int number(
      Map<String, Object> settings, String name, int least, int most, int usual) {
    return settings.get(name) instanceof Number said
            && said.doubleValue() >= least
            && said.doubleValue() <= most
        ? said.intValue()
        : usual;
  }
}
