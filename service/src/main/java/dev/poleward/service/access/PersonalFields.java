package dev.poleward.service.access;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.record.Sealed;
import dev.poleward.service.codec.CanonicalJson;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/**
 * Takes personal members out of an event's data before it is recorded, sealed under the key of the
 * person whose they are, and puts them back for those who may read them. Safe for use by many
 * threads.
 */
public final class PersonalFields {

  private static final JsonMapper JSON = new JsonMapper();

  private final PersonKeys keys;

  /** Seals and opens with these keys. */
  public PersonalFields(PersonKeys keys) {
    this.keys = keys;
  }

  /**
   * An event's data in the form in which it is recorded.
   *
   * @param data without personal members
   * @param sealed the personal members, dropped when the person is forgotten; null when there are
   *     none
   */
  public record Enveloped(ObjectNode data, @Nullable Sealed sealed) {}

  /**
   * Seals the personal members of an event. The same members of the same event come out as the same
   * box, for as long as the person is not forgotten.
   *
   * @param data as sent, valid for the type; stays as it is
   * @throws dev.poleward.service.journal.JournalException when the person's key cannot be had
   */
  public Enveloped enveloped(String club, String eventId, String type, ObjectNode data) {
    PersonalMembers personal = PersonalMembers.of(type, data);
    if (personal == null) {
      return new Enveloped(data, null);
    }
    byte[] members = CanonicalJson.of(personal.members()).getBytes(StandardCharsets.UTF_8);
    Sealed sealed =
        keys.seal(club, personal.person(), eventId, members)
            .orElseGet(() -> Sealed.dropped(personal.person()));
    return new Enveloped(personal.rest(), sealed);
  }

  /**
   * The personal members of an event by name; none when it has none or the person is forgotten.
   *
   * @throws BrokenSeal when they are not what was sealed
   */
  public ObjectNode members(String club, String eventId, @Nullable Sealed sealed) {
    return sealed == null
        ? JSON.createObjectNode()
        : keys.open(club, eventId, sealed)
            .map(plaintext -> read(eventId, plaintext))
            .orElseGet(JSON::createObjectNode);
  }

  private static ObjectNode read(String eventId, byte[] plaintext) {
    JsonNode tree;
    try {
      tree = JSON.readTree(plaintext);
    } catch (IOException _) {
      // Without the cause, which quotes what it could not read.
      throw new IllegalStateException("what was sealed in event " + eventId + " is no JSON");
    }
    if (tree instanceof ObjectNode members) {
      return members;
    }
    throw new IllegalStateException("what was sealed in event " + eventId + " is no object");
  }

  /**
   * An event's data, or whatever shows it, with its personal members; without them when the person
   * is forgotten.
   *
   * @param wire stays as it is
   */
  public ObjectNode opened(String club, String eventId, @Nullable Sealed sealed, ObjectNode wire) {
    ObjectNode whole = wire.objectNode();
    whole.setAll(wire);
    whole.setAll(members(club, eventId, sealed));
    return whole;
  }
}
