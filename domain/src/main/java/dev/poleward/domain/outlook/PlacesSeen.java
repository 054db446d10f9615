package dev.poleward.domain.outlook;

/**
 * What reps show of where a dog stands, apart from what was taken for granted before the first. A
 * chance alone does not say: with six places a dog stands at the third or further with a chance of
 * two thirds before it has run at all. So two things are asked of "the dog is beyond this stage":
 * that it is likely now, and that it was the reps that made it so (the Bayes factor). Immutable.
 */
final class PlacesSeen {

  /** A stage is ruled out when the dog is beyond it with at least this chance [C]. */
  static final double BEYOND = 0.7;

  /**
   * The reps tell something when they make odds three times what they were, or a third: from here
   * evidence is called positive (Kass, Raftery 1995, JASA 90:773 [M]).
   */
  static final double MOVED = 3;

  private final double[] before;
  private final double[] after;

  private PlacesSeen(double[] before, double[] after) {
    this.before = before;
    this.after = after;
  }

  static PlacesSeen of(WeighedPanel before, WeighedPanel after) {
    return of(before.places(), after.places());
  }

  /** Of the chances of the same places, which sum to 1. */
  static PlacesSeen of(double[] before, double[] after) {
    return new PlacesSeen(before.clone(), after.clone());
  }

  /** The chance that the dog stands there. */
  double chance(int place) {
    return after[place];
  }

  /** The chance that the dog stands there or further on. */
  double reach(int place) {
    return sum(after, place, after.length);
  }

  /**
   * The odds that the dog is beyond a stage, as a multiple of what they were before the first rep;
   * 1 where no dog of the panel came beyond it.
   */
  double moved(int stage) {
    double beyond = sum(before, stage + 1, before.length);
    return beyond == 0
        ? 1
        : reach(stage + 1) * sum(before, 0, stage + 1) / (sum(after, 0, stage + 1) * beyond);
  }

  /** Whether the reps moved the odds of being beyond any stage, be it up or down. */
  boolean areToldApart() {
    for (int stage = 0; stage < after.length - 1; stage++) {
      double moved = moved(stage);
      if (moved >= MOVED || moved <= 1 / MOVED) {
        return true;
      }
    }
    return false;
  }

  /** Whether the reps show that the dog is beyond a stage and beyond each before it. */
  boolean areRuledOutUpTo(int stage) {
    for (int each = 0; each <= stage; each++) {
      if (reach(each + 1) < BEYOND || moved(each) < MOVED) {
        return false;
      }
    }
    return true;
  }

  /** The earliest stage that is not ruled out; the last where all are. */
  int earliestLeft() {
    int stage = 0;
    while (stage < after.length - 2 && areRuledOutUpTo(stage)) {
      stage++;
    }
    return stage;
  }

  private static double sum(double[] chances, int from, int to) {
    double sum = 0;
    for (int i = from; i < to; i++) {
      sum += chances[i];
    }
    return sum;
  }
}
