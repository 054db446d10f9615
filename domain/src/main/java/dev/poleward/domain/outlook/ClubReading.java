package dev.poleward.domain.outlook;

import dev.poleward.domain.record.Facts;
import dev.poleward.domain.record.KnownDog;
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

  private ClubReading() {}

  /**
   * The other dogs of a dog's club.
   *
   * @param dog whose own record is not to speak, under any of its registrations
   */
  public static ClubOfDogs others(String dog, Facts facts, Placement placement, Registry registry) {
    Set<String> itself = placement.identity().group(dog);
    Stream<List<PlacedRep>> records =
        KnownDog.ofClub(facts, registry, "")
            .limit(KnownDog.LOOKED_AT_MAX)
            .filter(each -> !itself.contains(each.dog()))
            .filter(each -> !each.record().isGuest())
            .map(each -> placement.ofDog(each.dog()));
    return ClubOfDogs.of(records::iterator);
  }
}
