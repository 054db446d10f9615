package dev.poleward.domain.learner;

import dev.poleward.domain.learner.Temper.Memory;

/**
 * A row of skills of one kind, in logits: where each began, where it stands, how far it ever came
 * and where it ends. For one thread.
 *
 * <p>A skill never falls by practice. Without practice it fades towards what is kept of the best it
 * has been, and below the best it comes back quicker than it was learned.
 */
final class Skills {

  private final double[] start;
  private final double[] ceiling;
  private final double[] now;
  private final double[] best;

  /** Skills that stand where they begin; a ceiling below the start is the start. */
  Skills(double[] start, double[] ceiling) {
    this.start = start.clone();
    this.ceiling = ceiling.clone();
    for (int i = 0; i < start.length; i++) {
      this.ceiling[i] = Math.max(start[i], ceiling[i]);
    }
    this.now = start.clone();
    this.best = start.clone();
  }

  private Skills(Skills other) {
    // Where it began and where it ends never changes: both may share it.
    this.start = other.start;
    this.ceiling = other.ceiling;
    this.now = other.now.clone();
    this.best = other.best.clone();
  }

  Skills copy() {
    return new Skills(this);
  }

  int count() {
    return now.length;
  }

  double at(int place) {
    return now[place];
  }

  /** How much of the way from its start to its ceiling a skill has come, 0 to 1. */
  double shareOfTheWay(int place) {
    double way = ceiling[place] - start[place];
    return way > 0 ? (now[place] - start[place]) / way : 1;
  }

  /**
   * What a rep would teach that was never known.
   *
   * @param share of what is left to the ceiling, 0 to 1
   */
  double discovery(int place, double share) {
    return share * (ceiling[place] - now[place]);
  }

  /**
   * A rep: what was known comes back in part, and what was discovered is added, up to the ceiling.
   *
   * @param share of what is left that a rep teaches for the first time, 0 to 1
   * @param discovered logits that were never known, here or where the rep was run
   */
  void practise(int place, double share, double discovered, Memory memory) {
    double back = Math.min(1, share * memory.savings()) * (best[place] - now[place]);
    now[place] = Math.min(ceiling[place], now[place] + back + discovered);
    best[place] = Math.max(best[place], now[place]);
  }

  /**
   * Time passes without practice.
   *
   * @param left part of what can fade that has not, 0 to 1
   */
  void fade(double left, Memory memory) {
    for (int i = 0; i < now.length; i++) {
      double kept = start[i] + memory.kept() * (best[i] - start[i]);
      if (now[i] > kept) {
        now[i] = kept + (now[i] - kept) * left;
      }
    }
  }
}
