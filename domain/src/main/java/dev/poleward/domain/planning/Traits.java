package dev.poleward.domain.planning;

import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.layout.LeadIn;
import org.jspecify.annotations.Nullable;

/**
 * What makes a rep hard, as numbers that a {@link CleanModel} weighs, and what is expected of each
 * before the dog has shown anything: the mean and the deviation, in logits, of a dog of a club.
 *
 * <p>All of it is common practice [C], set so that an ordinary {@code SimulatedDog} is met on
 * average; a record soon outweighs it.
 */
final class Traits {

  private static final int BASE = 0;
  private static final int JUMP = 1;
  private static final int WRAP = 2;
  private static final int TUNNEL = 3;
  private static final int DOG_SIDE = 4;
  private static final int GAPS = 5;

  /** Hundreds of reps that the dog has run since. */
  static final int AGE = 6;

  private static final int POLE_ANGLE = 7;

  /** The way from straight on is made of so many pieces, each with a fall of its own. */
  private static final int PIECES = 6;

  private static final double PIECE_DEGREES = 180.0 / PIECES;
  private static final int GAP_ANGLE = POLE_ANGLE + PIECES;
  private static final int MANOEUVRES = GAP_ANGLE + PIECES;

  /** How many numbers there are. */
  static final int COUNT = MANOEUVRES + Manoeuvre.values().length;

  /** Logits lost over one piece of the way. */
  static final double FALL = -0.8;

  private static final int REPS_SINCE_MAX = 300;
  private static final double REPS_OF_AGE = 100;

  /** The gaps of four poles, where poles are first turned. */
  private static final double GAPS_USUAL = 3;

  private Traits() {}

  /** Logits expected of each number. */
  static double[] expected() {
    double[] mean = new double[COUNT];
    mean[BASE] = 0.9;
    for (int piece = 0; piece < PIECES; piece++) {
      mean[POLE_ANGLE + piece] = FALL;
      mean[GAP_ANGLE + piece] = FALL;
    }
    mean[JUMP] = -0.5;
    mean[WRAP] = -0.3;
    mean[TUNNEL] = -0.7;
    mean[GAPS] = -0.5;
    mean[AGE] = -3;
    for (Manoeuvre manoeuvre : Manoeuvre.values()) {
      mean[MANOEUVRES + manoeuvre.ordinal()] = strangeness(manoeuvre);
    }
    return mean;
  }

  private static double strangeness(Manoeuvre manoeuvre) {
    return switch (manoeuvre) {
      case ALONGSIDE -> 0;
      case RECALL, LATERAL_DISTANCE -> -0.3;
      case SEND, FRONT_CROSS -> -0.4;
      case REAR_CROSS, BLIND_CROSS -> -0.5;
      case PRESSURE -> -0.8;
    };
  }

  /** Logits by which dogs differ in each number. */
  static double[] deviation() {
    double[] deviation = new double[COUNT];
    for (int i = 0; i < COUNT; i++) {
      deviation[i] = 0.5;
    }
    deviation[BASE] = 1.2;
    deviation[DOG_SIDE] = 0.3;
    deviation[AGE] = 0.6;
    deviation[MANOEUVRES + Manoeuvre.ALONGSIDE.ordinal()] = 0.2;
    return deviation;
  }

  /** The same for a rep that so many reps have followed. */
  static double[] aged(double[] traits, int repsSince) {
    double[] aged = traits.clone();
    aged[AGE] = age(repsSince);
    return aged;
  }

  /** The age of a rep that so many reps have followed; beyond 300 it makes no difference. */
  static double age(int repsSince) {
    return Math.min(repsSince, REPS_SINCE_MAX) / REPS_OF_AGE;
  }

  /**
   * The numbers of one rep.
   *
   * @param step null without a jump
   * @param dogSide null where it is not said
   */
  static double[] of(
      int poles,
      LeadIn leadIn,
      @Nullable BackChainStep step,
      EntrySide side,
      double size,
      Manoeuvre manoeuvre,
      @Nullable DogSide dogSide) {
    double[] traits = new double[COUNT];
    traits[BASE] = 1;
    switch (side) {
      case POLE -> fall(traits, POLE_ANGLE, size);
      case GAP -> fall(traits, GAP_ANGLE, size);
      case BOTH -> {
        // Straight on is what the base says.
      }
    }
    switch (leadIn) {
      case NONE -> {
        // Nothing to come from.
      }
      case TUNNEL -> traits[TUNNEL] = 1;
      case JUMP -> {
        if (step == BackChainStep.WRAP) {
          traits[WRAP] = 1;
        } else if (step != BackChainStep.POLES_ONLY) {
          traits[JUMP] = 1;
        }
      }
    }
    traits[DOG_SIDE] = dogSide == null ? 0 : dogSide == DogSide.LEFT ? 0.5 : -0.5;
    traits[GAPS] = StrictMath.log((poles - 1) / GAPS_USUAL) / StrictMath.log(2);
    traits[MANOEUVRES + manoeuvre.ordinal()] = 1;
    return traits;
  }

  private static void fall(double[] traits, int from, double size) {
    for (int piece = 0; piece < PIECES; piece++) {
      double into = (size - piece * PIECE_DEGREES) / PIECE_DEGREES;
      traits[from + piece] = Math.max(0, Math.min(1, into));
    }
  }
}
