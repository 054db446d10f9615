package dev.poleward.domain.judgement;

import dev.poleward.domain.record.DogIdentity;
import dev.poleward.domain.record.View;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What is expected of a dog from how the other dogs of its club forget. They are heard as they were
 * when the club's local day began: what happens on a day moves nobody else's plan on it. For one
 * thread.
 */
public final class ClubForgetting implements ExpectedRetention {

  /** Dogs of a club that are looked through, in the order of their ids, guests left out. */
  public static final int DOGS_MAX = 100;

  /** Dogs that are heard: the first of them that have returns. More would not say much more. */
  public static final int HEARD_MAX = 30;

  /** The dogs of a club in a view that ends nowhere. */
  public interface Dogs {

    /** The first {@link #DOGS_MAX}, each once whatever its registrations, ascending by id. */
    List<String> own();

    /**
     * The returns of one of them.
     *
     * @param before those before this instant are right; what else is there is not looked at
     */
    DogReturns returns(String dog, Instant before);
  }

  private record Heard(String dog, DogSay say) {}

  private final Dogs dogs;
  private final DogIdentity identity;
  private final View view;
  private final ZoneId zone;

  /** The dogs that have returns before a time. */
  private final Map<Instant, List<Heard>> heard = new HashMap<>();

  /**
   * Looks at a club.
   *
   * @param identity which registrations are one animal
   * @param view what happened after it is not looked at
   * @param zone of the club's days
   */
  public ClubForgetting(Dogs dogs, DogIdentity identity, View view, ZoneId zone) {
    this.dogs = dogs;
    this.identity = identity;
    this.view = view;
    this.zone = zone;
  }

  @Override
  public ClubRetention of(String dog, Instant agedTo) {
    String itself = identity.of(dog);
    Instant before = before(agedTo);
    return ClubRetention.of(
        heard.computeIfAbsent(before, this::first).stream()
            .filter(each -> !each.dog().equals(itself))
            .limit(HEARD_MAX)
            .map(Heard::say)
            .toList());
  }

  /** One more than are heard: one of them may be the dog that is asked about. */
  private List<Heard> first(Instant before) {
    List<Heard> first = new ArrayList<>();
    for (String dog : dogs.own()) {
      dogs.returns(dog, before).before(before).ifPresent(say -> first.add(new Heard(dog, say)));
      if (first.size() > HEARD_MAX) {
        break;
      }
    }
    return first;
  }

  /** Where the day begins that is over at that time, or that it lies in. */
  private Instant before(Instant agedTo) {
    Instant day = agedTo.minusNanos(1).atZone(zone).toLocalDate().atStartOfDay(zone).toInstant();
    Instant asOf = view.asOf();
    return asOf != null && asOf.isBefore(day) ? asOf.plusNanos(1) : day;
  }
}
