package dev.poleward.domain.record;

import dev.poleward.domain.event.TrainingEvent;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What is known in one view: which facts count, which entities have been announced. Remembers its
 * answers; for one thread and one reading.
 */
public final class Knowledge {

  private final Facts facts;
  private final View view;
  private final Corrections corrections;
  private final Map<EntityRef, Boolean> known = new HashMap<>();

  /** Looks at {@code facts} through {@code view}. */
  public Knowledge(Facts facts, View view) {
    this.facts = facts;
    this.view = view;
    this.corrections = facts.corrections();
  }

  /** Whether a fact was recorded in time and is not withdrawn. */
  public boolean stands(Fact<?> fact) {
    if (!view.knew(fact.recorded())) {
      return false;
    }
    return !corrections.withdrawn(fact.id(), view) || !Precedence.canBeWithdrawn(fact.event());
  }

  /** Whether a fact stands and all that it refers to is known. */
  public boolean counts(Fact<?> fact) {
    return stands(fact) && missing(References.of(fact.event())).isEmpty();
  }

  /** Those of {@code references} that are not known. */
  public List<EntityRef> missing(List<EntityRef> references) {
    List<EntityRef> missing = List.of();
    for (EntityRef reference : references) {
      if (!known(reference)) {
        missing = missing.isEmpty() ? new ArrayList<>(2) : missing;
        missing.add(reference);
      }
    }
    return missing;
  }

  /** Whether an entity has been announced, or an event recorded. */
  public boolean known(EntityRef reference) {
    Boolean remembered = known.get(reference);
    if (remembered == null) {
      remembered = lookUp(reference);
      known.put(reference, remembered);
    }
    return remembered;
  }

  private boolean lookUp(EntityRef reference) {
    if (reference.equals(EntityRef.DEFAULT_PROGRAMME)) {
      return true;
    }
    return switch (reference.kind()) {
      case EVENT -> facts.event(reference.id()).filter(e -> view.knew(e.recorded())).isPresent();
      case REP -> facts.repsLoggedAs(reference.id()).stream().anyMatch(this::stands);
      case CLUB, KEY, GROUND, HANDLER, DOG, CLASS, PROGRAMME, PLAN, DEVICE, SESSION ->
          facts.about(reference).stream()
              .anyMatch(fact -> reference.equals(Announcement.of(fact.event())) && stands(fact));
    };
  }

  /** Announcements of an entity that stand, the one that holds first. */
  public <E extends TrainingEvent> List<Fact<E>> announcements(EntityRef entity, Class<E> type) {
    return Precedence.standingFirst(standing(entity, type));
  }

  /** What is filed under an entity, of one type, and stands; in no particular order. */
  public <E extends TrainingEvent> List<Fact<E>> standing(EntityRef entity, Class<E> type) {
    List<Fact<E>> found = new ArrayList<>();
    for (Fact<?> fact : facts.about(entity)) {
      Fact<E> typed = fact.as(type);
      if (typed != null && stands(typed)) {
        found.add(typed);
      }
    }
    return found;
  }

  /** Like {@link #standing}, but only what also counts, ascending by (time, id). */
  public <E extends TrainingEvent> List<Fact<E>> counting(EntityRef entity, Class<E> type) {
    return standing(entity, type).stream()
        .filter(this::counts)
        .sorted(Precedence.BY_MOMENT)
        .toList();
  }
}
