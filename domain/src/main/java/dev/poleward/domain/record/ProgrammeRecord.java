package dev.poleward.domain.record;

import dev.poleward.domain.event.ProgrammeEvent.ProgrammePublished;
import java.time.Instant;
import java.util.List;

/**
 * A programme as it stands in a view. Programme and version together name one document; the highest
 * version is in force.
 *
 * @param versions one for each version, ascending; never empty
 */
public record ProgrammeRecord(List<Registered<ProgrammePublished>> versions) {

  /** The version in force. */
  public Registered<ProgrammePublished> inForce() {
    return versions.getLast();
  }

  /**
   * The version in force at an instant: the highest of those published by then, or the first of all
   * when none was.
   */
  public Registered<ProgrammePublished> inForceAt(Instant time) {
    return versions.stream()
        .filter(version -> !version.standing().time().isAfter(time))
        .reduce((_, later) -> later)
        .orElse(versions.getFirst());
  }
}
