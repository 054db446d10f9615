package dev.poleward.domain.care;

import dev.poleward.domain.event.DogEvent.DogRested;
import dev.poleward.domain.record.DogRecord;
import dev.poleward.domain.record.Fact;
import java.time.LocalDate;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;

/** Whether a dog rests: it does not run poles while it does. */
public final class RestOfDog {

  private RestOfDog() {}

  /** Whether the latest rest is not over on a day of the club. */
  public static boolean isOn(DogRecord dog, LocalDate day, ZoneId zone) {
    if (dog.rested() == null) {
      return false;
    }
    LocalDate over = over(dog, zone);
    return over == null || day.isBefore(over);
  }

  /**
   * The first day after the latest rest: when the dog was cleared since, or what was said; null for
   * neither, and for a dog that was never rested.
   */
  static @Nullable LocalDate over(DogRecord dog, ZoneId zone) {
    Fact<DogRested> rest = dog.rested();
    if (rest == null) {
      return null;
    }
    return dog.cleared() != null && dog.cleared().time().isAfter(rest.time())
        ? dog.cleared().time().atZone(zone).toLocalDate()
        : rest.event().until();
  }
}
