package dev.poleward.domain.planning;

import dev.poleward.domain.care.Load;
import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.RunUp;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * How far from straight on a dog was clean, over so many poles, from what it came from, on either
 * entry side, whatever the handler did; and how far it may be asked to go by that: poles are turned
 * a little further each time, and whatever its forecast says, none is asked for what lies far
 * beyond all that it ever did [C]. For one thread while reps are looked at.
 */
final class Reach {

  /** Degrees beyond what was clean: an hour on the clock, by which programmes are stepped [C]. */
  static final double FURTHER_DEGREES = 30;

  /** What a dog runs over, however it is handled. */
  private record Over(int poles, LeadIn leadIn, @Nullable BackChainStep step) {

    static Over of(Drill drill) {
      RunUp runUp = drill.runUp().asRun();
      return new Over(drill.poles(), runUp.leadIn(), runUp.step());
    }

    /** What is clean over more poles, or from a lead-in, would be over fewer, or without. */
    boolean asksForAsMuchAs(Over other) {
      return poles >= other.poles && (leadIn == other.leadIn || other.leadIn == LeadIn.NONE);
    }
  }

  /** Degrees on either entry side, by what was run over. */
  private final Map<Over, Double> onPoleSide = new HashMap<>();

  private final Map<Over, Double> onGapSide = new HashMap<>();

  /**
   * A clean rep without help.
   *
   * @param step as it was run; null without a jump
   */
  void ranClean(int poles, LeadIn leadIn, @Nullable BackChainStep step, EntryAngle angle) {
    Over over = new Over(poles, leadIn, step);
    if (angle.side() != EntrySide.GAP) {
      onPoleSide.merge(over, angle.size(), Math::max);
    }
    if (angle.side() != EntrySide.POLE) {
      onGapSide.merge(over, angle.size(), Math::max);
    }
  }

  /**
   * Degrees up to which a drill may be laid out on its side: an hour beyond the largest clean angle
   * over as many poles, from such a lead-in; beyond straight on where nothing was clean yet. No
   * sharper than 60 degrees also as far as was clean with less to think of.
   */
  double of(Drill drill) {
    Over wanted = Over.of(drill);
    Map<Over, Double> onSide =
        switch (drill.rung().side()) {
          case POLE, BOTH -> onPoleSide;
          case GAP -> onGapSide;
        };
    double asHard = farthest(onSide, each -> each.asksForAsMuchAs(wanted));
    double easier = farthest(onSide, wanted::asksForAsMuchAs);
    return Math.max(asHard + FURTHER_DEGREES, Math.min(easier, Load.SHARP_BEND_DEGREES));
  }

  /**
   * Whether a drill lies no more than so many degrees farther out than the dog was clean over just
   * that. Who runs it from aside has nothing new straight on.
   *
   * @param tolerance degrees
   */
  boolean holds(Drill drill, double tolerance) {
    double most = drill.rung().size() - tolerance;
    Over over = Over.of(drill);
    boolean onPole = onPoleSide.getOrDefault(over, Double.NEGATIVE_INFINITY) >= most;
    boolean onGap = onGapSide.getOrDefault(over, Double.NEGATIVE_INFINITY) >= most;
    return switch (drill.rung().side()) {
      case POLE -> onPole;
      case GAP -> onGap;
      case BOTH -> onPole || onGap;
    };
  }

  private static double farthest(Map<Over, Double> onSide, Predicate<Over> over) {
    return onSide.entrySet().stream()
        .filter(each -> over.test(each.getKey()))
        .mapToDouble(Map.Entry::getValue)
        .max()
        .orElse(0);
  }
}
