package dev.poleward.service.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.event.ClubEvent.AccessKeyIssued;
import dev.poleward.domain.event.ClubEvent.AccessKeyRevoked;
import dev.poleward.domain.record.EntityKind;
import dev.poleward.domain.record.EntityRef;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Facts;
import dev.poleward.domain.record.Precedence;
import dev.poleward.service.access.AccessKeys;
import dev.poleward.service.access.Issuance;
import dev.poleward.service.access.Issuance.Issued;
import dev.poleward.service.access.KeyRequest;
import dev.poleward.service.access.Scope;
import dev.poleward.service.codec.Writing;
import dev.poleward.service.contract.Fault;
import dev.poleward.service.contract.SentEvent;
import dev.poleward.service.http.ClubReads.Marking;
import dev.poleward.service.http.ClubReads.Reader;
import dev.poleward.service.http.Intake.Outcome;
import dev.poleward.service.http.Intake.Taken;
import dev.poleward.service.projection.ClubReader;
import dev.poleward.service.projection.Reading;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.jspecify.annotations.Nullable;

/** Access keys: made, listed, revoked. Safe for use by many threads. */
final class AccessRoutes {

  private static final Set<Scope> MANAGE = Set.of(Scope.CLUB_MANAGE);

  private final Gate gate;
  private final ClubReads reads;
  private final Bodies bodies;
  private final Intake intake;
  private final ClubReader clubs;
  private final AccessKeys keys;
  private final OwnEvents own;
  private final Turns turns = new Turns();

  AccessRoutes(
      Gate gate,
      ClubReads reads,
      Bodies bodies,
      Intake intake,
      ClubReader clubs,
      AccessKeys keys,
      OwnEvents own) {
    this.gate = gate;
    this.reads = reads;
    this.bodies = bodies;
    this.intake = intake;
    this.clubs = clubs;
    this.keys = keys;
    this.own = own;
  }

  /** What is recorded of a key. */
  private record Known(Fact<AccessKeyIssued> issued, @Nullable Fact<AccessKeyRevoked> revoked) {}

  private static Optional<Known> known(Facts facts, String key) {
    List<Fact<AccessKeyIssued>> issued = new ArrayList<>();
    List<Fact<AccessKeyRevoked>> revoked = new ArrayList<>();
    for (Fact<?> fact : facts.about(new EntityRef(EntityKind.KEY, key))) {
      Fact<AccessKeyIssued> issuing = fact.as(AccessKeyIssued.class);
      if (issuing != null) {
        issued.add(issuing);
      }
      Fact<AccessKeyRevoked> revoking = fact.as(AccessKeyRevoked.class);
      if (revoking != null) {
        revoked.add(revoking);
      }
    }
    return Precedence.standingFirst(issued).stream()
        .findFirst()
        .map(
            first ->
                new Known(
                    first, Precedence.standingFirst(revoked).stream().findFirst().orElse(null)));
  }

  /** {@code POST …/access-keys}. */
  Answer post(Call call) {
    String club = call.inPath("club");
    return gate.inClub(
        call,
        club,
        MANAGE,
        _ ->
            ClubReads.isRegistered(clubs, club)
                ? bodies.judged(
                    call, "IssueAccessKey", body -> turns.take(club, () -> issue(call, club, body)))
                : call.refused(ProblemKind.NOT_FOUND, "There is no such club."));
  }

  private Answer issue(Call call, String club, ObjectNode body) {
    String id = body.get("id").textValue();
    KeyRequest request = request(body);
    Optional<Answer> before = madeBefore(call, club, id, request);
    if (before.isPresent()) {
      return before.get();
    }
    return switch (keys.issue(club, request)) {
      case Issuance.Refused refused ->
          call.refused(Problem.inBody(List.of(new Fault("/" + refused.member(), refused.why()))));
      case Issued issued -> make(call, club, id, time(body), request, issued);
    };
  }

  private static KeyRequest request(ObjectNode body) {
    return new KeyRequest(
        body.path("key").textValue(),
        texts(body.get("scopes")).stream()
            .map(Scope::ofWire)
            .flatMap(Optional::stream)
            .collect(Collectors.toSet()),
        body.has("dogs") ? texts(body.get("dogs")) : null,
        body.path("label").textValue());
  }

  private static Set<String> texts(JsonNode array) {
    return StreamSupport.stream(array.spliterator(), false)
        .map(JsonNode::textValue)
        .collect(Collectors.toCollection(HashSet::new));
  }

  private Instant time(ObjectNode body) {
    JsonNode given = body.get("time");
    return given == null ? intake.now() : OffsetDateTime.parse(given.textValue()).toInstant();
  }

