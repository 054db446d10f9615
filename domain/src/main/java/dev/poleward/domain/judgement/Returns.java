package dev.poleward.domain.judgement;

import java.util.List;

/** Which returns after days without practice say something of forgetting. */
final class Returns {

  /** A return within less says how the dog is today, not what it has kept [C]. */
  static final double DAYS_AWAY_MIN = 2;

  /** So many of the latest are looked at: dogs change. */
  static final int MAX = 300;

  private Returns() {}

  static List<Return> latest(List<TimedReturn> all) {
    return all.subList(Math.max(0, all.size() - MAX), all.size()).stream()
        .map(TimedReturn::what)
        .toList();
  }
}
