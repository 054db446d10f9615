package dev.poleward.service.demo;

import dev.poleward.domain.learner.Population;
import dev.poleward.domain.learner.Temper;
import java.util.List;
import java.util.SplittableRandom;

/**
 * An invented dog of the club.
 *
 * @param handler id of who trains it
 * @param phone what its reps are logged with
 * @param monthsOld when the season begins
 * @param withersHeight metres
 * @param guest whether it comes from elsewhere, to the class alone
 * @param way what it is taught, in this order
 * @param repsATurn how many reps it runs when it is its turn, without a look ahead
 */
record DemoDog(
    String id,
    String callName,
    String handler,
    String phone,
    Temper temper,
    int monthsOld,
    double withersHeight,
    boolean guest,
    List<Step> way,
    int repsATurn) {

  static final String ODA = "h-oda";
  static final String RUBEN = "h-ruben";
  static final String ILSE = "h-ilse";

  private static final int YOUNG_MONTHS = 12;

  /** Whether it is too young for most of it. */
  boolean isYoung() {
    return monthsOld < YOUNG_MONTHS;
  }

  /** The dogs of the club, in the order in which they take turns. */
  static List<DemoDog> all() {
    // An ordinary dog like any other, but not the very middle one.
    Temper anyDog = Population.CLUB.draw(new SplittableRandom(17));
    return List.of(
        new DemoDog(
            "juniper",
            "Juniper",
            ODA,
            Source.ODAS_PHONE,
            Temper.BOLD,
            26,
            0.47,
            false,
            Step.ALL,
            10),
        new DemoDog(
            "bracken",
            "Bracken",
            ODA,
            Source.ODAS_PHONE,
            Temper.STEADY,
            41,
            0.52,
            false,
            Step.ALL,
            9),
        new DemoDog(
            "wren", "Wren", ODA, Source.ODAS_PHONE, Temper.ORDINARY, 8, 0.38, false, Step.YOUNG, 4),
        new DemoDog(
            "pebble",
            "Pebble",
            RUBEN,
            Source.RUBENS_PHONE,
            Temper.SENSITIVE,
            33,
            0.34,
            false,
            Step.ALL,
            8),
        new DemoDog(
            "sorrel",
            "Sorrel",
            RUBEN,
            Source.RUBENS_PHONE,
            Temper.QUICK,
            29,
            0.49,
            false,
            Step.ALL,
            10),
        new DemoDog(
            "tansy", "Tansy", ILSE, Source.RUBENS_PHONE, anyDog, 37, 0.44, true, Step.ALL, 7));
  }
}
