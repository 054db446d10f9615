package dev.poleward.domain.planning;

import dev.poleward.domain.layout.EntrySide;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** How a session is shared out among the rungs that have their turn. */
final class Parts {

  /** No stepping stone is harder than that, whatever the rest of the session makes up for [C]. */
  private static final double STONE_MIN = 0.6;

  private static final double STONE_MAX = 0.9;

  private Parts() {}

  /** For so many reps, the easiest first; no rung has more than half of them. */
  static List<Part> of(List<Work> work, int reps) {
    List<Part> parts = new ArrayList<>();
    int left = reps;
    int half = Math.max(2, reps / 2);
    for (Work each : alternating(stayingInStage(work))) {
      boolean test = new Part(each, 1).isTest();
      int most = test ? each.standing().judgement().cleanRepsToDecide() + 1 : half;
      int own = Math.min(left, Math.min(half, most));
      if (own > 0) {
        parts.add(new Part(each, own));
        left -= own;
      }
    }
    parts.sort(Comparator.comparingDouble(part -> -part.work().expected()));
    return parts;
  }

  /** What stands already need not be moved: the stage of what comes first goes before others. */
  private static List<Work> stayingInStage(List<Work> work) {
    List<Work> order = new ArrayList<>(work);
    if (!work.isEmpty()) {
      String stage = work.getFirst().standing().stage().id();
      order.sort(Comparator.comparing((Work each) -> !each.standing().stage().id().equals(stage)));
    }
    return order;
  }

  /** The entry sides in turn, as far as both have something. */
  private static List<Work> alternating(List<Work> all) {
    List<Work> left = new ArrayList<>(all);
    List<Work> order = new ArrayList<>();
    EntrySide last = null;
    while (!left.isEmpty()) {
      Work next = onOtherSide(left, last);
      left.remove(next);
      order.add(next);
      last = next.side();
    }
    return order;
  }

  private static Work onOtherSide(List<Work> left, @Nullable EntrySide last) {
    return left.stream().filter(work -> work.side() != last).findFirst().orElse(left.getFirst());
  }

  /**
   * What stepping stones may be expected to come to: so hard that the session as a whole keeps to
   * the programme's floor, for what is neither too easy nor too hard teaches most.
   */
  static double shareOfStones(List<Part> parts, List<PlanBlock> before, double floor) {
    double surplus = 0;
    int stones = 0;
    for (PlanBlock block : before) {
      surplus += block.reps() * (block.expected().value() - floor);
    }
    for (Part part : parts) {
      if (part.isTest()) {
        surplus += part.reps() * (part.work().expected() - floor);
      } else {
        stones += part.reps();
      }
    }
    return stones == 0 ? floor : Math.max(STONE_MIN, Math.min(STONE_MAX, floor - surplus / stones));
  }
}
