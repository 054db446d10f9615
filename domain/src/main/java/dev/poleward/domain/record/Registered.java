package dev.poleward.domain.record;

import dev.poleward.domain.event.TrainingEvent;
import java.util.List;
import java.util.Optional;

/**
 * Something announced: the announcement that stands and the ids of later ones.
 *
 * @param duplicates ids of further announcements, ascending by (time, id)
 */
public record Registered<E extends TrainingEvent>(Fact<E> standing, List<String> duplicates) {

  /** The entity of these announcements, if there is any. */
  static <E extends TrainingEvent> Optional<Registered<E>> of(List<Fact<E>> standingFirst) {
    if (standingFirst.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Registered<>(
            standingFirst.getFirst(), standingFirst.stream().skip(1).map(Fact::id).toList()));
  }
}
