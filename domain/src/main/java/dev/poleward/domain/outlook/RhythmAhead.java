package dev.poleward.domain.outlook;

import dev.poleward.domain.programme.Stage;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;

/**
 * What lies ahead at one rhythm.
 *
 * @param isOwn whether it is the dog's own
 * @param horizon how far it was looked
 * @param stages those on the way to the end, in order
 * @param programme the end of all of them
 */
public record RhythmAhead(
    Rhythm rhythm, boolean isOwn, Duration horizon, List<StageAhead> stages, Reaching programme) {

  /** When a stage is done. */
  public record StageAhead(Stage stage, Reaching reaching) {}

  /** Keeps the stages from changing. */
  public RhythmAhead {
    stages = List.copyOf(stages);
  }

  /** The day on which a session falls, the first a whole interval after {@code from}. */
  public LocalDate dayOf(int session, LocalDate from) {
    return from.plusDays((long) Math.ceil(7 * rhythm.weeks(session)));
  }

  /** The last session that falls on that day or before, from 0. */
  int sessionsBy(LocalDate day, LocalDate from) {
    long days = day.toEpochDay() - from.toEpochDay();
    return days < 0 ? -1 : (int) Math.floor(days / 7.0 * rhythm.sessionsPerWeek() + 1e-9);
  }

  /** How many runs are at the end of a stage, or of the programme for null, by the end of a day. */
  public OptionalInt runsBy(@Nullable String stage, LocalDate day, LocalDate from) {
    int session = sessionsBy(day, from);
    if (stage == null) {
      return OptionalInt.of(programme.runsBy(session));
    }
    return stages.stream()
        .filter(each -> each.stage().id().equals(stage))
        .mapToInt(each -> each.reaching().runsBy(session))
        .findFirst();
  }
}
