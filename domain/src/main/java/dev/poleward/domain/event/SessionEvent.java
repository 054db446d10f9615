package dev.poleward.domain.event;

import dev.poleward.domain.layout.Setup;
import org.jspecify.annotations.Nullable;

/** A few minutes on the ground: opened, attended, set up, closed. */
public sealed interface SessionEvent extends TrainingEvent {

  /** The session that is spoken of. */
  String session();

  /**
   * A session began.
   *
   * @param group the class it is of, if any
   * @param temperature air temperature, degrees Celsius
   * @param humidity relative humidity, percent
   */
  record SessionOpened(
      String session,
      @Nullable String ground,
      @Nullable String group,
      @Nullable Double temperature,
      @Nullable Double humidity,
      @Nullable String surface)
      implements SessionEvent {}

  record SessionAttended(String session, String dog, boolean present) implements SessionEvent {}

  /** A note, not a fence: reps that come later still count. */
  record SessionClosed(String session) implements SessionEvent {}

  /**
   * From this moment this stands.
   *
   * @param poleSet which set of poles, where two stand; {@code main} when absent
   */
  record SetupChanged(String session, Setup setup, @Nullable String poleSet)
      implements SessionEvent {}
}
