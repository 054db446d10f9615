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

  /**
   * How much of the places that a session may have among the runs lies between two shares of them,
   * 0 to 1. One that comes with some of the runs, or like them never, may lie before or after any
   * of these. For dogs that are like the runs the average is {@code upper - lower}, whatever is
   * whole numbers (the non-randomised probability integral transform; Czado, Gneiting, Held 2009,
   * Biometrics 65:1254).
   *
   * @param session from 0, {@link Ahead#NEVER} for never
   */
  public double partBetween(double lower, double upper, int session) {
    double places = sessions.size() + 1.0;
    long before = sessions.stream().filter(each -> each < session).count();
    long notAfter = sessions.stream().filter(each -> each <= session).count();
    double from = before / places;
    double to = (notAfter + 1) / places;
    return Math.max(0, Math.min(to, upper) - Math.max(from, lower)) / (to - from);
  }

  /** Share of the runs that did not get there within the horizon. */
  public double unfinished() {
    long never = sessions.stream().filter(each -> each == Ahead.NEVER).count();
    return (double) never / sessions.size();
  }
}
