package dev.poleward.domain.pace;

import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.timing.MedianAndMad;
import dev.poleward.domain.timing.RankSum;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Whether a dog is slower lately than it was. Each run is compared with the usual time of runs of
 * its kind and manoeuvre over the whole time; each day is the median of its runs, because runs of a
 * day share the day; the days of lately are compared with those before by their ranks.
 *
 * @param days lately with runs that can be compared
 * @param daysBefore likewise
 * @param change by how much slower, as a share of the time before; below 0 where it is faster; null
 *     where there are too few days
 * @param chance of days that rank as high, were nothing changed; null likewise
 */
public record Slowing(
    Verdict verdict, int days, int daysBefore, @Nullable Double change, @Nullable Double chance) {

  /** How long is lately. */
  private static final Duration LATELY = Duration.ofDays(14);

  /** Likewise where that holds too few days with times: of dogs that train once a week [C]. */
  private static final Duration LATELY_OF_FEW = Duration.ofDays(21);

  /** How long before lately is looked at [C]. */
  private static final Duration BEFORE = Duration.ofDays(56);

  /** How long a time is looked at in all, at most. */
  public static final Duration SPAN = LATELY_OF_FEW.plus(BEFORE);

  /** In so many of a hundred looks a dog that is as it was is called slower, at most. */
  public static final double ERROR = 0.01;

  /** Who is slower by less is not called so [C]. */
  public static final double CHANGE_MIN = 0.05;

  /** With fewer days no order of them is as rare as {@link #ERROR}. */
  public static final int DAYS_MIN = 3;

  /** Likewise of the time before. */
  public static final int DAYS_BEFORE_MIN = 8;

  /** What is found. */
  public enum Verdict {
    /** Surely slower, and by enough to matter. */
    SLOWER,
    /** Nothing of the kind is seen. */
    NOT_SLOWER,
    /** There are too few days with times. */
    NOT_ENOUGH_DAYS
  }

  private record Alike(RunKind kind, Manoeuvre manoeuvre) {}

  /**
   * Looks at a dog's timed reps.
   *
   * @param reps timed, of at least the time that is looked at
   * @param cleared when somebody last looked at the dog: lately begins no earlier; null for never
   * @param until the end of lately, itself outside
   */
  public static Slowing of(
      List<TimedRep> reps, @Nullable Instant cleared, Instant until, ZoneId zone) {
    List<CleanRun> all = CountedRuns.of(reps).runs();
    boolean few = days(all, until.minus(LATELY), until, zone) < DAYS_MIN;
    Instant lately = until.minus(few ? LATELY_OF_FEW : LATELY);
    Instant divide = cleared == null || cleared.isBefore(lately) ? lately : cleared;
    Instant from = lately.minus(BEFORE);
    List<CleanRun> runs =
        all.stream().filter(run -> !run.at().isBefore(from) && run.at().isBefore(until)).toList();
    Map<LocalDate, List<Double>> last = new TreeMap<>();
    Map<LocalDate, List<Double>> before = new TreeMap<>();
    runs.stream()
        .collect(Collectors.groupingBy(run -> new Alike(run.kind(), run.manoeuvre())))
        .values()
        .forEach(
            alike -> {
              if (alike.stream().map(run -> run.at().isBefore(divide)).distinct().count() == 2) {
                double usual = usual(alike);
                for (CleanRun run : alike) {
                  (run.at().isBefore(divide) ? before : last)
                      .computeIfAbsent(run.at().atZone(zone).toLocalDate(), _ -> new ArrayList<>())
                      .add(StrictMath.log(run.seconds() / usual));
                }
              }
            });
    return of(medians(last), medians(before));
  }

  /** On how many days there were runs: not how fast they were, or the test would choose itself. */
  private static long days(List<CleanRun> runs, Instant from, Instant until, ZoneId zone) {
    return runs.stream()
        .filter(run -> !run.at().isBefore(from) && run.at().isBefore(until))
        .map(run -> run.at().atZone(zone).toLocalDate())
        .distinct()
        .count();
  }

  private static double usual(List<CleanRun> runs) {
    return MedianAndMad.of(runs.stream().map(CleanRun::seconds).toList()).orElseThrow().median();
  }

  private static List<Double> medians(Map<LocalDate, List<Double>> days) {
    return days.values().stream().map(day -> MedianAndMad.of(day).orElseThrow().median()).toList();
  }

  /** Days as logarithms of their times. */
  private static Slowing of(List<Double> last, List<Double> before) {
    if (last.size() < DAYS_MIN || before.size() < DAYS_BEFORE_MIN) {
      return new Slowing(Verdict.NOT_ENOUGH_DAYS, last.size(), before.size(), null, null);
    }
    double change = StrictMath.exp(RankSum.shift(last, before)) - 1;
    double chance = RankSum.of(last, before).chance();
    return new Slowing(
        chance <= ERROR && change >= CHANGE_MIN ? Verdict.SLOWER : Verdict.NOT_SLOWER,
        last.size(),
        before.size(),
        change,
        chance);
  }
}
