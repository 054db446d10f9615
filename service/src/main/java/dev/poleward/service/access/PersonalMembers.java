package dev.poleward.service.access;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The personal members of an event's data, apart from the rest.
 *
 * @param person whose they are: a handler's id, or {@code dog:} or {@code rep:} and an id where
 *     nobody is named (ids hold no colon)
 * @param members the members, by name
 * @param rest the data without them
 */
record PersonalMembers(String person, ObjectNode members, ObjectNode rest) {

  /** Marks somebody who is known only by a dog. */
  static final String DOG = "dog:";

  /** Marks somebody who is known only by a rep. */
  static final String REP = "rep:";

  /** The personal members of such an event, or null when it has none. */
  static @Nullable PersonalMembers of(String type, ObjectNode data) {
    return switch (type) {
      case "handler.registered.v1" -> taken(data, data.path("handler").asText(), handlers(data));
      case "rep.logged.v1", "rep.amended.v1" ->
          data.path("note").isTextual() ? taken(data, writer(data), List.of("note")) : null;
      default -> null;
    };
  }

  private static List<String> handlers(ObjectNode data) {
    return List.of("name", "email").stream().filter(data::has).toList();
  }

  /** Who wrote a note, as far as the event says. */
  private static String writer(ObjectNode data) {
    return person(
        text(data.path("handler")),
        text(data.path("observer")),
        text(data.path("dog")),
        data.path("rep").asText());
  }

  /** Whose a note is: the handler's, else the observer's, else somebody's of that dog. */
  static String person(
      @Nullable String handler, @Nullable String observer, @Nullable String dog, String rep) {
    if (handler != null) {
      return handler;
    }
    if (observer != null) {
      return observer;
    }
    return dog != null ? DOG + dog : REP + rep;
  }

  /** Whether that stands for somebody unnamed. */
  static boolean isStandIn(String person) {
    return person.startsWith(DOG) || person.startsWith(REP);
  }

  private static @Nullable String text(JsonNode node) {
    return node.isTextual() ? node.textValue() : null;
  }

  private static @Nullable PersonalMembers taken(
      ObjectNode data, String person, List<String> names) {
    if (names.isEmpty()) {
      return null;
    }
    ObjectNode members = data.objectNode();
    names.forEach(name -> members.set(name, data.get(name)));
    // Shallow: only the outermost members change hands.
    ObjectNode rest = data.objectNode();
    rest.setAll(data);
    rest.remove(names);
    return new PersonalMembers(person, members, rest);
  }
}
