package dev.poleward.domain.care;

import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.record.PlacedRep;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Days on which a dog ran no poles, though nobody said that it rests. Void reps are no run of its
 * own.
 *
 * @param lastRun the last day on which it ran before
 * @param back the day on which it ran again; the day that is asked about where it has not yet
 */
record LongBreak(LocalDate lastRun, LocalDate back) {

  /**
   * The latest that a dog may still be coming back from. Days up to the end of a rest are the
   * rest's: what follows it is long only by itself.
   *
   * @param reps ascending by (time, id); those after the day are passed over
   * @param restOver the first day after the latest rest; null without one
   * @param limits what holds for the dog
   * @return null where there is none, and for a dog that never ran
   */
  static @Nullable LongBreak latest(
      List<PlacedRep> reps,
      @Nullable LocalDate restOver,
      CareQuestion question,
      CareLimits limits) {
    Instant end = question.end();
    LocalDate back = question.day();
    for (PlacedRep rep : reps.reversed()) {
      if (rep.outcome() != Outcome.VOID && rep.moment().time().isBefore(end)) {
        LocalDate ran = rep.moment().time().atZone(question.zone()).toLocalDate();
        if (ChronoUnit.DAYS.between(begun(ran, restOver, back), back) >= limits.breakDays()) {
          return new LongBreak(ran, back);
        }
        if (ChronoUnit.DAYS.between(ran, question.day()) >= limits.easeBackDays()) {
          return null;
        }
        back = ran;
      }
    }
    return null;
  }

  private static LocalDate begun(LocalDate ran, @Nullable LocalDate restOver, LocalDate back) {
    return restOver != null && restOver.isAfter(ran) && !restOver.isAfter(back) ? restOver : ran;
  }

  /** From its last run before to its return. */
  long days() {
    return ChronoUnit.DAYS.between(lastRun, back);
  }
}
