package dev.poleward.domain.record;

import dev.poleward.domain.event.TrainingEvent;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Which events wait, and for what. */
public final class Waiting {

  /** An event that does not count yet. */
  public record WaitingEvent(Fact<?> fact, List<EntityRef> waitsFor) {}

  private final Facts facts;
  private final View view;
  private final Placement placement;
  private final List<WaitingEvent> found = new ArrayList<>();
  private final Set<String> seen = new HashSet<>();

  private Waiting(Facts facts, View view) {
    this.facts = facts;
    this.view = view;
    this.placement = new Placement(facts, view);
  }

  /** All events of a view that wait, ascending by (time, id). */
  public static List<WaitingEvent> of(Facts facts, View view) {
    Waiting waiting = new Waiting(facts, view);
    if (waiting.somethingKnownWasWithdrawn()) {
      facts.all(waiting::take);
    } else {
      facts.everUnmet(waiting::take);
    }
    waiting.found.sort((one, other) -> Precedence.BY_MOMENT.compare(one.fact(), other.fact()));
    return List.copyOf(waiting.found);
  }

  private void take(Fact<?> fact) {
    if (!view.happened(fact) || !placement.knowledge().stands(fact) || !seen.add(fact.id())) {
      return;
    }
    List<EntityRef> missing = placement.waitsFor(fact);
    if (!missing.isEmpty()) {
      found.add(new WaitingEvent(fact, List.copyOf(missing)));
    }
  }

  /**
   * Whether a withdrawal has made something unknown again. Those that refer to it need not ever
   * have waited before, so that only a look at everything finds them.
   */
  private boolean somethingKnownWasWithdrawn() {
    for (String withdrawn : facts.corrections().withdrawnEvents()) {
      TrainingEvent event = facts.event(withdrawn).map(Fact::event).orElse(null);
      EntityRef announced = announced(event);
      if (announced != null && !placement.knowledge().known(announced)) {
        if (announced.kind() != EntityKind.REP) {
          return true;
        }
        // A withdrawn rep is the commonest mistake, and few refer to it: those are at hand.
        facts.corrections().amendmentsOf(announced.id()).forEach(this::take);
      }
    }
    return false;
  }

  private static @Nullable EntityRef announced(@Nullable TrainingEvent event) {
    return event == null ? null : Announcement.of(event);
  }
}
