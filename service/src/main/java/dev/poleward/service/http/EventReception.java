package dev.poleward.service.http;

import dev.poleward.service.access.Authentication.Identity;
import dev.poleward.service.access.Permission;
import dev.poleward.service.access.Scope;
import dev.poleward.service.contract.Judgement;
import dev.poleward.service.contract.SentEvent;
import dev.poleward.service.http.Intake.Outcome;
import dev.poleward.service.http.Intake.Taken;
import dev.poleward.service.projection.ClubReader;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/**
 * The way of one event from its judgement to its answer, whichever door it came through. Safe for
 * use by many threads.
 */
final class EventReception {

  private final Gate gate;
  private final ClubReader clubs;
  private final Admission admission;
  private final Intake intake;

  EventReception(Gate gate, ClubReader clubs, Admission admission, Intake intake) {
    this.gate = gate;
    this.clubs = clubs;
    this.admission = admission;
    this.intake = intake;
  }

  /** Who sends events, and for which club. */
  record Sender(String club, Identity identity) {}

  /** Answers as {@code then} does for a sender with one of these scopes in the path's club. */
  Answer letIn(Call call, Set<Scope> anyOf, Function<Sender, Answer> then) {
    String club = call.inPath("club");
    return gate.inClub(
        call,
        club,
        anyOf,
        identity ->
            Permission.asHost(identity) && !ClubReads.isRegistered(clubs, club)
                ? call.refused(ProblemKind.NOT_FOUND, "There is no such club.")
                : then.apply(new Sender(club, identity)));
  }

  /**
   * Takes an event if it is in order and its sender may send it, and says what became of it.
   *
   * @param leadsTo where the answer leads when the event is new and applied
   */
  Answer receive(
      Call call, Sender sender, Judgement judgement, Function<SentEvent, String> leadsTo) {
    return switch (judgement) {
      case Judgement.Refused refused -> call.refused(Problem.inBody(refused.faults()));
      case Judgement.Accepted accepted ->
          switch (admission.of(sender.club(), sender.identity(), "", accepted.event())) {
            case Admission.Admitted admitted ->
                taken(call, sender.club(), admitted.event(), leadsTo);
            case Admission.Turned turned -> call.refused(turned.problem());
          };
    };
  }

  private Answer taken(
      Call call, String club, SentEvent event, Function<SentEvent, String> leadsTo) {
    return switch (intake.take(club, List.of(event))) {
      case Outcome.NotKept notKept -> call.refused(notKept.problem());
      case Outcome.Done done -> answer(call, club, event, done.taken().getFirst(), leadsTo);
    };
  }

  private static Answer answer(
      Call call, String club, SentEvent event, Taken taken, Function<SentEvent, String> leadsTo) {
    String id = event.envelope().id();
    String fate = EventAnswers.fateOf(club, id);
    return switch (taken) {
      case Taken.Recorded recorded ->
          Answer.json(201, EventAnswers.recorded(id, recorded.waitsFor()))
              .with("Location", recorded.waitsFor().isEmpty() ? leadsTo.apply(event) : fate);
      case Taken.Repeated _ -> Answer.json(200, EventAnswers.repeated(id));
      case Taken.Pending _ -> Answer.json(202, EventAnswers.pending(id)).with("Location", fate);
      case Taken.Contradicted _ ->
          call.refused(
              ProblemKind.CONTRADICTED,
              "Event "
                  + id
                  + " was recorded before with other content; that stands, and this is"
                  + " kept beside it. See "
                  + fate
                  + ".");
    };
  }
}
