package dev.poleward.domain.report;

import dev.poleward.domain.event.SessionEvent.SetupChanged;
import dev.poleward.domain.layout.Setup;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.PlacedRep;
import dev.poleward.domain.record.SessionRecord;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What stood on a set of poles until something else did. The same setup told again goes on
 * standing.
 *
 * @param since the setup with which it began
 * @param poleSet where
 * @param until when it gave way to another, or the session was over; null where nobody knows
 * @param reps run on it, of any kind
 */
public record StoodSetup(
    Fact<SetupChanged> since, String poleSet, @Nullable Instant until, int reps) {

  /** What stood. */
  public Setup setup() {
    return since.event().setup();
  }

  /** How long it stood; empty where nobody knows. */
  public Optional<Duration> stood() {
    return Optional.ofNullable(until).map(end -> Duration.between(since.time(), end));
  }

  /**
   * All that stood in a session, in the order in which it was set up.
   *
   * @param reps of the session
   */
  static List<StoodSetup> of(SessionRecord session, List<PlacedRep> reps) {
    List<Begun> all = new ArrayList<>();
    Map<String, Begun> standing = new HashMap<>();
    for (Fact<SetupChanged> setup : session.setups()) {
      String poleSet = SessionRecord.poleSetOf(setup.event());
      Begun before = standing.get(poleSet);
      if (before != null && before.first.event().setup().equals(setup.event().setup())) {
        before.told.add(setup.id());
        continue;
      }
      if (before != null) {
        before.until = setup.time();
      }
      Begun begun = new Begun(setup, poleSet);
      standing.put(poleSet, begun);
      all.add(begun);
    }
    Instant over = over(session, reps);
    for (Begun last : standing.values()) {
      last.until = over != null && over.isAfter(last.first.time()) ? over : null;
    }
    Map<String, Integer> repsOn = new HashMap<>();
    reps.forEach(
        rep -> repsOn.merge(Objects.requireNonNullElse(rep.setupEvent(), ""), 1, Integer::sum));
    return all.stream().map(each -> each.done(repsOn)).toList();
  }

  /** The closing note or the last rep, whichever came later; null without either. */
  private static @Nullable Instant over(SessionRecord session, List<PlacedRep> reps) {
    Instant closed = session.closed() == null ? null : session.closed().time();
    Instant lastRep = reps.isEmpty() ? null : reps.getLast().moment().time();
    if (closed == null || lastRep == null) {
      return closed == null ? lastRep : closed;
    }
    return closed.isAfter(lastRep) ? closed : lastRep;
  }

  /** What stands until something else does. For one thread. */
  private static final class Begun {

    private final Fact<SetupChanged> first;
    private final String poleSet;
    private final List<String> told = new ArrayList<>();
    private @Nullable Instant until;

    Begun(Fact<SetupChanged> first, String poleSet) {
      this.first = first;
      this.poleSet = poleSet;
      this.told.add(first.id());
    }

    StoodSetup done(Map<String, Integer> repsOn) {
      int reps = told.stream().mapToInt(event -> repsOn.getOrDefault(event, 0)).sum();
      return new StoodSetup(first, poleSet, until, reps);
    }
  }
}
