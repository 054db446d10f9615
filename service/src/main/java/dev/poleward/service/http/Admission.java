package dev.poleward.service.http;

import com.fasterxml.jackson.databind.JsonNode;
import dev.poleward.domain.event.TrainingEvent;
import dev.poleward.domain.record.Fact;
import dev.poleward.service.access.Authentication.Identity;
import dev.poleward.service.access.Permission;
import dev.poleward.service.access.Scope;
import dev.poleward.service.access.ScopeOfType;
import dev.poleward.service.codec.EventCodec;
import dev.poleward.service.contract.Fault;
import dev.poleward.service.contract.SentEvent;
import dev.poleward.service.projection.ClubReader;
import dev.poleward.service.projection.Reading;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Whether somebody may send an event that is in order: by its type, by its dog, by what it
 * withdraws. Safe for use by many threads.
 */
final class Admission {

  private static final Set<Scope> MANAGE = Set.of(Scope.CLUB_MANAGE);
  private static final String LOGGED = "rep.logged.v1";
  private static final String AMENDED = "rep.amended.v1";
  private static final String WITHDRAWN = "event.withdrawn.v1";

  /** The verdict. */
  sealed interface Verdict {}

  /** Let in; a recording time from somebody who may not give one is dropped. */
  record Admitted(SentEvent event) implements Verdict {}

  /** Turned away. */
  record Turned(Problem problem) implements Verdict {}

  private final ClubReader clubs;
  private final Clock clock;

  Admission(ClubReader clubs, Clock clock) {
    this.clubs = clubs;
    this.clock = clock;
  }

  Verdict of(String club, Identity identity, String prefix, SentEvent event) {
    return switch (ScopeOfType.of(event.type())) {
      case ScopeOfType.MadeBy made ->
          new Turned(
              Problem.inBody(
                  List.of(new Fault(prefix + "/type", "is made by " + made.route() + " only"))));
      case ScopeOfType.AnyOf any ->
          switch (Permission.of(identity, club, any.scopes())) {
            case Permission.Granted _ -> granted(club, identity, prefix, event);
            case Permission.OtherClub _ ->
                new Turned(Problem.of(ProblemKind.FORBIDDEN, "The key is not for this club."));
            case Permission.ScopeMissing missing ->
                new Turned(Problem.scopeMissing(missing.anyOf()));
          };
    };
  }

  private Verdict granted(String club, Identity identity, String prefix, SentEvent event) {
    if (!Permission.mayTouchEveryDog(identity)
        && (!isAboutOwnDog(identity, event) || logsAnothersRep(club, identity, event))) {
      return new Turned(
          Problem.of(
              ProblemKind.FORBIDDEN,
              "The key is narrowed to some dogs, and this is not about one of them."));
    }
    boolean manages = Permission.of(identity, club, MANAGE) instanceof Permission.Granted;
    if (event.forgotten() && !manages) {
      // Only an import says that members are gone.
      return new Turned(Problem.scopeMissing(MANAGE));
    }
    if (event.type().equals(WITHDRAWN) && !manages && withdrawsMoreThanRecords(club, event)) {
      return new Turned(Problem.scopeMissing(MANAGE));
    }
    return manages ? imported(prefix, event) : new Admitted(fresh(event));
  }

  private static boolean isAboutOwnDog(Identity identity, SentEvent event) {
    JsonNode dog = event.data().get("dog");
    return dog != null
        && !event.type().equals(AMENDED)
        && Permission.mayTouch(identity, dog.asText());
  }

  /** A rep that is logged already is not taken from the dog that it was logged for. */
  private boolean logsAnothersRep(String club, Identity identity, SentEvent event) {
    JsonNode rep = event.data().get("rep");
    if (!event.type().equals(LOGGED) || rep == null) {
      return false;
    }
    try (Reading reading = clubs.open(club)) {
      return reading.facts().repsLoggedAs(rep.asText()).stream()
          .anyMatch(logged -> !Permission.mayTouch(identity, logged.event().dog()));
    }
  }

  /**
   * What is known already is withdrawn by those who may send it. What is not known yet cannot be
   * judged: nothing is refused for what is not known.
   */
  private boolean withdrawsMoreThanRecords(String club, SentEvent event) {
    Optional<TrainingEvent> target;
    clubs.catchUp(club, ClubReads.CATCH_UP_MAX);
    try (Reading reading = clubs.open(club)) {
      target = reading.facts().event(event.data().path("event").asText()).map(Fact::event);
    }
    return target
        .map(EventCodec::typeOf)
        .map(ScopeOfType::of)
        .filter(
            scope ->
                !(scope instanceof ScopeOfType.AnyOf any
                    && any.scopes().contains(Scope.RECORDS_WRITE)))
        .isPresent();
  }

  private Verdict imported(String prefix, SentEvent event) {
    if (event.recordedTime() != null && event.recordedTime().isAfter(clock.instant())) {
      return new Turned(
          Problem.inBody(
              List.of(new Fault(prefix + "/recordedtime", "must not lie in the future"))));
    }
    return new Admitted(event);
  }

  /** Only an import says when something was recorded. */
  private static SentEvent fresh(SentEvent event) {
    return new SentEvent(event.envelope(), event.type(), event.data(), null, event.forgotten());
  }
}
