package dev.poleward.load;

import dev.poleward.load.figures.Arguments;
import dev.poleward.load.figures.TimeLimit;
import dev.poleward.load.plan.Comparison;

/**
 * Simulated dogs of widely different temper taken through the default programme twice: by a plain
 * trainer in the programme's order, and by the planner. Same dogs, same luck, same rules.
 */
public final class PlansAgainstFixedOrder {

  private PlansAgainstFixedOrder() {}

  public static void main(String[] args) {
    Arguments arguments = new Arguments(args);
    int dogs = arguments.whole("dogs", 500, 1);
    int seed = arguments.whole("seed", 1, 0);
    int reps = arguments.whole("reps", 16, 4);
    TimeLimit.set(arguments.limit(60));
    Comparison.of(dogs, seed, reps).print(arguments.settings());
  }
}
