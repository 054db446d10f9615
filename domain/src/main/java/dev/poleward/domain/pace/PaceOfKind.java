package dev.poleward.domain.pace;

import dev.poleward.domain.mastery.Confidence;
import dev.poleward.domain.timing.MedianAndMad;
import dev.poleward.domain.timing.TheilSen;
import dev.poleward.domain.timing.Timed;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * How fast a dog is over so many poles from one side.
 *
 * @param seconds from entry to exit
 * @param days on which there were such runs, in their order
 * @param trend of the medians of its days, seconds a week; null where all fell on one day
 * @param rhythm null where no gap times were told
 */
public record PaceOfKind(
    RunKind kind,
    UsualValue seconds,
    List<DayPace> days,
    @Nullable TheilSen trend,
    @Nullable Rhythm rhythm) {

  private static final double DAYS_A_WEEK = 7;

  /** Keeps the days from changing. */
  public PaceOfKind {
    days = List.copyOf(days);
  }

  /** The trend's line on a day, seconds; of a kind that has a trend. */
  public double trendOn(LocalDate day) {
    TheilSen line = Objects.requireNonNull(trend, "no trend");
    return line.intercept() + line.slope() * weeks(day);
  }

  private static double weeks(LocalDate day) {
    return day.toEpochDay() / DAYS_A_WEEK;
  }

  /** Of at least one run, all of that kind. */
  static PaceOfKind of(RunKind kind, List<CleanRun> runs, ZoneId zone) {
    List<DayPace> days = byDay(runs, zone);
    return new PaceOfKind(
        kind,
        UsualValue.of(seconds(runs), Confidence.OF_95_PERCENT).orElseThrow(),
        days,
        TheilSen.of(
                days.stream().map(day -> new Timed(weeks(day.day()), day.seconds())).toList(),
                Confidence.OF_95_PERCENT)
            .orElse(null),
        Rhythm.of(runs).orElse(null));
  }

  private static List<Double> seconds(List<CleanRun> runs) {
    return runs.stream().map(CleanRun::seconds).toList();
  }

  /** Runs of a day have the day in common, so that each day is one value. */
  private static List<DayPace> byDay(List<CleanRun> runs, ZoneId zone) {
    Map<LocalDate, List<CleanRun>> byDay =
        runs.stream()
            .collect(
                Collectors.groupingBy(
                    run -> run.at().atZone(zone).toLocalDate(), TreeMap::new, Collectors.toList()));
    return byDay.entrySet().stream()
        .map(
            day ->
                new DayPace(
                    day.getKey(), MedianAndMad.of(seconds(day.getValue())).orElseThrow().median()))
        .toList();
  }
}
