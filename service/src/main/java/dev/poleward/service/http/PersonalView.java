package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.record.Facts;
import dev.poleward.domain.record.Sealed;
import dev.poleward.service.access.ForgottenPeople;
import dev.poleward.service.access.PersonalFields;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Personal members as one reading may show them. Who is forgotten in what is read is not shown,
 * even while a key is still about: an answer follows from the record, not from how far the keys
 * have gone. For one thread and one reading.
 */
final class PersonalView {

  private final PersonalFields personal;
  private final String club;
  private final Facts facts;
  private final Map<String, Boolean> forgotten = new HashMap<>();

  PersonalView(PersonalFields personal, String club, Facts facts) {
    this.personal = personal;
    this.club = club;
    this.facts = facts;
  }

  /** The members sealed with an event; none when there are none or the person is forgotten. */
  ObjectNode members(String event, @Nullable Sealed sealed) {
    if (sealed == null || sealed.isDropped() || isForgotten(sealed.person())) {
      return JsonNodeFactory.instance.objectNode();
    }
    return personal.members(club, event, sealed);
  }

  private boolean isForgotten(String person) {
    return forgotten.computeIfAbsent(person, each -> ForgottenPeople.isForgotten(facts, each));
  }
}
