package dev.poleward.service.http;

import dev.poleward.domain.event.ClubEvent.PersonForgotten;
import dev.poleward.domain.record.EntityKind;
import dev.poleward.domain.record.EntityRef;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Precedence;
import dev.poleward.service.access.PersonKeys;
import dev.poleward.service.access.Scope;
import dev.poleward.service.codec.Writing;
import dev.poleward.service.contract.SentEvent;
import dev.poleward.service.http.Intake.Outcome;
import dev.poleward.service.http.Intake.Taken;
import dev.poleward.service.journal.JournalException;
import dev.poleward.service.projection.ClubReader;
import dev.poleward.service.projection.Reading;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Where people are forgotten. Safe for use by many threads. */
final class ForgettingDoor {

  private static final Duration SOON = Duration.ofSeconds(5);

  private final Gate gate;
  private final Intake intake;
  private final ClubReader clubs;
  private final PersonKeys keys;
  private final OwnEvents own;

  ForgettingDoor(Gate gate, Intake intake, ClubReader clubs, PersonKeys keys, OwnEvents own) {
    this.gate = gate;
    this.intake = intake;
    this.clubs = clubs;
    this.keys = keys;
    this.own = own;
  }

  /** {@code DELETE …/handlers/{handler}/personal-data}. */
  Answer delete(Call call) {
    String club = call.inPath("club");
    return gate.inClub(
        call,
        club,
        Set.of(Scope.CLUB_MANAGE),
        _ -> {
          if (!ClubReads.isRegistered(clubs, club)) {
            return call.refused(ProblemKind.NOT_FOUND, "There is no such club.");
          }
          return forget(call, club, call.inPath("handler"));
        });
  }

  /** The event first: from when it is applied no new key is made. Then the keys go. */
  private Answer forget(Call call, String club, String handler) {
    if (!clubs.catchUp(club, ClubReads.CATCH_UP_MAX)) {
      return call.refused(
          Problem.later(ProblemKind.NOT_READY, "The node could not catch up in time.", SOON));
    }
    Optional<Instant> before = forgotten(club, handler);
    if (before.isPresent()) {
      return destroyed(call, club, handler, before.get());
    }
    Instant now = intake.now();
    SentEvent event = own.of(own.newId(), now, new PersonForgotten(handler));
    return switch (intake.take(club, List.of(event))) {
      case Outcome.NotKept notKept -> call.refused(notKept.problem());
      case Outcome.Done done ->
          switch (done.taken().getFirst()) {
            case Taken.Recorded _ -> destroyed(call, club, handler, now);
            case Taken.Pending _ ->
                call.refused(
                    Problem.later(
                        ProblemKind.NOT_READY,
                        "The forgetting is kept but not applied yet. Ask again.",
                        SOON));
            case Taken.Repeated _, Taken.Contradicted _ -> throw OwnEvents.guessed(event);
          };
    };
  }

  private Optional<Instant> forgotten(String club, String handler) {
    List<Fact<PersonForgotten>> forgettings = new ArrayList<>();
    try (Reading reading = clubs.open(club)) {
      for (Fact<?> fact : reading.facts().about(new EntityRef(EntityKind.HANDLER, handler))) {
        Fact<PersonForgotten> forgetting = fact.as(PersonForgotten.class);
        if (forgetting != null) {
          forgettings.add(forgetting);
        }
      }
    }
    return Precedence.standingFirst(forgettings).stream().findFirst().map(Fact::time);
  }

  private Answer destroyed(Call call, String club, String handler, Instant forgotten) {
    try {
      Duration goneWithin = keys.forget(club, handler);
      return Answer.json(
          200,
          new Writing()
              .put("handler", handler)
              .putPrinted("forgotten", forgotten)
              .putPrinted("lastCopyGoneBy", intake.now().plus(goneWithin))
              .done());
    } catch (JournalException e) {
      return call.refused(
          Problem.later(
              ProblemKind.JOURNAL_UNAVAILABLE,
              "The person is forgotten, but not all keys could be destroyed yet. They will be;"
                  + " ask again to learn by when.",
              SOON));
    }
  }
}
