package dev.poleward.load.outlook;

import dev.poleward.domain.outlook.ClubOfDogs;
import dev.poleward.domain.record.PlacedRep;
import java.util.ArrayList;
import java.util.List;

/**
 * What is known of the clubs that dogs belong to, so many dogs to each: what one club's dogs happen
 * to be like misleads about all of its next ones alike. Immutable.
 */
public final class Clubs {

  /** Dogs that share what is known of their club. */
  static final int SHARING = 10;

  private static final int WEEKS = 12;

  private final List<ClubOfDogs> known;
  private final int others;

  private Clubs(List<ClubOfDogs> known, int others) {
    this.known = known;
    this.others = others;
  }

  /** Where nobody else is known. */
  public static Clubs unknown() {
    return new Clubs(List.of(ClubOfDogs.UNKNOWN), 0);
  }

  /**
   * Clubs for so many dogs.
   *
   * @param others dogs of each whose records are known
   */
  public static Clubs of(Kennel kennel, int dogs, int others, long seed) {
    List<ClubOfDogs> clubs = new ArrayList<>();
    for (int club = 0; club * SHARING < dogs; club++) {
      List<List<PlacedRep>> records = new ArrayList<>();
      for (int dog = 0; dog < others; dog++) {
        records.add(kennel.dog(seed + 1_000_000 + 1_000L * club + dog, WEEKS).reps());
      }
      clubs.add(ClubOfDogs.of(records));
    }
    return new Clubs(clubs, others);
  }

  /** That of a dog. */
  ClubOfDogs of(int dog) {
    return known.get(dog / SHARING % known.size());
  }

  /** Dogs of each that are known. */
  public int others() {
    return others;
  }
}
