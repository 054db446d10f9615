package dev.poleward.domain.planning;

import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.layout.EntryAngle;
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

  /** What practice at the angle has brought: soon, in the long run, and the more the farther. */
  private static final int POLE_PRACTICE = MANOEUVRES + Manoeuvre.values().length;

  private static final int GAP_PRACTICE = POLE_PRACTICE + 3;

  /**
   * What is still strange about a manoeuvre, a jump and a tunnel; and what all reps have brought.
   */
  private static final int STRANGE_MANOEUVRE = GAP_PRACTICE + 3;

  private static final int STRANGE_JUMP = STRANGE_MANOEUVRE + 1;
  private static final int STRANGE_TUNNEL = STRANGE_JUMP + 1;
  private static final int PRACTICE_IN_ALL = STRANGE_TUNNEL + 1;

  /** How many numbers there are. */
  static final int COUNT = PRACTICE_IN_ALL + 1;

  /** Logits lost over one piece of the way, before anything is practised. */
  static final double FALL = -1.5;

  /** Clean reps after which about two thirds of something have come. */
  private static final double REPS_SOON = 12;

  private static final double REPS_IN_THE_LONG_RUN = 60;
  private static final double REPS_UNTIL_FAMILIAR = 30;
  private static final double REPS_IN_ALL = 150;

  /** Beyond 90 degrees there is more to be learned. */
  private static final double FAR_DEGREES = 90;

  private static final int REPS_SINCE_MAX = 300;
  private static final double REPS_OF_AGE = 100;

  /** The gaps of four poles, where poles are first turned. */
  private static final double GAPS_USUAL = 3;

  private Traits() {}

  /** Logits expected of each number. */
  static double[] expected() {
    double[] mean = new double[COUNT];
    mean[BASE] = 0.8;
    for (int piece = 0; piece < PIECES; piece++) {
      mean[POLE_ANGLE + piece] = FALL;
      mean[GAP_ANGLE + piece] = FALL;
    }
    mean[JUMP] = -0.5;
    mean[WRAP] = -0.3;
    mean[TUNNEL] = -0.7;
    mean[GAPS] = -0.5;
    mean[AGE] = -0.5;
    for (int side : new int[] {POLE_PRACTICE, GAP_PRACTICE}) {
      mean[side] = 1.6;
      mean[side + 1] = 1.6;
      mean[side + 2] = 2.5;
    }
    mean[STRANGE_MANOEUVRE] = -0.4;
    mean[STRANGE_JUMP] = -0.3;
    mean[STRANGE_TUNNEL] = -0.5;
    mean[PRACTICE_IN_ALL] = 1.5;
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
    deviation[AGE] = 0.3;
    for (int angle = POLE_ANGLE; angle < MANOEUVRES; angle++) {
      deviation[angle] = 0.8;
    }
    for (int practice = POLE_PRACTICE; practice < COUNT; practice++) {
      deviation[practice] = 0.6;
    }
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
   * @param practice that the dog brought to it
   */
  static double[] of(
      int poles,
      LeadIn leadIn,
      @Nullable BackChainStep step,
      EntryAngle angle,
      Manoeuvre manoeuvre,
      @Nullable DogSide dogSide,
      Practice practice) {
    double[] traits = new double[COUNT];
    traits[BASE] = 1;
    switch (angle.side()) {
      case POLE -> {
        fall(traits, POLE_ANGLE, angle.size());
        practised(traits, POLE_PRACTICE, practice.at(angle), angle.size(), 1);
      }
      case GAP -> {
        fall(traits, GAP_ANGLE, angle.size());
        practised(traits, GAP_PRACTICE, practice.at(angle), angle.size(), 1);
      }
      case BOTH -> {
        practised(traits, POLE_PRACTICE, practice.at(angle), 0, 0.5);
        practised(traits, GAP_PRACTICE, practice.at(angle), 0, 0.5);
      }
    }
    switch (leadIn) {
      case NONE -> {
        // Nothing to come from.
      }
      case TUNNEL -> {
        traits[TUNNEL] = 1;
        traits[STRANGE_TUNNEL] = strange(practice.from(leadIn));
      }
      case JUMP -> {
        if (step != BackChainStep.POLES_ONLY) {
          traits[STRANGE_JUMP] = strange(practice.from(leadIn));
        }
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
    traits[STRANGE_MANOEUVRE] = -2 * strangeness(manoeuvre) * strange(practice.with(manoeuvre));
    traits[PRACTICE_IN_ALL] = come(practice.inAll(), REPS_IN_ALL);
    return traits;
  }

  private static void practised(double[] traits, int from, double reps, double size, double share) {
    double soon = come(reps, REPS_SOON);
    double late = come(reps, REPS_IN_THE_LONG_RUN);
    traits[from] = share * soon;
    traits[from + 1] = share * late;
    traits[from + 2] = share * (soon + late) / 2 * size / FAR_DEGREES;
  }

  private static double come(double reps, double scale) {
    return 1 - StrictMath.exp(-reps / scale);
  }

  private static double strange(double reps) {
    return StrictMath.exp(-reps / REPS_UNTIL_FAMILIAR);
  }

  private static void fall(double[] traits, int from, double size) {
    for (int piece = 0; piece < PIECES; piece++) {
      double into = (size - piece * PIECE_DEGREES) / PIECE_DEGREES;
      traits[from + piece] = Math.max(0, Math.min(1, into));
    }
  }
}
