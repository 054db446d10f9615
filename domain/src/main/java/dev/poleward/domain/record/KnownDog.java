package dev.poleward.domain.record;

import java.util.List;
import java.util.stream.Stream;

/**
 * A dog that is registered, under the registration that stands for it.
 *
 * @param dog its id after merges
 */
public record KnownDog(String dog, DogRecord record) {

  /** Dogs of a club that are looked at where the whole club speaks, guests among them. */
  public static final int LOOKED_AT_MAX = 300;

  private static final int PAGE = 100;

  /**
   * All dogs of a club, guests among them, each once whatever its registrations, ascending by id.
   *
   * @param after those with ids above this one; empty for all
   */
  public static Stream<KnownDog> ofClub(Facts facts, Registry registry, String after) {
    return Stream.iterate(
            facts.announced(EntityKind.DOG, after, PAGE),
            page -> !page.isEmpty(),
            page -> facts.announced(EntityKind.DOG, page.getLast(), PAGE))
        .flatMap(List::stream)
        .filter(each -> registry.identity().of(each).equals(each))
        .flatMap(each -> registry.dog(each).map(dog -> new KnownDog(each, dog)).stream());
  }
}
