package dev.poleward.load.outlook;

import dev.poleward.domain.outlook.Ahead;
import dev.poleward.domain.outlook.Quantiles;
import dev.poleward.domain.outlook.Reaching;
import java.util.ArrayList;
import java.util.List;

/**
 * How often limits of 80% hold. Counted as they stand, where there is a late limit; and with ties
 * told apart, over all ends: what comes in the same session as some of the runs, or like them not
 * within the horizon, lies anywhere among them ({@link Reaching#partBetween}). The latter is 80%
 * where the method is right, whatever is whole numbers and however far it looks. For one thread.
 */
public final class LimitsHeld {

  private static final double LOWER = 0.1;
  private static final double UPPER = 0.9;

  /** Of one dog, whose ends hang together. */
  private record OfDog(double held, int ends) {}

  private final List<OfDog> dogs = new ArrayList<>();
  private double heldOfDog;
  private int endsOfDog;
  private int told;
  private int early;
  private int between;
  private int late;
  private int never;
  private double width;

  /** The ends that come belong to another dog than those before. */
  void nextDog() {
    if (endsOfDog > 0) {
      dogs.add(new OfDog(heldOfDog, endsOfDog));
    }
    heldOfDog = 0;
    endsOfDog = 0;
  }

  /** An end that lay ahead. */
  void add(Reaching reaching, int truth) {
    endsOfDog++;
    heldOfDog += reaching.partBetween(LOWER, UPPER, truth);
    never += truth == Ahead.NEVER ? 1 : 0;
    Quantiles quantiles = reaching.quantiles();
    if (quantiles.late().isEmpty()) {
      return;
    }
    int lower = quantiles.early().orElseThrow();
    int upper = quantiles.late().getAsInt();
    told++;
    width += (double) upper / lower;
    if (truth < lower) {
      early++;
    } else if (truth > upper) {
      late++;
    } else {
      between++;
    }
  }

  /** Ends that lay ahead. */
  public int ends() {
    nextDog();
    return dogs.stream().mapToInt(OfDog::ends).sum();
  }

  /** Share of them for which there was a late limit. */
  public double told() {
    return (double) told / ends();
  }

  /** Share of the told ones before the early limit. */
  public double early() {
    return (double) early / told;
  }

  /** Share of the told ones between the limits. */
  public double between() {
    return (double) between / told;
  }

  /** Share of the told ones after the late limit. */
  public double late() {
    return (double) late / told;
  }

  /** Share of all that did not come within the horizon. */
  public double never() {
    return (double) never / ends();
  }

  /** The late limit over the early one, on average, where there is a late one. */
  public double width() {
    return width / told;
  }

  /** Share of all between the limits, ties told apart. */
  public double held() {
    return dogs.stream().mapToDouble(OfDog::held).sum() / ends();
  }

  /** The standard error of that, dogs taken as drawn and not their ends. */
  public double error() {
    double held = held();
    double squares = 0;
    for (OfDog dog : dogs) {
      double off = dog.held() - held * dog.ends();
      squares += off * off;
    }
    return Math.sqrt(squares) / ends();
  }
}
