package dev.poleward.domain.report;

import dev.poleward.domain.layout.Setup;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What stood in the sessions of a class, and for how long.
 *
 * @param setUp how often something was set up, the first of each session and set of poles too
 * @param changes how often it took the place of something else
 * @param stood how long, over all sets of poles, as far as it is known
 * @param unknown of so many nobody knows until when they stood
 * @param setups what stood longest first
 */
public record EquipmentUse(
    int setUp, int changes, Duration stood, int unknown, List<OfSetup> setups) {

  /** Keeps the setups from changing. */
  public EquipmentUse {
    setups = List.copyOf(setups);
  }

  /**
   * One setup, wherever it stood.
   *
   * @param sessions in which it stood
   * @param stood how long, as far as it is known
   * @param unknown so often nobody knows until when
   * @param reps run on it, of any kind
   */
  public record OfSetup(Setup setup, int sessions, Duration stood, int unknown, int reps) {}

  /** Sums of one setup. For one thread. */
  private static final class Sum {

    private final Set<String> sessions = new HashSet<>();
    private Duration stood = Duration.ZERO;
    private int unknown;
    private int reps;

    void add(String session, StoodSetup setup) {
      sessions.add(session);
      stood = stood.plus(setup.stood().orElse(Duration.ZERO));
      unknown += setup.stood().isEmpty() ? 1 : 0;
      reps += setup.reps();
    }

    OfSetup done(Setup setup) {
      return new OfSetup(setup, sessions.size(), stood, unknown, reps);
    }
  }

  static EquipmentUse of(List<ClassSession> sessions) {
    Map<Setup, Sum> sums = new LinkedHashMap<>();
    for (ClassSession session : sessions) {
      for (StoodSetup setup : session.setups()) {
        sums.computeIfAbsent(setup.setup(), _ -> new Sum()).add(session.session(), setup);
      }
    }
    List<OfSetup> setups = new ArrayList<>();
    sums.forEach((setup, sum) -> setups.add(sum.done(setup)));
    setups.sort(Comparator.comparing(OfSetup::stood).thenComparing(OfSetup::reps).reversed());
    return new EquipmentUse(
        sessions.stream().mapToInt(session -> session.setups().size()).sum(),
        sessions.stream().mapToInt(ClassSession::changes).sum(),
        setups.stream().map(OfSetup::stood).reduce(Duration.ZERO, Duration::plus),
        setups.stream().mapToInt(OfSetup::unknown).sum(),
        setups);
  }
}
