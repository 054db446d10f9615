package dev.poleward.service.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.care.Conditions;
import dev.poleward.domain.care.Trained;
import dev.poleward.domain.event.ProgrammeEvent.PlanIssued;
import dev.poleward.domain.judgement.ExpectedRetention;
import dev.poleward.domain.record.DogRecord;
import dev.poleward.domain.record.EntityKind;
import dev.poleward.domain.record.EntityRef;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.PlacedRep;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.Registry;
import dev.poleward.domain.record.View;
import dev.poleward.service.access.Authentication.Identity;
import dev.poleward.service.access.Permission;
import dev.poleward.service.access.Scope;
import dev.poleward.service.codec.CanonicalJson;
import dev.poleward.service.codec.Documents;
import dev.poleward.service.http.Intake.Outcome;
import dev.poleward.service.http.Intake.Taken;
import dev.poleward.service.projection.ClubReader;
import dev.poleward.service.projection.Reading;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Plans of sessions: made and recorded. Safe for use by many threads. */
final class PlanRoutes {

  private final Gate gate;
  private final Bodies bodies;
  private final Intake intake;
  private final ClubReader clubs;
  private final OwnEvents own;
  private final PlacedReps placed;
  private final ClubsForgetting forgetting;
  private final Turns turns = new Turns();

  PlanRoutes(
      Gate gate,
      Bodies bodies,
      Intake intake,
      ClubReader clubs,
      OwnEvents own,
      PlacedReps placed,
      ClubsForgetting forgetting) {
    this.gate = gate;
    this.bodies = bodies;
    this.intake = intake;
    this.clubs = clubs;
    this.own = own;
    this.placed = placed;
    this.forgetting = forgetting;
  }

  /** {@code POST …/dogs/{dog}/plans}. */
  Answer post(Call call) {
    String club = call.inPath("club");
    return gate.inClub(
        call,
        club,
        Set.of(Scope.RECORDS_WRITE),
        identity ->
            ClubReads.isRegistered(clubs, club)
                ? bodies.judged(
                    call,
                    "AskForPlan",
                    body -> turns.take(club, () -> plan(call, club, identity, body)))
                : call.refused(ProblemKind.NOT_FOUND, "There is no such club."));
  }

  private Answer plan(Call call, String club, Identity identity, ObjectNode body) {
    if (!clubs.catchUp(club, ClubReads.CATCH_UP_MAX)) {
      return call.refused(ProblemKind.NOT_READY, "The node could not catch up in time.");
    }
    PlanIssued made;
    String id = body.get("id").textValue();
    Instant time = time(body);
    try (Reading reading = clubs.open(club)) {
      Optional<Answer> before = madeBefore(call, reading, id, body);
      if (before.isPresent()) {
        return before.get();
      }
      View then = new View(time, null);
      Placement placement = new Placement(reading.facts(), then);
      Registry registry = new Registry(placement, then);
      String dog = call.inPath("dog");
      Optional<DogRecord> known =
          placement.identity().group(dog).stream()
                  .anyMatch(each -> Permission.mayTouch(identity, each))
              ? registry.dog(dog)
              : Optional.empty();
      if (known.isEmpty()) {
        return call.refused(ProblemKind.NOT_FOUND, "There is no such dog.");
      }
      made =
          issued(
              dog,
              body,
              time,
              known.get(),
              registry,
              placement,
              repsUpTo(time, reading, dog),
              forgetting.of(reading, placement, LocalDays.zone(registry)));
    }
    return record(call, club, id, time, made, body);
  }

  /**
   * The reps that were run by then: those of the whole record, cut off, for each plan has a time of
   * its own and would place them anew.
   */
  private List<PlacedRep> repsUpTo(Instant time, Reading reading, String dog) {
    Placement whole = new Placement(reading.facts(), View.EVERYTHING);
    return placed.ofDog(reading, whole, View.EVERYTHING, dog).stream()
        .filter(rep -> !rep.moment().time().isAfter(time))
        .toList();
  }

  private Instant time(ObjectNode body) {
    return said(body).orElseGet(intake::now);
  }

  private static Optional<Instant> said(ObjectNode body) {
    return Optional.ofNullable(body.get("time"))
        .map(JsonNode::textValue)
        .map(text -> OffsetDateTime.parse(text).toInstant());
  }

  private static PlanIssued issued(
      String dog,
      ObjectNode body,
      Instant time,
      DogRecord known,
      Registry registry,
      Placement placement,
      List<PlacedRep> reps,
      ExpectedRetention retention) {
    NextSession next =
        NextSession.of(
            dog,
            known,
            registry,
            Trained.timings(placement, Care.question(registry, Conditions.NOT_SAID, time).end()),
            reps,
            retention,
            time,
            PlanAsked.of(body),
            time);
    String plan = planOf(body);
    return new PlanIssued(plan, dog, Documents.read(next.document(plan, dog, wish(body))));
  }

  private static String planOf(ObjectNode body) {
    return body.path("plan").asText(body.get("id").textValue());
  }

  /** What was asked, without what only names the event. */
  private static ObjectNode wish(ObjectNode body) {
    ObjectNode wish = body.deepCopy();
    wish.remove(List.of("id", "time", "plan"));
    return wish;
  }

  /** The answer when the event's id or the plan's is taken; a wish that comes again is told so. */
  private static Optional<Answer> madeBefore(
      Call call, Reading reading, String id, ObjectNode body) {
    Optional<Fact<?>> before = reading.facts().event(id);
    if (before.isPresent()) {
      return Optional.of(
          before.get().event() instanceof PlanIssued issued
                  && issued.dog().equals(call.inPath("dog"))
                  && isSameWish(body, issued, before.get().time())
              ? Answer.json(200, answer(issued, before.get().time()))
              : call.refused(
                  ProblemKind.CONTRADICTED, "Event " + id + " was recorded with other content."));
    }
    String plan = planOf(body);
    return reading.facts().about(new EntityRef(EntityKind.PLAN, plan)).isEmpty()
        ? Optional.empty()
        : Optional.of(
            call.refused(ProblemKind.CONTRADICTED, "There is a plan " + plan + " already."));
  }

  /** As with all events, in their RFC 8785 forms: 4 and 4.0 are one number. */
  private static boolean isSameWish(ObjectNode body, PlanIssued issued, Instant time) {
    return issued.plan().equals(planOf(body))
        && said(body).orElse(time).equals(time)
        && issued.document().get("asked") instanceof Map<?, ?> asked
        && CanonicalJson.of(wish(body)).equals(CanonicalJson.of(Documents.write(asked)));
  }

  private Answer record(
      Call call, String club, String id, Instant time, PlanIssued made, ObjectNode body) {
    return switch (intake.take(club, List.of(own.of(id, time, made)))) {
      case Outcome.NotKept notKept -> call.refused(notKept.problem());
      case Outcome.Done done ->
          switch (done.taken().getFirst()) {
            case Taken.Recorded _ -> Answer.json(201, answer(made, time));
            case Taken.Pending _ ->
                Answer.json(202, EventAnswers.pending(id))
                    .with("Location", EventAnswers.fateOf(club, id));
            // Somebody was faster between our look and our append.
            case Taken.Repeated _, Taken.Contradicted _ -> {
              try (Reading reading = clubs.open(club)) {
                yield madeBefore(call, reading, id, body).orElseThrow();
              }
            }
          };
    };
  }

  private static ObjectNode answer(PlanIssued issued, Instant time) {
    return PlanOrder.of(Documents.write(issued.document()).put("issued", time.toString()));
  }
}
