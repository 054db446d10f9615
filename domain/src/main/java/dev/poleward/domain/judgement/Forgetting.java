package dev.poleward.domain.judgement;

import java.util.List;

/**
 * How a dog forgets, from its own returns and from those of its club, and when what it knows is
 * due.
 *
 * @param retention the likeliest given both
 * @param returns how many of its own were read
 * @param club what was expected of it
 * @param dueAfterDays after how many days without practice what is solid is due, 0 to {@link
 *     #DUE_DAYS_MAX}
 * @param clubDueAfterDays the same of a dog of the club of which nothing is known
 */
public record Forgetting(
    Retention retention,
    int returns,
    ClubRetention club,
    double dueAfterDays,
    double clubDueAfterDays) {

  /** However well a dog keeps what it knows, after so long a trainer looks [C]. */
  public static final double DUE_DAYS_MAX = 60;

  private static final double OWN_SHARE_DAYS = 30;

  /**
   * Fits a dog.
   *
   * @param returns of its own, as they came
   * @param floor share of clean reps below which a drill is due, above 0 and below 1
   */
  static Forgetting of(List<TimedReturn> returns, ClubRetention club, double floor) {
    List<Return> read = Returns.latest(returns);
    Retention retention = Retention.fitted(read, club.expected());
    return new Forgetting(
        retention, read.size(), club, due(retention, floor), due(club.expected(), floor));
  }

  private static double due(Retention retention, double floor) {
    return Math.min(DUE_DAYS_MAX, retention.dueAfterDays(floor).orElse(DUE_DAYS_MAX));
  }

  /**
   * How much of what is held of it after {@value #OWN_SHARE_DAYS} days without practice comes from
   * its own returns, 0 to 1: by how much they lessen the variance of the logit there.
   */
  public double ownShare() {
    double expected = club.expected().varianceAfter(OWN_SHARE_DAYS);
    return Math.clamp(1 - retention.varianceAfter(OWN_SHARE_DAYS) / expected, 0, 1);
  }
}
