package dev.poleward.domain.learner;

import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.learner.Temper.Handling;
import dev.poleward.domain.learner.Temper.Memory;
import org.jspecify.annotations.Nullable;

/**
 * Ease with what the handler does, by manoeuvre and dog side, in logits at or below 0. What is
 * learned of one handling helps the others in part, most of all the same manoeuvre on the other
 * side. For one thread.
 */
final class HandlingSkill {

  /** Left, right, and none said. */
  private static final int SIDES = 3;

  /** Part of what is learned that reaches the same manoeuvre on another side [C]. */
  private static final double OTHER_SIDE = 0.6;

  private final Handling temper;
  private final Skills handlings;

  HandlingSkill(Handling temper) {
    this.temper = temper;
    Manoeuvre[] manoeuvres = Manoeuvre.values();
    double[] start = new double[manoeuvres.length * SIDES];
    for (Manoeuvre manoeuvre : manoeuvres) {
      double strange = -temper.strangeness() * strangeness(manoeuvre);
      start[place(manoeuvre, DogSide.LEFT)] = Math.min(0, strange + temper.favoursLeft() / 2);
      start[place(manoeuvre, DogSide.RIGHT)] = Math.min(0, strange - temper.favoursLeft() / 2);
      start[place(manoeuvre, null)] = strange;
    }
    this.handlings = new Skills(start, new double[start.length]);
  }

  private HandlingSkill(Handling temper, Skills handlings) {
    this.temper = temper;
    this.handlings = handlings;
  }

  HandlingSkill copy() {
    return of(temper);
  }

  /** The same ease in a dog of other temper. */
  HandlingSkill of(Handling other) {
    return new HandlingSkill(other, handlings.copy());
  }

  /** Logits that a manoeuvre costs an ordinary dog that meets it for the first time [C]. */
  private static double strangeness(Manoeuvre manoeuvre) {
    return switch (manoeuvre) {
      case ALONGSIDE -> 0.3;
      case RECALL -> 0.5;
      case FRONT_CROSS -> 0.7;
      case LATERAL_DISTANCE -> 0.8;
      case SEND, BLIND_CROSS -> 1.0;
      case PRESSURE -> 1.2;
      case REAR_CROSS -> 1.4;
    };
  }

  private static int place(Manoeuvre manoeuvre, @Nullable DogSide side) {
    return manoeuvre.ordinal() * SIDES + (side == null ? SIDES - 1 : side.ordinal());
  }

  double at(Manoeuvre manoeuvre, @Nullable DogSide side) {
    return handlings.at(place(manoeuvre, side));
  }

  void practise(Manoeuvre manoeuvre, @Nullable DogSide side, double strength, Memory memory) {
    int practised = place(manoeuvre, side);
    double share = temper.rate() * strength;
    double discovered = handlings.discovery(practised, share);
    for (int other = 0; other < handlings.count(); other++) {
      double part = part(practised, other);
      handlings.practise(other, part * share, part * discovered, memory);
    }
  }

  /** The part of what is learned of one handling that arrives at another. */
  private double part(int practised, int other) {
    if (other == practised) {
      return 1;
    }
    return other / SIDES == practised / SIDES ? OTHER_SIDE : temper.generalises();
  }

  void fade(double left, Memory memory) {
    handlings.fade(left, memory);
  }
}
