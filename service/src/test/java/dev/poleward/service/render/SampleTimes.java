package dev.poleward.service.render;

import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.pace.Pace;
import dev.poleward.domain.pace.TimedRep;
import dev.poleward.domain.pace.TimedRuns;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/** Times of invented dogs. */
final class SampleTimes {

  private static final LocalDate DAY = LocalDate.parse("2026-05-18");
  private static final Instant END = Instant.parse("2026-05-19T00:00:00Z");
  private static final int DAYS_MAX = 730;
  private static final Instant FROM = END.minus(Duration.ofDays(DAYS_MAX));

  private SampleTimes() {}

  /** A dog that is slow in the second gap and gets faster from week to week. */
  static DogTimes usual(String callName) {
    List<TimedRep> reps = new ArrayList<>();
    Random random = new Random(6);
    for (int day = 0; day < 14; day++) {
      for (int run = 0; run < 5; run++) {
        Double[] gaps = new Double[5];
        for (int gap = 0; gap < gaps.length; gap++) {
          double usual = (gap == 1 ? 0.52 : 0.4) - 0.004 * day;
          gaps[gap] = usual + 0.02 * random.nextGaussian();
        }
        Instant at = END.minus(Duration.ofDays(85 - 6 * day)).plusSeconds(60L * run);
        reps.add(new TimedRuns(6, 30, Manoeuvre.ALONGSIDE).withGaps(at, gaps));
      }
    }
    Instant later = END.minus(Duration.ofDays(1));
    reps.add(new TimedRuns(12, 0, Manoeuvre.SEND).clean(later, 4.4));
    reps.add(new TimedRuns(6, -45, Manoeuvre.SEND).clean(later.plusSeconds(60), 2.6));
    return of(callName, reps);
  }

  /** A dog without a time. */
  static DogTimes withoutRuns() {
    return of("Bracken", List.of());
  }

  /** One run, of which no gaps were told. */
  static DogTimes oneRun() {
    return of("Aske", List.of(TimedRuns.OF_FOUR.clean(END.minusSeconds(60), 1.5)));
  }

  /** Twenty-four poles, every gap of which is slow for its place, over two years. */
  static DogTimes overYears() {
    List<TimedRep> reps = new ArrayList<>();
    TimedRuns all = new TimedRuns(24, -75, Manoeuvre.RECALL);
    for (int day = 1; day <= 365; day++) {
      Double[] gaps =
          IntStream.rangeClosed(1, 23)
              .mapToObj(gap -> gap % 3 == 0 ? 1.9 : 0.3)
              .toArray(Double[]::new);
      reps.add(all.withGaps(FROM.plus(Duration.ofDays(2L * day - 1)), gaps));
    }
    return of("Zorro", DAYS_MAX, reps);
  }

  /** Two days, next to each other. */
  static DogTimes twoDays() {
    return of(
        "Thistle",
        List.of(
            new TimedRuns(2, 0, Manoeuvre.SEND).withGaps(END.minus(Duration.ofDays(2)), 0.4),
            new TimedRuns(2, 0, Manoeuvre.SEND).withGaps(END.minus(Duration.ofDays(1)), 30.0)));
  }

  private static DogTimes of(String callName, List<TimedRep> reps) {
    return of(callName, 90, reps);
  }

  private static DogTimes of(String callName, int days, List<TimedRep> reps) {
    Instant from = END.minus(Duration.ofDays(days));
    return new DogTimes(
        new DogInPicture("juniper", callName, DAY),
        days,
        Pace.of(reps, from, END, ZoneOffset.UTC),
        "Not surely slower lately than before.");
  }
}
