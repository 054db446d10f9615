package dev.poleward.domain.care;

import dev.poleward.domain.event.DogEvent.DogRested;
import dev.poleward.domain.record.DogRecord;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.PlacedRep;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.Period;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Looks at a dog before its next session. For one thread. */
public final class CareReview {

  private static final int POLES_MAX = 24;
  private static final int SESSIONS_USUAL_MAX = 2;
  private static final Duration WEEK = Duration.ofDays(7);

  /** Part of the usual load with which a dog comes back from a rest [C]. */
  private static final double EASED_FROM = 1.0 / 3;

  private final DogRecord dog;
  private final CareLimits limits;
  private final Instant at;
  private final ZoneId zone;
  private final LocalDate day;
  private final List<CareNote> notes = new ArrayList<>();

  private CareReview(DogRecord dog, CareLimits limits, Instant at, ZoneId zone) {
    this.dog = dog;
    this.limits = limits;
    this.at = at;
    this.zone = zone;
    this.day = at.atZone(zone).toLocalDate();
  }

  /**
   * What the dog may be asked for.
   *
   * @param reps of the dog, ascending by (time, id)
   * @param at when the session is to be
   * @param zone of the club's days
   */
  public static CarePermit of(
      DogRecord dog, List<PlacedRep> reps, CareLimits limits, Instant at, ZoneId zone) {
    return new CareReview(dog, limits, at, zone).permit(reps);
  }

  private CarePermit permit(List<PlacedRep> reps) {
    Fact<DogRested> rest = dog.rested();
    boolean young = isYoung();
    Load week = Load.of(reps, at.minus(WEEK), at);
    int gaps = Math.min(young ? limits.gapsYoung() : limits.gapsPerSession(), leftOf(week));
    double part = rest == null ? 1 : partAfter(rest);
    if (week.sessions() > SESSIONS_USUAL_MAX) {
      notes.add(CareNotes.manySessions(week.sessions()));
    }
    notes.add(CareNotes.alternateSides());
    notes.sort(Comparator.comparing(CareNote::severity).reversed());
    boolean stopped = notes.getFirst().severity() == Severity.STOP;
    return new CarePermit(
        young ? limits.polesYoung() : POLES_MAX,
        stopped ? 0 : (int) (part * gaps),
        stopped || young ? 0 : (int) (part * limits.sharpBendsPerSession()),
        notes);
  }

  private int leftOf(Load week) {
    int left = limits.gapsPerWeek() - week.gaps();
    if (left <= 0) {
      notes.add(CareNotes.weekIsFull(week.gaps(), limits.gapsPerWeek()));
    }
    return Math.max(0, left);
  }

  private boolean isYoung() {
    if (dog.cleared() != null && !isAfterClearance(dog.rested())) {
      return false;
    }
    LocalDate born = dog.traits().born();
    if (born == null) {
      notes.add(CareNotes.ageUnknown());
      return true;
    }
    if (Period.between(born, day).toTotalMonths() < limits.ageMonths()) {
      notes.add(CareNotes.young(limits.ageMonths()));
      return true;
    }
    return false;
  }

  private boolean isAfterClearance(@Nullable Fact<DogRested> rest) {
    return rest != null && dog.cleared() != null && rest.time().isAfter(dog.cleared().time());
  }

  /** Part of the load that a dog may bear after that rest; notes it while it is resting. */
  private double partAfter(Fact<DogRested> rest) {
    LocalDate over = over(rest);
    if (over == null || day.isBefore(over)) {
      notes.add(CareNotes.resting(rest.event().reason(), rest.event().until()));
      return 0;
    }
    long since = ChronoUnit.DAYS.between(over, day);
    if (since >= limits.easeBackDays()) {
      return 1;
    }
    double part = EASED_FROM + (1 - EASED_FROM) * since / limits.easeBackDays();
    notes.add(CareNotes.easingBack((int) Math.round(100 * part)));
    return part;
  }

  /**
   * The first day after the rest: when it was cleared since, or what was said; null for neither.
   */
  private @Nullable LocalDate over(Fact<DogRested> rest) {
    if (dog.cleared() != null && dog.cleared().time().isAfter(rest.time())) {
      return dog.cleared().time().atZone(zone).toLocalDate();
    }
    return rest.event().until();
  }
}
