package dev.poleward.service.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.event.ClubEvent.ClubRegistered;
import dev.poleward.domain.record.EntityRef;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Precedence;
import dev.poleward.service.access.AccessKeys;
import dev.poleward.service.access.Issuance.Issued;
import dev.poleward.service.access.KeyRequest;
import dev.poleward.service.codec.EventCodec;
import dev.poleward.service.codec.Writing;
import dev.poleward.service.contract.SentEvent;
import dev.poleward.service.http.Intake.Outcome;
import dev.poleward.service.http.Intake.Taken;
import dev.poleward.service.projection.ClubReader;
import dev.poleward.service.projection.Reading;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Where clubs register. Safe for use by many threads. */
final class ClubDoor {

  private final Gate gate;
  private final Bodies bodies;
  private final Intake intake;
  private final ClubReader clubs;
  private final AccessKeys keys;
  private final EventCodec codec;
  private final OwnEvents own;
  private final Turns turns = new Turns();

  ClubDoor(
      Gate gate,
      Bodies bodies,
      Intake intake,
      ClubReader clubs,
      AccessKeys keys,
      EventCodec codec,
      OwnEvents own) {
    this.gate = gate;
    this.bodies = bodies;
    this.intake = intake;
    this.clubs = clubs;
    this.keys = keys;
    this.codec = codec;
    this.own = own;
  }

  /** {@code POST /v1/clubs}. */
  Answer post(Call call) {
    return gate.asHost(
        call, _ -> bodies.judged(call, "RegisterClub", body -> register(call, body)));
  }

  private Answer register(Call call, ObjectNode body) {
    ObjectNode data = body.deepCopy();
    String id = data.remove("id").textValue();
    JsonNode given = data.remove("time");
    OffsetDateTime time = given == null ? null : OffsetDateTime.parse(given.textValue());
    ClubRegistered wanted =
        (ClubRegistered) Objects.requireNonNull(codec.decode("club.registered.v1", data));
    if (!clubs.catchUp(wanted.club(), ClubReads.CATCH_UP_MAX)) {
      return call.refused(ProblemKind.NOT_READY, "The node could not catch up in time.");
    }
    return turns.take(
        wanted.club(),
        () -> known(call, wanted, id, time).orElseGet(() -> registerNew(call, wanted, id, time)));
  }

  /** The answer when the club is registered already. */
  private Optional<Answer> known(
      Call call, ClubRegistered wanted, String id, @Nullable OffsetDateTime time) {
    List<Fact<ClubRegistered>> registrations = new ArrayList<>();
    try (Reading reading = clubs.open(wanted.club())) {
      for (Fact<?> fact : reading.facts().about(EntityRef.CLUB_ITSELF)) {
        Fact<ClubRegistered> registration = fact.as(ClubRegistered.class);
        if (registration != null) {
          registrations.add(registration);
        }
      }
    }
    return Precedence.standingFirst(registrations).stream()
        .findFirst()
        .map(
            fact ->
                fact.id().equals(id)
                        && fact.event().equals(wanted)
                        && (time == null || fact.time().equals(time.toInstant()))
                    ? Answer.json(200, new Writing().put("club", wanted.club()).done())
                    : call.refused(
                        ProblemKind.CONTRADICTED,
                        "The club " + wanted.club() + " is registered with other content."));
  }

  private Answer registerNew(
      Call call, ClubRegistered wanted, String id, @Nullable OffsetDateTime given) {
    OffsetDateTime time = given == null ? intake.now().atOffset(ZoneOffset.UTC) : given;
    if (!(keys.issue(wanted.club(), KeyRequest.first()) instanceof Issued issued)) {
      throw new IllegalStateException("a club's first key can always be made");
    }
    SentEvent registration = own.of(id, time, wanted);
    SentEvent firstKey = own.of(own.newId(), time, issued.event());
    return switch (intake.take(wanted.club(), List.of(registration, firstKey))) {
      case Outcome.NotKept notKept -> call.refused(notKept.problem());
      case Outcome.Done done ->
          switch (done.taken().getFirst()) {
            case Taken.Recorded _ -> {
              Answer standing = known(call, wanted, id, given).orElseThrow();
              // Of two registrations at once one stands, and the other learns so here.
              yield standing.status() == 200 ? registered(wanted, issued) : standing;
            }
            case Taken.Pending _ ->
                Answer.json(202, EventAnswers.pending(id).put("accessKey", issued.text().written()))
                    .with("Location", EventAnswers.fateOf(wanted.club(), id));
            // Somebody was faster between our look and our append.
            case Taken.Repeated _, Taken.Contradicted _ ->
                known(call, wanted, id, given).orElseThrow();
          };
    };
  }

  private static Answer registered(ClubRegistered club, Issued firstKey) {
    return Answer.json(
        201,
        new Writing().put("club", club.club()).put("accessKey", firstKey.text().written()).done());
  }
}
