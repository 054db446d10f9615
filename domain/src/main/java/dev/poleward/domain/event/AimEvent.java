package dev.poleward.domain.event;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What a dog is to do, wants to reach, and did elsewhere. */
public sealed interface AimEvent extends TrainingEvent {

  /** The dog that is spoken of. */
  String dog();

  /** Drills to do at home, as documents, until a day. */
  record HomeworkSet(String dog, List<Map<String, Object>> drills, LocalDate due)
      implements AimEvent {}

  /** A stage, or the whole programme when absent, to be reached by a day. */
  record GoalSet(String dog, LocalDate by, @Nullable String stage) implements AimEvent {}

  /**
   * The poles in a trial.
   *
   * @param seconds time in the poles
   * @param angle entry angle in degrees
   */
  record TrialRun(
      String dog,
      int poles,
      Outcome outcome,
      @Nullable Integer atPole,
      @Nullable Double seconds,
      @Nullable Double angle)
      implements AimEvent {}

  /** Exercise of another kind that counts as load. */
  record LoadNoted(String dog, String kind, double minutes) implements AimEvent {}
}
