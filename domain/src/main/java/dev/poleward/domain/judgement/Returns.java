package dev.poleward.domain.judgement;

import java.util.List;

/** Which returns after days without practice say something of forgetting. */
final class Returns {

  /** A return within less says how the dog is today, not what it has kept [C]. */
  static final double DAYS_AWAY_MIN = 2;

  /** However well a dog keeps what it knows, after so long a trainer looks [C]. */
  static final double DUE_DAYS_MAX = 60;

  /** So many of the latest are looked at: dogs change. */
  static final int MAX = 300;

  private Returns() {}

  static List<Return> latest(List<Return> all) {
    return all.subList(Math.max(0, all.size() - MAX), all.size());
  }
}
