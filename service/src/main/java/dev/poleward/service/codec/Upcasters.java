package dev.poleward.service.codec;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * Lifts the data of older event types to today's. Recorded events are never rewritten; they are
 * read as what they would be today. Immutable; safe for use by many threads.
 */
public final class Upcasters {

  /** Data and the type that says how to read it. */
  public record Versioned(String type, ObjectNode data) {}

  /**
   * One step from a version to the next.
   *
   * @param lift makes the next version's data; may change what it is given
   */
  public record Step(String from, String to, UnaryOperator<ObjectNode> lift) {}

  /** No old versions: every type is its first. */
  public static final Upcasters NONE = new Upcasters(List.of());

  private final Map<String, Step> steps = new HashMap<>();

  /**
   * Keeps the steps.
   *
   * @throws IllegalArgumentException when two steps begin at one type or the steps run in a circle
   */
  public Upcasters(List<Step> steps) {
    for (Step step : steps) {
      if (this.steps.put(step.from(), step) != null) {
        throw new IllegalArgumentException("two steps lead on from " + step.from());
      }
    }
    for (Step step : steps) {
      refuseCircle(step);
    }
  }

  private void refuseCircle(Step first) {
    Set<String> passed = new HashSet<>();
    Step step = first;
    while (step != null) {
      if (!passed.add(step.from())) {
        throw new IllegalArgumentException("steps run in a circle at " + step.from());
      }
      step = steps.get(step.to());
    }
  }

  /** What the data is today. */
  public Versioned newest(Versioned old) {
    Versioned current = old;
    Step step = steps.get(current.type());
    while (step != null) {
      current = new Versioned(step.to(), step.lift().apply(current.data().deepCopy()));
      step = steps.get(step.to());
    }
    return current;
  }
}
