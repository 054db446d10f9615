package dev.poleward.service.codec;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.event.ClubEvent;
import dev.poleward.domain.event.ClubEvent.AccessKeyIssued;
import dev.poleward.domain.event.ClubEvent.AccessKeyRevoked;
import dev.poleward.domain.event.ClubEvent.ClubRegistered;
import dev.poleward.domain.event.ClubEvent.ClubSettingsChanged;
import dev.poleward.domain.event.ClubEvent.PersonForgotten;
import java.util.List;
import java.util.Objects;

/** What concerns the club as a whole, as JSON. */
final class ClubCodec {

  private ClubCodec() {}

  static ClubRegistered readRegistered(Members in) {
    return new ClubRegistered(
        in.text("club"),
        in.text("name"),
        in.text("timeZone"),
        in.optionalDocument("careLimits"),
        in.optionalDocument("defaults"));
  }

  static ClubSettingsChanged readSettingsChanged(Members in) {
    return new ClubSettingsChanged(
        in.optionalText("name"),
        in.optionalText("timeZone"),
        in.optionalDocument("careLimits"),
        in.optionalDocument("defaults"));
  }

  static AccessKeyIssued readIssued(Members in) {
    List<String> scopes =
        Objects.requireNonNull(in.optionalList("scopes", JsonNode::textValue), "scopes");
    return new AccessKeyIssued(
        in.text("key"),
        scopes,
        in.optionalTexts("dogs"),
        in.optionalText("label"),
        in.text("secretHash"));
  }

  static AccessKeyRevoked readRevoked(Members in) {
    return new AccessKeyRevoked(in.text("key"));
  }

  static PersonForgotten readForgotten(Members in) {
    return new PersonForgotten(in.text("handler"));
  }

  static ObjectNode write(ClubEvent event) {
    Writing out = new Writing();
    switch (event) {
      case ClubRegistered e ->
          out.put("club", e.club())
              .put("name", e.name())
              .put("timeZone", e.timeZone())
              .put("careLimits", e.careLimits())
              .put("defaults", e.defaults());
      case ClubSettingsChanged e ->
          out.put("name", e.name())
              .put("timeZone", e.timeZone())
              .put("careLimits", e.careLimits())
              .put("defaults", e.defaults());
      case AccessKeyIssued e ->
          out.put("key", e.key())
              .putTexts("scopes", e.scopes())
              .putTexts("dogs", e.dogs())
              .put("label", e.label())
              .put("secretHash", e.hash());
      case AccessKeyRevoked e -> out.put("key", e.key());
      case PersonForgotten e -> out.put("handler", e.handler());
    }
    return out.done();
  }
}
