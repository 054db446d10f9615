package dev.poleward.domain.record;

import dev.poleward.domain.event.SessionEvent.SetupChanged;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The setups of one session, in order, and which of them was in force when. */
final class SessionSetups {

  /** The pole set meant where none is named. */
  static final String MAIN = "main";

  private final List<Fact<SetupChanged>> ascending;

  /**
   * Keeps the setups.
   *
   * @param ascending setups that count, ascending by (time, id)
   */
  SessionSetups(List<Fact<SetupChanged>> ascending) {
    this.ascending = ascending;
  }

  /** The latest setup of that pole set up to that instant, the instant itself included. */
  @Nullable Fact<SetupChanged> inForce(String poleSet, Instant time) {
    for (int i = ascending.size() - 1; i >= 0; i--) {
      Fact<SetupChanged> setup = ascending.get(i);
      if (!setup.time().isAfter(time) && poleSet.equals(poleSetOf(setup.event()))) {
        return setup;
      }
    }
    return null;
  }

  static String poleSetOf(SetupChanged setup) {
    return setup.poleSet() == null ? MAIN : setup.poleSet();
  }
}
