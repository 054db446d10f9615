package dev.poleward.load.figures;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** A few repetitions of one figure. For one thread. */
public final class Spread {

  private final List<Double> values = new ArrayList<>();

  /** Adds a repetition. */
  public void add(double value) {
    values.add(value);
  }

  /** The middle one, or the mean of the two in the middle. */
  public double median() {
    List<Double> sorted = values.stream().sorted().toList();
    int half = sorted.size() / 2;
    return sorted.size() % 2 == 1
        ? sorted.get(half)
        : (sorted.get(half - 1) + sorted.get(half)) / 2;
  }

  /** The smallest. */
  public double min() {
    return Collections.min(values);
  }

  /** The largest. */
  public double max() {
    return Collections.max(values);
  }
}
