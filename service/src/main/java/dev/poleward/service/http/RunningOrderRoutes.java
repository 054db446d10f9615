package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.running.RunningOrder;
import dev.poleward.domain.running.RunningOrders;
import dev.poleward.domain.running.SwungPoles;
import dev.poleward.service.access.Permission;
import dev.poleward.service.access.Scope;
import dev.poleward.service.http.ClubReads.Reader;
import java.time.Clock;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.Set;

/** Who of a class runs when. Records nothing. Safe for use by many threads. */
final class RunningOrderRoutes {

  private final Gate gate;
  private final Bodies bodies;
  private final ClubReads reads;
  private final PlacedReps placed;
  private final ClubsForgetting clubs;
  private final Clock clock;

  /** An order takes up to some seconds of a processor: one at a time for a club. */
  private final Turns turns = new Turns();

  RunningOrderRoutes(
      Gate gate,
      Bodies bodies,
      ClubReads reads,
      PlacedReps placed,
      ClubsForgetting clubs,
      Clock clock) {
    this.gate = gate;
    this.bodies = bodies;
    this.reads = reads;
    this.placed = placed;
    this.clubs = clubs;
    this.clock = clock;
  }

  /** {@code POST …/classes/{class}/running-order}. */
  Answer post(Call call) {
    return gate.inClub(
        call,
        call.inPath("club"),
        Set.of(Scope.RECORDS_READ),
        identity ->
            Permission.mayTouchEveryDog(identity)
                ? asked(call)
                : call.refused(ProblemKind.FORBIDDEN, "The key is narrowed to some dogs."));
  }

  private Answer asked(Call call) {
    Optional<Problem> problem = new Parameters(call, Set.of()).problem();
    return problem
        .map(call::refused)
        .orElseGet(
            () ->
                bodies.judged(
                    call,
                    "AskForRunningOrder",
                    body -> reads.unmarked(call, (same, reader) -> answer(same, reader, body))));
  }

  private Answer answer(Call call, Reader reader, ObjectNode body) {
    RunningAsked asked = RunningAsked.of(body, clock.instant().truncatedTo(ChronoUnit.SECONDS));
    String group = call.inPath("class");
    return turns.take(
        reader.club(),
        () -> {
          Optional<DogsPresent> present = DogsPresent.of(asked, reader, placed, clubs, group);
          if (present.isEmpty()) {
            return call.refused(ProblemKind.NOT_FOUND, "There is no such class.");
          }
          DogsPresent dogs = present.get();
          if (!dogs.faults().isEmpty()) {
            return call.refused(Problem.inBody(dogs.faults()));
          }
          RunningOrder order = RunningOrders.of(dogs.question(), new SwungPoles());
          ZoneId zone = dogs.registry().club().map(LocalDays::zone).orElse(ZoneOffset.UTC);
          return Answer.json(200, new RunningShape(asked, dogs, order, zone).of(group));
        });
  }
}
