package dev.poleward.load;

import dev.poleward.load.figures.Arguments;
import dev.poleward.load.figures.TimeLimit;
import dev.poleward.load.plan.Calibration;

/**
 * How well plans foretell: simulated dogs are taken through the default programme by plan, and what
 * was expected of each block is held against what came of it and against the dog's true chance.
 */
public final class ForecastCalibration {

  private ForecastCalibration() {}

  public static void main(String[] args) {
    Arguments arguments = new Arguments(args);
    int dogs = arguments.whole("dogs", 500, 1);
    int seed = arguments.whole("seed", 1, 0);
    int reps = arguments.whole("reps", 16, 4);
    TimeLimit.set(arguments.limit(60));
    Calibration.of(dogs, seed, reps).print(arguments.settings());
  }
}
