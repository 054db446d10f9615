package dev.poleward.service.demo;

import java.time.LocalDate;
import java.util.List;

/**
 * Something to look at.
 *
 * @param what it is, in words
 * @param path below the club's, or from the root where it begins with {@code //}
 * @param form the media type that is asked for
 * @param file what to save it as; empty where it is read in the terminal
 */
record Sight(String what, String path, String form, String file) {

  private static final String JSON = "application/json";
  private static final String ROOT = "//";

  /** Weeks of the class that are reported. */
  private static final int WEEKS_REPORTED = 12;

  /**
   * What there is to see, the best first.
   *
   * @param session the last of the class
   * @param lastDay of the season
   */
  static List<Sight> all(String session, LocalDate lastDay) {
    String report =
        "/classes/%s/report?from=%s&to=%s"
            .formatted(Season.CLASS, lastDay.minusWeeks(WEEKS_REPORTED).plusDays(1), lastDay);
    return List.of(
        new Sight(
            "Juniper's entries by angle, a panel for each entry side",
            "/dogs/juniper/angle-mastery?poles=4",
            "image/png",
            "juniper-curve.png"),
        new Sight(
            "what came of twelve weeks of the class, dog by dog",
            report,
            JSON,
            "class-report.json"),
        new Sight("the same, a row for each dog", report, "text/csv", "class-report.csv"),
        new Sight("the whole club at a glance", "/overview", JSON, ""),
        new Sight(
            "Juniper's entries on a clock face",
            "/dogs/juniper/angle-mastery?poles=4&picture=clock",
            "image/svg+xml",
            "juniper-clock.svg"),
        new Sight(
            "Pebble, who takes misses to heart",
            "/dogs/pebble/angle-mastery?poles=4",
            "image/png",
            "pebble-curve.png"),
        new Sight(
            "Juniper in numbers, at another level",
            "/dogs/juniper/angle-mastery?poles=4&level=0.9",
            JSON,
            ""),
        new Sight(
            "where Sorrel stands, and what it ran",
            "/dogs/sorrel/progress",
            JSON,
            "sorrel-progress.json"),
        new Sight(
            "what Bracken may be asked for on a warm day",
            "/dogs/bracken/care?temperature=23&humidity=60&sky=sun",
            JSON,
            ""),
        new Sight("which faults Tansy makes, and where", "/dogs/tansy/faults", JSON, ""),
        new Sight(
            "how fast Sorrel weaves, timed by a gate that knows neither dog nor session",
            "/dogs/sorrel/timing",
            JSON,
            "sorrel-times.json"),
        new Sight("how Wren's rewards fade", "/dogs/wren/reward-fade", JSON, "wren-rewards.json"),
        new Sight("how long Juniper will need", "/dogs/juniper/outlook", JSON, ""),
        new Sight(
            "Wren's season, month by month", "/dogs/wren/season", "text/csv", "wren-season.csv"),
        new Sight("reps that two phones may have logged", "/suspected-duplicates", JSON, ""),
        new Sight("Wren's reps, for a spreadsheet", "/dogs/wren/reps", "text/csv", "wren.csv"),
        new Sight("what waits for something nobody has told yet", "/waiting", JSON, ""),
        new Sight("the last class as it stands", "/sessions/" + session, JSON, "class.json"),
        new Sight("the record, event by event", "/events?after=0&limit=3", JSON, ""),
        new Sight("its fingerprint", "/digest", JSON, ""),
        new Sight(
            "what can be asked and sent, for programs",
            ROOT + "openapi.yaml",
            "*/*",
            "openapi.yaml"));
  }

  /** Where it is. */
  String pathIn(String club) {
    return path.startsWith(ROOT) ? path.substring(1) : club + path;
  }

  /** Whether it belongs to the club, so that its key is needed. */
  boolean needsKey() {
    return !path.startsWith(ROOT);
  }
}
