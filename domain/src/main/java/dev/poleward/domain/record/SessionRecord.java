package dev.poleward.domain.record;

import dev.poleward.domain.event.SessionEvent.SessionAttended;
import dev.poleward.domain.event.SessionEvent.SessionClosed;
import dev.poleward.domain.event.SessionEvent.SessionOpened;
import dev.poleward.domain.event.SessionEvent.SetupChanged;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A session as it stands in a view.
 *
 * @param setups setups that count, ascending by (time, id)
 * @param attendance the latest word on each dog, ascending by dog
 * @param closed the first closing note, if any
 */
public record SessionRecord(
    Registered<SessionOpened> opened,
    List<Fact<SetupChanged>> setups,
    List<Fact<SessionAttended>> attendance,
    @Nullable Fact<SessionClosed> closed) {

  /** Which set of poles a setup is about. */
  public static String poleSetOf(SetupChanged setup) {
    return SessionSetups.poleSetOf(setup);
  }
}
