package dev.poleward.service.render;

import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.Help;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.mastery.AnglePoint;
import dev.poleward.domain.mastery.Estimate;
import dev.poleward.domain.mastery.LimitMethod;
import dev.poleward.domain.mastery.LogisticFit;
import dev.poleward.domain.mastery.MasteryCurve;
import dev.poleward.domain.mastery.MasteryQuestion;
import dev.poleward.domain.mastery.SideMastery;
import dev.poleward.domain.mastery.Success;
import dev.poleward.domain.mastery.Threshold;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Curves of invented dogs. The numbers are made up for the pictures, not fitted. */
final class SampleCurves {

  static final LocalDate DAY = LocalDate.parse("2026-05-04");

  private static final MasteryQuestion QUESTION =
      new MasteryQuestion(4, 0.8, 30.0, LimitMethod.PROFILE, Success.ENTRY, null, null, null, null);

  private SampleCurves() {}

  /** A dog with a threshold on either side. */
  static DogCurve usual(String callName) {
    return of(
        callName,
        side(
            EntrySide.POLE,
            new LogisticFit(3.9, -0.052, 0.16, -0.0021, 0.000041, -88.2),
            new Threshold.Estimated(48.3, 41.2, 55.9, LimitMethod.PROFILE),
            new int[][] {
              {0, 30, 30},
              {15, 24, 23},
              {30, 40, 37},
              {45, 38, 31},
              {60, 30, 20},
              {75, 16, 8},
              {90, 9, 2}
            }),
        side(
            EntrySide.GAP,
            new LogisticFit(4.4, -0.037, 0.3, -0.0031, 0.000051, -61.0),
            new Threshold.Estimated(81.4, 68.8, 101.7, LimitMethod.PROFILE),
            new int[][] {
              {0, 30, 30},
              {-15, 12, 12},
              {-30, 28, 26},
              {-45, 25, 24},
              {-60, 22, 19},
              {-75, 10, 8},
              {-90, 12, 9},
              {-105, 3, 2},
              {-120, 1, 0}
            }));
  }

  /** A dog that was never logged. */
  static DogCurve withoutReps() {
    return of(
        "Bracken",
        side(EntrySide.POLE, null, new Threshold.NotEnoughReps(), new int[0][]),
        side(EntrySide.GAP, null, new Threshold.NotEnoughReps(), new int[0][]));
  }

  /** A dog that knows one angle. */
  static DogCurve oneAngle() {
    return of(
        "Aske",
        side(EntrySide.POLE, null, new Threshold.NotEnoughReps(), new int[][] {{30, 8, 6}}),
        side(EntrySide.GAP, null, new Threshold.NotEnoughReps(), new int[0][]));
  }

  /** Every position of the clock, and limits that do not exist. */
  static DogCurve roundTheClock() {
    int[][] pole = new int[12][];
    int[][] gap = new int[12][];
    for (int i = 0; i < 12; i++) {
      pole[i] = new int[] {15 * i, 100 + i, 100 - i};
      gap[i] =
          new int[] {
            -15 * i,
            i == 0 ? 100 : 1 + 17 * i % 23,
            i == 0 ? 100 : (1 + 17 * i % 23) * (12 - i) / 12
          };
    }
    return of(
        "Zorro",
        side(
            EntrySide.POLE,
            new LogisticFit(4.6, -0.013, 0.3, -0.0018, 0.000016, -40),
            new Threshold.BeyondTried(165, 120.4, LimitMethod.PROFILE),
            pole),
        side(
            EntrySide.GAP,
            new LogisticFit(1.2, -0.019, 0.3, -0.0021, 0.000026, -70),
            new Threshold.BelowTried(0, 30.2, LimitMethod.PROFILE),
            gap));
  }

