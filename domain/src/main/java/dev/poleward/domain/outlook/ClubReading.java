package dev.poleward.domain.outlook;

import dev.poleward.domain.record.DogRecord;
import dev.poleward.domain.record.EntityKind;
import dev.poleward.domain.record.Facts;
import dev.poleward.domain.record.PlacedRep;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.Registry;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Reads the records of a club's own dogs, guests left out, for what a dog of the club is expected
 * to be like.
 */
public final class ClubReading {

  /** Dogs that are looked through, in the order of their ids. */
  public static final int DOGS_MAX = 300;

  private static final int PAGE = 100;

  private ClubReading() {}

  /**
   * The other dogs of a dog's club.
   *
   * @param dog whose own record is not to speak, under any of its registrations
   */
  public static ClubOfDogs others(String dog, Facts facts, Placement placement, Registry registry) {
    Set<String> itself = placement.identity().group(dog);
    Stream<List<PlacedRep>> records =
        known(facts, placement, registry)
            .filter(each -> !itself.contains(each.dog()))
            .filter(each -> !Boolean.TRUE.equals(each.record().traits().guest()))
            .map(each -> placement.ofDog(each.dog()));
    return ClubOfDogs.of(records::iterator);
  }

  private record Known(String dog, DogRecord record) {}

  /** Under their own registrations. Counted are those that are known, not those ever announced. */
  private static Stream<Known> known(Facts facts, Placement placement, Registry registry) {
    return Stream.iterate(
            facts.announced(EntityKind.DOG, "", PAGE),
            page -> !page.isEmpty(),
            page -> facts.announced(EntityKind.DOG, page.getLast(), PAGE))
        .flatMap(List::stream)
        .filter(each -> placement.identity().of(each).equals(each))
        .flatMap(each -> registry.dog(each).map(record -> new Known(each, record)).stream())
        .limit(DOGS_MAX);
  }
}
