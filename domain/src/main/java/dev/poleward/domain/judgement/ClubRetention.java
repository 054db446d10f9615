package dev.poleward.domain.judgement;

import java.util.List;

/**
 * How the dogs of a club forget: what is expected of one more of them. The dogs of a club are
 * normal about its middle, the middles of clubs about what is usual. Of all that dogs differ by, a
 * quarter is expected to lie between clubs and three quarters between the dogs of one [C], so that
 * what is usual counts as much as three dogs that are known through and through.
 *
 * <p>What a dog's own returns say is taken for normal too, as it is near its likeliest (Laplace).
 *
 * @param expected of a dog of the club of which nothing is known
 * @param dogs how many were heard
 * @param returns of theirs
 */
public record ClubRetention(Retention expected, int dogs, int returns) {

  /** Where no club is known. */
  public static final ClubRetention UNKNOWN = new ClubRetention(Retention.USUAL, 0, 0);

  private static final double BETWEEN_CLUBS = 0.25;

  /**
   * Of what a club's dogs say, the one that is asked about left out: its own returns are not to
   * count twice.
   *
   * @param dogs in an order that does not depend on how their events arrived
   */
  public static ClubRetention of(List<DogSay> dogs) {
    return of(dogs, Retention.USUAL, BETWEEN_CLUBS);
  }

  /**
   * The same where something else is usual.
   *
   * @param usual what the dogs were fitted with, without covariance
   * @param betweenClubs the part of its variances that lies between clubs, above 0 and below 1
   */
  static ClubRetention of(List<DogSay> dogs, Retention usual, double betweenClubs) {
    if (dogs.isEmpty()) {
      return new ClubRetention(usual, 0, 0);
    }
    MiddleOfClub middle = new MiddleOfClub(usual, betweenClubs);
    dogs.forEach(dog -> middle.hear(dog.retention()));
    return new ClubRetention(
        middle.ofOneMore(), dogs.size(), dogs.stream().mapToInt(DogSay::returns).sum());
  }
}
