package dev.poleward.domain.outlook;

import java.util.Arrays;
import java.util.List;

/**
 * In which session each of the runs got there: ascending, {@link Ahead#NEVER} for those that did
 * not within the horizon.
 *
 * @param sessions never empty
 */
public record Reaching(List<Integer> sessions) {

  /** Refuses none, and keeps them from changing. */
  public Reaching {
    if (sessions.isEmpty()) {
      throw new IllegalArgumentException("no runs");
    }
    sessions = sessions.stream().sorted().toList();
  }

  static Reaching of(int[] sessions) {
    return new Reaching(Arrays.stream(sessions).boxed().toList());
  }

  /** Whether it was there before anything was simulated. */
  public boolean isReached() {
    return sessions.getLast() == 0;
  }

  /** When. */
  public Quantiles quantiles() {
    return Quantiles.of(sessions.stream().mapToInt(Integer::intValue).toArray());
  }

  /** How many runs got there by that session. */
  public int runsBy(int session) {
    return (int) sessions.stream().filter(each -> each <= session && each != Ahead.NEVER).count();
  }

  /** Share of the runs that did not get there within the horizon. */
  public double unfinished() {
    long never = sessions.stream().filter(each -> each == Ahead.NEVER).count();
    return (double) never / sessions.size();
  }
}
