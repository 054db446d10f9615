package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.service.access.Scope;
import dev.poleward.service.access.ScopeOfType;
import dev.poleward.service.contract.Contract;
import dev.poleward.service.contract.SentEvent;
import dev.poleward.service.http.EventReception.Sender;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Where events come in one resource at a time, as flat bodies; what goes in is the very event that
 * the event door would take. Safe for use by many threads.
 */
final class ResourceDoors {

  private static final Pattern PLACE = Pattern.compile("\\{([a-z]+)}");

  /**
   * A door.
   *
   * @param below its path below the club's; what stands in its open places belongs to the data
   * @param type of the events that it makes
   * @param thing where that can be read which an event makes known, filled in from its data; null
   *     where nothing is made known under an id
   */
  record Door(String below, String type, @Nullable String thing) {

    /** The path as the contract has it. */
    String path() {
      return "/v1/clubs/{club}" + below;
    }

    /** Any one of these lets in. */
    Set<Scope> scopes() {
      return switch (ScopeOfType.of(type)) {
        case ScopeOfType.AnyOf any -> any.scopes();
        case ScopeOfType.MadeBy made ->
            throw new IllegalStateException(type + " is made by " + made.route());
      };
    }

    private Map<String, String> inPath(Call call) {
      Map<String, String> inPath = new HashMap<>();
      PLACE
          .matcher(below)
          .results()
          .forEach(each -> inPath.put(each.group(1), call.inPath(each.group(1))));
      return inPath;
    }

    private String leadsTo(String club, SentEvent event) {
      return thing == null
          ? EventAnswers.fateOf(club, event.envelope().id())
          : "/v1/clubs/" + club + filled(thing, event.data());
    }

    private static String filled(String path, ObjectNode data) {
      return PLACE
          .matcher(path)
          .replaceAll(place -> Matcher.quoteReplacement(data.path(place.group(1)).textValue()));
    }
  }

  static final List<Door> ALL =
      List.of(
          new Door("/dogs", "dog.registered.v1", "/dogs/{dog}"),
          new Door("/handlers", "handler.registered.v1", "/handlers/{handler}"),
          new Door("/grounds", "ground.registered.v1", "/grounds/{ground}"),
          new Door("/classes", "class.formed.v1", "/classes/{class}"),
          new Door("/classes/{class}/members", "class.joined.v1", null),
          new Door("/classes/{class}/departures", "class.left.v1", null),
          new Door("/programmes", "programme.published.v1", "/programmes/{programme}"),
          new Door("/dogs/{dog}/homework", "homework.set.v1", null),
          new Door("/dogs/{dog}/goals", "goal.set.v1", null),
          new Door("/dogs/{dog}/trials", "trial.run.v1", null),
          new Door("/devices", "device.enrolled.v1", "/devices/{device}"),
          new Door("/sessions", "session.opened.v1", "/sessions/{session}"),
          new Door("/sessions/{session}/setups", "setup.changed.v1", null),
          new Door("/sessions/{session}/reps", "rep.logged.v1", "/reps/{rep}"),
          new Door("/sessions/{session}/attendance", "session.attended.v1", null),
          new Door("/sessions/{session}/close", "session.closed.v1", null),
          new Door("/reps/{rep}/amendments", "rep.amended.v1", null),
          new Door("/events/{event}/withdrawal", "event.withdrawn.v1", null));

  private final Contract contract;
  private final Bodies bodies;
  private final EventReception reception;

  ResourceDoors(Contract contract, Bodies bodies, EventReception reception) {
    this.contract = contract;
    this.bodies = bodies;
    this.reception = reception;
  }

  void addTo(Routes routes) {
    for (Door door : ALL) {
      Set<Scope> scopes = door.scopes();
      routes.post(
          door.path(),
          call -> reception.letIn(call, scopes, sender -> received(call, door, sender)));
    }
  }

  private Answer received(Call call, Door door, Sender sender) {
    return bodies.json(
        call,
        tree ->
            reception.receive(
                call,
                sender,
                contract.judgeFlatEvent(door.type(), door.inPath(call), tree),
                event -> door.leadsTo(sender.club(), event)));
  }
}
