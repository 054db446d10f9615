package dev.poleward.load.outlook;

import dev.poleward.domain.outlook.Ahead;
import dev.poleward.domain.outlook.ClubOfDogs;
import dev.poleward.domain.outlook.DogCase;
import dev.poleward.domain.outlook.LookingAhead;
import dev.poleward.domain.outlook.Outlook;
import dev.poleward.domain.outlook.OutlookQuestion;
import dev.poleward.domain.outlook.OutlookTerms;
import dev.poleward.domain.outlook.Quantiles;
import dev.poleward.domain.outlook.Reaching;
import dev.poleward.domain.outlook.Rhythm;
import dev.poleward.domain.outlook.RhythmAhead;
import dev.poleward.domain.outlook.Schooling;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.SplittableRandom;

/**
 * How often the limits of outlooks hold: a dog is looked ahead with, and then goes on itself.
 *
 * <p>For one thread.
 */
public final class Foreseen {

  private int ends;
  private int early;
  private int held;
  private int late;
  private int never;
  private double width;
  private int widths;
  private long nanos;
  private int outlooks;

  /** Looks ahead with so many dogs after so many weeks each. */
  public static Foreseen of(Kennel kennel, int dogs, int weeks, long seed) {
    Foreseen foreseen = new Foreseen();
    for (int dog = 0; dog < dogs; dog++) {
      foreseen.add(kennel, kennel.dog(seed + dog, weeks), "dog-" + dog, seed + 500_000 + dog);
    }
    return foreseen;
  }

  private void add(Kennel kennel, Schooling schooling, String name, long luck) {
    if (schooling.notebook().isFinished()) {
      return;
    }
    Instant last = schooling.reps().getLast().moment().time();
    LocalDate today = last.atZone(ZoneOffset.UTC).toLocalDate();
    Instant agedTo = today.plusDays(1).atStartOfDay(ZoneOffset.UTC).toInstant();
    DogCase seen = kennel.seen(schooling, name);
    long begun = System.nanoTime();
    Outlook outlook =
        LookingAhead.of(
            seen,
            new OutlookQuestion(today, agedTo, 2.0, Kennel.REPS, OutlookTerms.USUAL),
            () -> ClubOfDogs.UNKNOWN);
    nanos += System.nanoTime() - begun;
    outlooks++;
    if (outlook instanceof Outlook.Told told) {
      RhythmAhead ahead = told.rhythms().getLast();
      int[] truth =
          Ahead.sessionsToStages(
              schooling.dog(),
              schooling.notebook().copy(),
              new Rhythm(2, Kennel.REPS),
              agedTo,
              Duration.ofDays(OutlookTerms.USUAL.horizon().toDays()),
              new SplittableRandom(luck));
      for (int stage = 0; stage < truth.length; stage++) {
        add(ahead.stages().get(stage).reaching(), truth[stage]);
      }
    }
  }

  private void add(Reaching reaching, int truth) {
    if (truth == 0) {
      return;
    }
    Quantiles quantiles = reaching.quantiles();
    ends++;
    never += truth == Ahead.NEVER ? 1 : 0;
    int lower = quantiles.early().orElse(Ahead.NEVER);
    int upper = quantiles.late().orElse(Ahead.NEVER);
    if (truth < lower) {
      early++;
    } else if (truth > upper) {
      late++;
    } else {
      held++;
    }
    if (upper != Ahead.NEVER) {
      width += (double) upper / lower;
      widths++;
    }
  }

  /** Ends of stages that were foreseen. */
  public int ends() {
    return ends;
  }

  /** Share of them before the early limit. */
  public double early() {
    return (double) early / ends;
  }

  /** Share of them between the limits. */
  public double held() {
    return (double) held / ends;
  }

  /** Share of them after the late limit. */
  public double late() {
    return (double) late / ends;
  }

  /** Share of them that did not come within the horizon. */
  public double never() {
    return (double) never / ends;
  }

  /** The late limit over the early one, on average, where there is a late one. */
  public double width() {
    return width / widths;
  }

  /** Milliseconds that an outlook took, on average, once the machine was warm. */
  public double millis() {
    return nanos / 1e6 / outlooks;
  }
}
