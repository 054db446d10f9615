package dev.poleward.domain.record;

import dev.poleward.domain.event.AimEvent;
import dev.poleward.domain.event.ClassEvent;
import dev.poleward.domain.event.ClubEvent;
import dev.poleward.domain.event.DeviceEvent;
import dev.poleward.domain.event.DogEvent;
import dev.poleward.domain.event.EventWithdrawn;
import dev.poleward.domain.event.ProgrammeEvent;
import dev.poleward.domain.event.RegistryEvent;
import dev.poleward.domain.event.RepEvent.RepAmended;
import dev.poleward.domain.event.RepEvent.RepLogged;
import dev.poleward.domain.event.SessionEvent;
import dev.poleward.domain.event.TimingEvent;
import dev.poleward.domain.event.TrainingEvent;
import java.time.Instant;
import java.util.Set;
import java.util.TreeSet;

/**
 * What a newly recorded event can change of what dogs ran and what they followed: so that what was
 * made of a dog's record need not be made anew for every event of its club. It says rather too much
 * than too little. Timings, care and aims are none of it.
 */
public sealed interface Reach {

  /** Nothing of it. */
  record Nothing() implements Reach {}

  /**
   * What some dogs ran or followed from some time on.
   *
   * @param registrations of theirs, not all of them
   * @param from that instant included
   */
  record OfDogs(Set<String> registrations, Instant from) implements Reach {}

  /** Which dogs there are, and what one of them ran. */
  record OfRegistry(String registration) implements Reach {}

  /** Perhaps anything. */
  record OfClub() implements Reach {}

  /**
   * How far an event reaches.
   *
   * @param time of the event
   * @param facts that hold it already
   */
  static Reach of(TrainingEvent event, Instant time, Facts facts) {
    return switch (event) {
      case RepLogged e -> ofLogging(e, time, facts);
      case RepAmended e -> ofRep(e.rep(), facts);
      case SessionEvent.SessionOpened e -> ofSession(e.session(), Instant.MIN, facts);
      case SessionEvent.SetupChanged e -> ofSession(e.session(), time, facts);
      case DogEvent.DogRegistered e ->
          facts.corrections().merges().isEmpty()
                  && facts.corrections().repsMovedToDog(e.dog()).isEmpty()
              ? new OfRegistry(e.dog())
              : new OfClub();
      case DogEvent.DogAmended e -> new OfRegistry(e.dog());
      case ProgrammeEvent.ProgrammeAssigned e -> new OfDogs(Set.of(e.dog()), time);
      // Dogs may have waited for each other, reps for who handled them, dogs for a programme.
      case DogEvent.DogMerged _,
          RegistryEvent.HandlerRegistered _,
          ProgrammeEvent.ProgrammePublished _ ->
          new OfClub();
      case EventWithdrawn e ->
          facts
              .event(e.event())
              .map(withdrawn -> ofWithdrawn(withdrawn, facts))
              .orElseGet(Nothing::new);
      case SessionEvent.SessionAttended _,
          SessionEvent.SessionClosed _,
          DogEvent.DogRested _,
          DogEvent.DogCleared _,
          ProgrammeEvent.PlanIssued _,
          RegistryEvent.GroundRegistered _,
          ClubEvent _,
          ClassEvent _,
          DeviceEvent _,
          TimingEvent _,
          AimEvent _ ->
          new Nothing();
    };
  }

  /** As far as when it was recorded: it is as if it had never been. */
  private static Reach ofWithdrawn(Fact<?> withdrawn, Facts facts) {
    return withdrawn.event() instanceof EventWithdrawn
        ? new Nothing()
        : of(withdrawn.event(), withdrawn.time(), facts);
  }

  private static Reach ofLogging(RepLogged logged, Instant time, Facts facts) {
    Corrections corrections = facts.corrections();
    return corrections.loggedTwice(logged.rep())
            || !corrections.amendmentsOf(logged.rep()).isEmpty()
        ? ofRep(logged.rep(), facts)
        : new OfDogs(Set.of(logged.dog()), time);
  }

  /** Whoever it was said to be of. */
  private static Reach ofRep(String rep, Facts facts) {
    Set<String> dogs = new TreeSet<>();
    Instant from = Instant.MAX;
    for (Fact<RepLogged> logged : facts.repsLoggedAs(rep)) {
      dogs.add(logged.event().dog());
      from = logged.time().isBefore(from) ? logged.time() : from;
    }
    addGivenTo(dogs, rep, facts);
    return new OfDogs(dogs, from);
  }

  private static Reach ofSession(String session, Instant from, Facts facts) {
    if (!facts.corrections().repsMovedToSession(session).isEmpty()) {
      return new OfClub();
    }
    Set<String> dogs = new TreeSet<>();
    for (Fact<RepLogged> rep : facts.repsIn(session)) {
      dogs.add(rep.event().dog());
      addGivenTo(dogs, rep.event().rep(), facts);
    }
    return new OfDogs(dogs, from);
  }

  /** Dogs that some amendment says it was of. */
  private static void addGivenTo(Set<String> dogs, String rep, Facts facts) {
    for (Fact<RepAmended> amended : facts.corrections().amendmentsOf(rep)) {
      String dog = amended.event().dog();
      if (dog != null) {
        dogs.add(dog);
      }
    }
  }
}
