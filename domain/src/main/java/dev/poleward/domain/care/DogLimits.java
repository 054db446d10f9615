package dev.poleward.domain.care;

import dev.poleward.domain.event.DogEvent.DogCleared;
import dev.poleward.domain.record.DogRecord;
import dev.poleward.domain.record.Fact;
import java.time.LocalDate;
import java.time.Period;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What a club's limits come to for one dog on one day.
 *
 * @param limits the club's, and within them what the dog was cleared up to
 * @param age what the dog's age makes of them
 */
public record DogLimits(CareLimits limits, Age age) {

  /** What a dog's age says of what it may do. */
  public enum Age {
    /** Old enough, or cleared. */
    GROWN,
    /** Below the club's age and not cleared. */
    YOUNG,
    /** Nobody said when it was born, and it is not cleared: treated as a young one. */
    UNKNOWN
  }

  /** The limits that hold for a dog on a day of its club. */
  public static DogLimits of(DogRecord dog, CareLimits club, LocalDate day) {
    Map<String, Object> clearance = clearance(dog);
    return new DogLimits(
        clearance == null ? club : club.within(clearance), age(dog, club.ageMonths(), day));
  }

  private static Age age(DogRecord dog, int months, LocalDate day) {
    if (dog.cleared() != null && !isRestedAfterClearance(dog)) {
      return Age.GROWN;
    }
    LocalDate born = dog.traits().born();
    if (born == null) {
      return Age.UNKNOWN;
    }
    return Period.between(born, day).toTotalMonths() < months ? Age.YOUNG : Age.GROWN;
  }

  /** What the dog is cleared up to; null when it was not, when all is allowed, or rested since. */
  static @Nullable Map<String, Object> clearance(DogRecord dog) {
    Fact<DogCleared> cleared = dog.cleared();
    return cleared == null || isRestedAfterClearance(dog) ? null : cleared.event().limits();
  }

  private static boolean isRestedAfterClearance(DogRecord dog) {
    return dog.rested() != null
        && dog.cleared() != null
        && dog.rested().time().isAfter(dog.cleared().time());
  }

  /** Whether it may do no more than a young one. */
  public boolean isAsYoung() {
    return age != Age.GROWN;
  }

  /** The most poles that may stand. */
  public int poles() {
    return isAsYoung() ? Math.min(limits.polesYoung(), limits.poles()) : limits.poles();
  }

  /** Most gaps passed in a session. */
  public int gapsPerSession() {
    return isAsYoung()
        ? Math.min(limits.gapsYoung(), limits.gapsPerSession())
        : limits.gapsPerSession();
  }

  /** Most entries from beyond {@link Load#SHARP_BEND_DEGREES} degrees in a session. */
  public int sharpBendsPerSession() {
    return isAsYoung() ? 0 : limits.sharpBendsPerSession();
  }

  /** Most gaps passed in seven days. */
  public int gapsPerWeek() {
    return limits.gapsPerWeek();
  }
}