  /** Rungs of a turned line of poles, close to each other; one side that does not fall. */
  static DogCurve turned() {
    int[][] gap = new int[5][];
    DogCurve sample = usual("Juniper");
    List<AnglePoint> points = new ArrayList<>();
    for (int i = 0; i < 19; i++) {
      double size = Math.min(90, 4.776 * (i + 1));
      points.add(point(size, 11, Math.min(11, 12 - i / 3)));
    }
    for (int i = 0; i < 5; i++) {
      gap[i] = new int[] {-30 - 15 * i, 10, 5 + i};
    }
    SideMastery usual = sample.curve().sides().getFirst();
    return of(
        "Wisp",
        new SideMastery(
            EntrySide.POLE, 209, 160, 88.1, usual.fit(), usual.threshold(), points, true),
        side(
            EntrySide.GAP,
            new LogisticFit(-1, 0.02, 0.2, -0.002, 0.00004, -20),
            new Threshold.NoFall(),
            gap));
  }

  /** Fifty angles a degree apart. */
  static DogCurve closeTogether() {
    int[][] pole = new int[50][];
    for (int i = 0; i < pole.length; i++) {
      pole[i] = new int[] {i + 1, 100 + i, 90};
    }
    return of(
        "Thistle",
        side(
            EntrySide.POLE,
            new LogisticFit(2, -0.01, 0.1, -0.001, 0.0001, -900),
            new Threshold.Estimated(49.9, null, null, LimitMethod.DELTA),
            pole),
        side(EntrySide.GAP, null, new Threshold.NotEnoughReps(), new int[][] {{-179, 4, 4}}));
  }

  /** All filters at once, a half limit, an odd level. */
  static DogCurve narrowed() {
    DogCurve usual = usual("Juniper");
    SideMastery pole = usual.curve().sides().getFirst();
    return new DogCurve(
        "juniper",
        "Juniper",
        DAY,
        new MasteryCurve(
            new MasteryQuestion(
                null,
                0.7,
                null,
                LimitMethod.FIELLER,
                Success.CLEAN,
                Manoeuvre.REAR_CROSS,
                DogSide.LEFT,
                LeadIn.TUNNEL,
                Help.LURE),
            usual.curve().agedTo(),
            List.of(
                side(
                    EntrySide.POLE,
                    pole.fit(),
                    new Threshold.Estimated(33.3, null, 60.0, LimitMethod.FIELLER),
                    new int[][] {{0, 4, 4}, {30, 3, 2}, {60, 1, 0}}),
                usual.curve().sides().getLast())));
  }

  static DogCurve of(String callName, SideMastery pole, SideMastery gap) {
    return new DogCurve(
        "juniper",
        callName,
        DAY,
        new MasteryCurve(QUESTION, Instant.parse("2026-05-05T00:00:00Z"), List.of(pole, gap)));
  }

  static SideMastery side(
      EntrySide side, @Nullable LogisticFit fit, Threshold threshold, int[][] angleRepsMade) {
    List<AnglePoint> points = new ArrayList<>();
    int reps = 0;
    int made = 0;
    for (int[] each : angleRepsMade) {
      AnglePoint plain = point(each[0], each[1], each[2]);
      points.add(
          new AnglePoint(
              plain.angle(),
              plain.reps(),
              plain.made(),
              plain.weight(),
              fit == null ? null : fit.bandAt(plain.angle().size()),
              plain.observed(),
              plain.isotonic()));
      reps += each[1];
      made += each[2];
    }
    return new SideMastery(side, reps, made, reps * 0.45, fit, threshold, points, false);
  }

  private static AnglePoint point(double degrees, int reps, int made) {
    double share = (double) made / reps;
    // Wilson's interval, as the service shows it.
    double z = 1.96;
    double middle = (share + z * z / (2 * reps)) / (1 + z * z / reps);
    double half =
        z
            / (1 + z * z / reps)
            * Math.sqrt(share * (1 - share) / reps + z * z / (4.0 * reps * reps));
    return new AnglePoint(
        new EntryAngle(degrees),
        reps,
        made,
        reps * 0.45,
        null,
        new Estimate(share, middle - half, middle + half),
        share);
  }
}
