package dev.poleward.domain.judgement;

import dev.poleward.domain.programme.ProgrammeInForce;
import dev.poleward.domain.programme.ProgrammesFollowed;
import dev.poleward.domain.programme.Stage;
import dev.poleward.domain.record.PlacedRep;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A dog's whole record, read under what it followed when.
 *
 * @param reading where that leads to
 * @param inForce what is followed at the end
 */
public record StandingHistory(StandingReading reading, ProgrammeInForce inForce) {

  /**
   * Reads a record.
   *
   * @param reps of one dog, ascending by (time, id)
   * @param until what is followed then is what the answer is about; null for the latest
   */
  public static StandingHistory of(
      List<PlacedRep> reps, ProgrammesFollowed followed, @Nullable Instant until) {
    StandingReading reading = null;
    ProgrammeInForce inForce = null;
    int next = 0;
    for (ProgrammesFollowed.Period period : followed.periods()) {
      Instant from = period.from();
      if (from != null && until != null && from.isAfter(until)) {
        break;
      }
      while (reading != null
          && from != null
          && next < reps.size()
          && reps.get(next).moment().time().isBefore(from)) {
        reading.read(reps.get(next));
        next++;
      }
      inForce = period.inForce();
      reading = under(reading, inForce);
    }
    if (reading == null || inForce == null) {
      throw new IllegalStateException("something is always followed");
    }
    reps.subList(next, reps.size()).forEach(reading::read);
    return new StandingHistory(reading, inForce);
  }

  /** A document with faults can be no measure: the one before stays in use. */
  private static StandingReading under(
      @Nullable StandingReading reading, ProgrammeInForce inForce) {
    return switch (inForce) {
      case ProgrammeInForce.Unassigned it ->
          reading == null
              ? StandingReading.begun(it.programme(), null)
              : reading.under(it.programme(), null);
      case ProgrammeInForce.Assigned it -> {
        String start = it.startStage().map(Stage::id).orElse(null);
        yield reading == null
            ? StandingReading.begun(it.programme(), start)
            : reading.under(it.programme(), start);
      }
      case ProgrammeInForce.Unreadable it ->
          reading == null
              ? StandingReading.begun(new ProgrammeInForce.Unassigned().programme(), null)
              : reading;
    };
  }
}
