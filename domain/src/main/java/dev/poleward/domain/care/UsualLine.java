package dev.poleward.domain.care;

import dev.poleward.domain.layout.Setup;
import dev.poleward.domain.record.PlacedRep;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The longest line that a dog is used to: of the five weeks that end with its last run, for weeks
 * without a run make it used to no more. Void reps are counted: the dog ran them.
 *
 * @param poles the most that stood, from 2
 * @param lastRun the day of it
 */
public record UsualLine(int poles, LocalDate lastRun) {

  private static final int DAYS = LoadSeen.WEEK * (1 + LoadSeen.WEEKS_BEFORE);

  /** Null for a dog that never ran, or where nobody knows how many poles stood. */
  static @Nullable UsualLine of(List<PlacedRep> reps, CareQuestion question) {
    Instant end = question.end();
    LocalDate lastRun = null;
    Instant begin = end;
    int poles = 0;
    for (PlacedRep rep : reps.reversed()) {
      Instant time = rep.moment().time();
      Setup setup = rep.setup();
      if (setup != null && time.isBefore(end)) {
        if (lastRun == null) {
          lastRun = time.atZone(question.zone()).toLocalDate();
          begin = lastRun.minusDays(DAYS - 1L).atStartOfDay(question.zone()).toInstant();
        }
        if (time.isBefore(begin)) {
          break;
        }
        poles = Math.max(poles, setup.poles());
      }
    }
    return lastRun == null ? null : new UsualLine(poles, lastRun);
  }

  /** Whether a rep on a line asks for more than twice the gaps. */
  boolean isFarExceededBy(int more) {
    return more - 1 > 2 * (poles - 1);
  }
}