  /** The answer when the event's id or the key's is taken; a wish that comes again is told so. */
  private Optional<Answer> madeBefore(Call call, String club, String id, KeyRequest request) {
    if (!clubs.catchUp(club, ClubReads.CATCH_UP_MAX)) {
      return Optional.of(
          call.refused(ProblemKind.NOT_READY, "The node could not catch up in time."));
    }
    try (Reading reading = clubs.open(club)) {
      Optional<Fact<?>> before = reading.facts().event(id);
      if (before.isPresent()) {
        return Optional.of(
            before.get().event() instanceof AccessKeyIssued issued && request.ledTo(issued)
                ? Answer.json(200, shape(issued))
                : call.refused(
                    ProblemKind.CONTRADICTED, "Event " + id + " was recorded with other content."));
      }
      return request.key() != null && known(reading.facts(), request.key()).isPresent()
          ? Optional.of(
              call.refused(
                  ProblemKind.CONTRADICTED, "There is a key " + request.key() + " already."))
          : Optional.empty();
    }
  }

  private Answer make(
      Call call, String club, String id, Instant time, KeyRequest request, Issued issued) {
    SentEvent event = own.of(id, time, issued.event());
    String written = issued.text().written();
    return switch (intake.take(club, List.of(event))) {
      case Outcome.NotKept notKept -> call.refused(notKept.problem());
      case Outcome.Done done ->
          switch (done.taken().getFirst()) {
            case Taken.Recorded _ ->
                Answer.json(201, shape(issued.event()).put("accessKey", written));
            case Taken.Pending _ ->
                Answer.json(202, EventAnswers.pending(id).put("accessKey", written))
                    .with("Location", EventAnswers.fateOf(club, id));
            // Somebody was faster between our look and our append.
            case Taken.Repeated _, Taken.Contradicted _ ->
                madeBefore(call, club, id, request).orElseThrow();
          };
    };
  }

  private static ObjectNode shape(AccessKeyIssued issued) {
    return new Writing()
        .put("key", issued.key())
        .putTexts("scopes", issued.scopes())
        .putTexts("dogs", issued.dogs())
        .done();
  }

  /** {@code GET …/access-keys}. */
  Answer list(Call call) {
    return reads.read(call, MANAGE, Marking.BY_POSITION, AccessRoutes::list);
  }

  private static Answer list(Call call, Reader reader) {
    Parameters parameters = new Parameters(call, Set.of("limit", "cursor"));
    int limit = parameters.limit();
    String after = Cursors.id(parameters);
    Optional<Problem> problem = parameters.problem();
    if (problem.isPresent()) {
      return call.refused(problem.get());
    }
    List<String> ids = reader.reading().facts().announced(EntityKind.KEY, after, limit + 1);
    List<String> shown = ids.subList(0, Math.min(limit, ids.size()));
    ObjectNode body = JsonNodeFactory.instance.objectNode();
    ArrayNode items = body.putArray("accessKeys");
    shown.forEach(
        key -> known(reader.reading().facts(), key).ifPresent(each -> items.add(entry(each))));
    return new Page<>(shown, ids.size() > limit ? shown.getLast() : null)
        .linked(call, Answer.json(200, body));
  }

  private static ObjectNode entry(Known known) {
    return new Writing()
        .put("key", known.issued().event().key())
        .put("label", known.issued().event().label())
        .putTexts("scopes", known.issued().event().scopes())
        .putTexts("dogs", known.issued().event().dogs())
        .putPrinted("issued", known.issued().time())
        .putPrinted("revoked", known.revoked() == null ? null : known.revoked().time())
        .done();
  }

  /** {@code DELETE …/access-keys/{key}}. */
  Answer revoke(Call call) {
    String club = call.inPath("club");
    return gate.inClub(call, club, MANAGE, _ -> revoke(call, club, call.inPath("key")));
  }

  private Answer revoke(Call call, String club, String key) {
    if (!clubs.catchUp(club, ClubReads.CATCH_UP_MAX)) {
      return call.refused(ProblemKind.NOT_READY, "The node could not catch up in time.");
    }
    Optional<Known> before = look(club, key);
    if (before.isEmpty()) {
      return call.refused(ProblemKind.NOT_FOUND, "There is no such key.");
    }
    if (before.get().revoked() != null) {
      return revoked(key, before.get().revoked().time());
    }
    Instant now = intake.now();
    SentEvent event = own.of(own.newId(), now, new AccessKeyRevoked(key));
    return switch (intake.take(club, List.of(event))) {
      case Outcome.NotKept notKept -> call.refused(notKept.problem());
      case Outcome.Done done ->
          switch (done.taken().getFirst()) {
            case Taken.Recorded _ -> revoked(key, now);
            case Taken.Pending _ ->
                call.refused(
                    Problem.later(
                        ProblemKind.NOT_READY,
                        "The revocation is kept but not applied yet. Ask again.",
                        Intake.APPLY_MAX));
            case Taken.Repeated _, Taken.Contradicted _ -> throw OwnEvents.guessed(event);
          };
    };
  }

  private Optional<Known> look(String club, String key) {
    try (Reading reading = clubs.open(club)) {
      return known(reading.facts(), key);
    }
  }

  private static Answer revoked(String key, Instant time) {
    return Answer.json(200, new Writing().put("key", key).putPrinted("revoked", time).done());
  }
}
