package dev.poleward.domain.judgement;

import dev.poleward.domain.record.DogIdentity;
import dev.poleward.domain.record.View;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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

  private record Asked(String dog, Instant before) {}

  private final Dogs dogs;
  private final DogIdentity identity;
  private final View view;
  private final ZoneId zone;

  /** A report asks about many dogs, at both ends of its days. */
  private final Map<Asked, Optional<DogSay>> says = new HashMap<>();

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
    List<DogSay> heard = new ArrayList<>();
    for (String other : dogs.own()) {
      if (heard.size() == HEARD_MAX) {
        break;
      }
      if (!other.equals(itself)) {
        says.computeIfAbsent(new Asked(other, before), this::said).ifPresent(heard::add);
      }
    }
    return ClubRetention.of(heard);
  }

  private Optional<DogSay> said(Asked asked) {
    return dogs.returns(asked.dog(), asked.before()).before(asked.before());
  }

  /** Where the day begins that is over at that time, or that it lies in. */
  private Instant before(Instant agedTo) {
    Instant day = agedTo.minusNanos(1).atZone(zone).toLocalDate().atStartOfDay(zone).toInstant();
    Instant asOf = view.asOf();
    return asOf != null && asOf.isBefore(day) ? asOf.plusNanos(1) : day;
  }
}
