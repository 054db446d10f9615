package dev.poleward.domain.outlook;

import dev.poleward.domain.learner.Expected;
import dev.poleward.domain.learner.SimulatedDog;
import dev.poleward.domain.learner.Temper;
import java.util.Arrays;
import java.util.List;

/**
 * A dog's record as a row of yes and no: was the entry made, and was the rest passed once it was.
 * Replays it with dogs of any temper and says what each had expected, rep by rep, before it saw the
 * outcome. For one thread.
 */
final class Replay {

  /**
   * How often something else decides than the model knows of, either way [C]. Without it a single
   * rep that a model holds for impossible would outweigh all others.
   */
  private static final double LAPSE = 0.01;

  private final List<SeenRep> reps;
  private final boolean[] yes;

  /**
   * A record.
   *
   * @param reps ascending in time
   */
  Replay(List<SeenRep> reps) {
    this.reps = reps;
    boolean[] all = new boolean[2 * reps.size()];
    int at = 0;
    for (SeenRep rep : reps) {
      if (rep.isEvidence()) {
        all[at++] = rep.entryMade();
        if (rep.entryMade()) {
          all[at++] = rep.isClean();
        }
      }
    }
    this.yes = Arrays.copyOf(all, at);
  }

  /** Reps that are lived through. */
  int reps() {
    return reps.size();
  }

  /** Yes and no together. */
  int size() {
    return yes.length;
  }

  boolean yes(int at) {
    return yes[at];
  }

  /** What a dog of that temper expects, in the order of {@link #yes}. */
  double[] expected(Temper temper) {
    return expected(new SimulatedDog(temper));
  }

  /** The same of a dog before its first rep, which stands after the last one afterwards. */
  double[] expected(SimulatedDog dog) {
    double[] chances = new double[yes.length];
    int at = 0;
    for (SeenRep rep : reps) {
      Expected expected = rep.lived(dog);
      if (rep.isEvidence()) {
        chances[at++] = lapsing(expected.entry());
        if (rep.entryMade()) {
          chances[at++] = lapsing(expected.through());
        }
      }
    }
    return chances;
  }

  private static double lapsing(double chance) {
    return LAPSE + (1 - 2 * LAPSE) * chance;
  }

  /** The logarithm of the chance that it went as it did. */
  double logLikelihood(double[] expected) {
    double sum = 0;
    for (int at = 0; at < yes.length; at++) {
      sum += StrictMath.log(yes[at] ? expected[at] : 1 - expected[at]);
    }
    return sum;
  }
}
