package dev.poleward.service.access;

import dev.poleward.domain.event.ClubEvent.PersonForgotten;
import dev.poleward.domain.event.RepEvent.RepLogged;
import dev.poleward.domain.record.EntityKind;
import dev.poleward.domain.record.EntityRef;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Facts;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.Precedence;
import dev.poleward.domain.record.Registry;
import dev.poleward.domain.record.View;
import dev.poleward.service.journal.JournalException;
import dev.poleward.service.projection.ClubReader;
import dev.poleward.service.projection.Reading;
import java.time.Duration;
import java.util.List;

/**
 * Who is forgotten, by the club's record. Safe for use by many threads.
 *
 * <p>A handler is forgotten when the record says so. The unnamed somebody of a dog is forgotten
 * when the dog has handlers and all of them are; the unnamed somebody of a rep, when whoever the
 * rep was logged for is.
 */
public final class ForgottenPeople implements Forgotten {

  private final ClubReader clubs;
  private final Duration waitMax;

  /**
   * Asks the record.
   *
   * @param waitMax longest wait for this node to catch up with a club
   */
  public ForgottenPeople(ClubReader clubs, Duration waitMax) {
    this.clubs = clubs;
    this.waitMax = waitMax;
  }

  @Override
  public boolean isForgotten(String club, String person) {
    // Keys are destroyed for good on this answer, so it must not come from half a record.
    if (!clubs.catchUp(club, waitMax)) {
      throw new JournalException("this node has not read the club's record up to its end yet");
    }
    try (Reading reading = clubs.open(club)) {
      return isForgotten(reading.facts(), person);
    }
  }

  /**
   * Whether a person is forgotten in these facts, whatever has become of the keys yet.
   *
   * @param person a handler's id, or whoever else {@link PersonalFields} names
   */
  public static boolean isForgotten(Facts facts, String person) {
    if (person.startsWith(PersonalMembers.DOG)) {
      List<String> handlers = handlers(facts, person.substring(PersonalMembers.DOG.length()));
      return !handlers.isEmpty()
          && handlers.stream().allMatch(handler -> isForgotten(facts, handler));
    }
    if (person.startsWith(PersonalMembers.REP)) {
      return Precedence.standingFirst(
              facts.repsLoggedAs(person.substring(PersonalMembers.REP.length())))
          .stream()
          .findFirst()
          .map(Fact::event)
          .filter(rep -> isForgotten(facts, person(rep)))
          .isPresent();
    }
    return facts.about(new EntityRef(EntityKind.HANDLER, person)).stream()
        .anyMatch(fact -> fact.event() instanceof PersonForgotten);
  }

  private static List<String> handlers(Facts facts, String dog) {
    return new Registry(new Placement(facts, View.EVERYTHING), View.EVERYTHING)
        .dog(dog)
        .map(known -> known.traits().handlers())
        .orElse(List.of());
  }

  private static String person(RepLogged rep) {
    return PersonalMembers.person(
        rep.details().handler(), rep.details().observer(), rep.dog(), rep.rep());
  }
}
