package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.event.EventWithdrawn;
import dev.poleward.domain.event.RepEvent.RepLogged;
import dev.poleward.domain.event.TrainingEvent;
import dev.poleward.domain.record.Announcement;
import dev.poleward.domain.record.EntityKind;
import dev.poleward.domain.record.EntityRef;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Facts;
import dev.poleward.domain.record.Moment;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.Precedence;
import dev.poleward.domain.record.View;
import dev.poleward.service.codec.Writing;
import dev.poleward.service.projection.Reading.Contradiction;
import dev.poleward.service.projection.Reading.Fate;
import dev.poleward.service.projection.Reading.FeedEvent;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What became of events, as the contract shows it. Immutable; safe for use by many threads. */
final class FateShape {

  static ObjectNode pending(String id) {
    return ending(new Writing().put("id", id).put("status", "pending").done(), List.of(), 0);
  }

  ObjectNode of(Facts facts, Fate fate) {
    FeedEvent event = fate.event();
    Fact<?> fact = fact(event);
    Placement placement = new Placement(facts, View.EVERYTHING);
    List<EntityRef> waitsFor = placement.waitsFor(fact);
    boolean withdrawn = !placement.knowledge().stands(fact);
    ObjectNode shape =
        new Writing()
            .put("id", event.envelope().id())
            .put("type", event.type())
            .put("status", status(withdrawn, waitsFor))
            .put("time", event.envelope().time())
            .putPrinted("recordedtime", event.recorded())
            .put("duplicateOf", withdrawn ? null : duplicateOf(placement, fact))
            .put("withdrawnBy", withdrawn ? withdrawnBy(facts, fact) : null)
            .done();
    ending(shape, withdrawn ? List.of() : waitsFor, fate.repeated());
    ArrayNode contradicted = shape.withArray("contradicted");
    fate.contradictions().forEach(each -> contradicted.add(contradiction(each)));
    return shape.put("contradictedCount", fate.contradicted());
  }

  private static ObjectNode ending(ObjectNode shape, List<EntityRef> waitsFor, long repeated) {
    shape.set("waitsFor", EventAnswers.waitsFor(waitsFor));
    shape.put("repeated", repeated);
    shape.set("contradicted", JsonNodeFactory.instance.arrayNode());
    return shape.put("contradictedCount", 0);
  }

  private static Fact<?> fact(FeedEvent event) {
    return new Fact<>(
        new Moment(event.envelope().time().toInstant(), event.envelope().id()),
        event.recorded(),
        event.event(),
        event.sealed());
  }

  private static String status(boolean withdrawn, List<EntityRef> waitsFor) {
    if (withdrawn) {
      return "withdrawn";
    }
    return waitsFor.isEmpty() ? "applied" : "waiting";
  }

  private static @Nullable String duplicateOf(Placement placement, Fact<?> fact) {
    EntityRef announced = Announcement.of(fact.event());
    if (announced == null || announced.kind() == EntityKind.PROGRAMME) {
      return null;
    }
    List<? extends Fact<?>> announcements =
        fact.event() instanceof RepLogged rep
            ? placement.loggings(rep.rep())
            : placement.knowledge().announcements(announced, typeOf(fact));
    return announcements.isEmpty() || announcements.getFirst().id().equals(fact.id())
        ? null
        : announcements.getFirst().id();
  }

  private static Class<? extends TrainingEvent> typeOf(Fact<?> fact) {
    return fact.event().getClass();
  }

  private static @Nullable String withdrawnBy(Facts facts, Fact<?> fact) {
    Optional<Fact<EventWithdrawn>> first =
        facts.corrections().withdrawalsOf(fact.id()).stream().min(Precedence.BY_MOMENT);
    return first.map(Fact::id).orElse(null);
  }

  private static ObjectNode contradiction(Contradiction contradiction) {
    return new Writing()
        .putPrinted("recordedtime", contradiction.recorded())
        .put("type", contradiction.type())
        .put("time", contradiction.envelope().time())
        .done()
        .set("data", JsonText.object(contradiction.data()));
  }
}
