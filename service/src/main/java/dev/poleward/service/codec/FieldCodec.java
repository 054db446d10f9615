package dev.poleward.service.codec;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.event.DeviceEvent;
import dev.poleward.domain.event.DeviceEvent.DeviceAssigned;
import dev.poleward.domain.event.DeviceEvent.DeviceEnrolled;
import dev.poleward.domain.event.DeviceKind;
import dev.poleward.domain.event.RegistryEvent;
import dev.poleward.domain.event.RegistryEvent.GroundRegistered;
import dev.poleward.domain.event.RegistryEvent.HandlerRegistered;
import dev.poleward.domain.event.SessionEvent;
import dev.poleward.domain.event.SessionEvent.SessionAttended;
import dev.poleward.domain.event.SessionEvent.SessionClosed;
import dev.poleward.domain.event.SessionEvent.SessionOpened;
import dev.poleward.domain.event.SessionEvent.SetupChanged;
import dev.poleward.domain.event.TimingEvent;
import dev.poleward.domain.event.TimingEvent.TimingPaired;
import dev.poleward.domain.event.TimingEvent.TimingRecorded;
import dev.poleward.domain.event.TimingEvent.TimingUnpaired;
import java.util.Objects;

/** What is out on the field as JSON: grounds and people, sessions, devices and their timings. */
final class FieldCodec {

  private FieldCodec() {}

  static GroundRegistered readGround(Members in) {
    return new GroundRegistered(
        in.text("ground"),
        in.optionalText("name"),
        in.optionalNumber("length"),
        in.optionalNumber("width"),
        in.optionalText("surface"));
  }

  static HandlerRegistered readHandler(Members in) {
    return new HandlerRegistered(in.text("handler"));
  }

  static ObjectNode write(RegistryEvent event) {
    return switch (event) {
      case GroundRegistered e ->
          new Writing()
              .put("ground", e.ground())
              .put("name", e.name())
              .put("length", e.length())
              .put("width", e.width())
              .put("surface", e.surface())
              .done();
      case HandlerRegistered e -> new Writing().put("handler", e.handler()).done();
    };
  }

  static SessionOpened readOpened(Members in) {
    return new SessionOpened(
        in.text("session"),
        in.optionalText("ground"),
        in.optionalText("class"),
        in.optionalNumber("temperature"),
        in.optionalNumber("humidity"),
        in.optionalText("surface"));
  }

  static SessionAttended readAttended(Members in) {
    return new SessionAttended(in.text("session"), in.text("dog"), in.truth("present"));
  }

  static SessionClosed readClosed(Members in) {
    return new SessionClosed(in.text("session"));
  }

  static SetupChanged readSetup(Members in) {
    Members setup = Objects.requireNonNull(in.optionalObject("setup"), "setup");
    return new SetupChanged(in.text("session"), SetupCodec.read(setup), in.optionalText("poleSet"));
  }

  static ObjectNode write(SessionEvent event) {
    Writing out = new Writing().put("session", event.session());
    switch (event) {
      case SessionOpened e ->
          out.put("ground", e.ground())
              .put("class", e.group())
              .put("temperature", e.temperature())
              .put("humidity", e.humidity())
              .put("surface", e.surface());
      case SessionAttended e -> out.put("dog", e.dog()).put("present", e.present());
      case SessionClosed _ -> {}
      case SetupChanged e ->
          out.put("setup", SetupCodec.write(e.setup())).put("poleSet", e.poleSet());
    }
    return out.done();
  }

  static DeviceEnrolled readEnrolled(Members in) {
    return new DeviceEnrolled(in.text("device"), in.choice("kind", DeviceKind.class));
  }

  static DeviceAssigned readAssigned(Members in) {
    return new DeviceAssigned(
        in.text("device"),
        in.optionalText("dog"),
        in.optionalText("poleSet"),
        in.optionalText("ground"));
  }

  static ObjectNode write(DeviceEvent event) {
    Writing out = new Writing().put("device", event.device());
    switch (event) {
      case DeviceEnrolled e -> out.put("kind", e.kind());
      case DeviceAssigned e ->
          out.put("dog", e.dog()).put("poleSet", e.poleSet()).put("ground", e.ground());
    }
    return out.done();
  }

  static TimingRecorded readTiming(Members in) {
    return new TimingRecorded(
        in.text("device"),
        in.longWhole("sequence"),
        in.longWhole("deviceClock"),
        in.number("entryAt"),
        in.number("exitAt"),
        in.optionalList("gaps", JsonNode::doubleValue),
        in.optionalText("session"),
        in.optionalText("dog"),
        in.optionalText("rep"),
        in.optionalNumber("battery"));
  }

  static TimingPaired readPaired(Members in) {
    return new TimingPaired(in.text("timing"), in.text("rep"));
  }

  static TimingUnpaired readUnpaired(Members in) {
    return new TimingUnpaired(in.text("timing"), in.text("rep"));
  }

  static ObjectNode write(TimingEvent event) {
    return switch (event) {
      case TimingRecorded e -> written(e);
      case TimingPaired e -> new Writing().put("timing", e.timing()).put("rep", e.rep()).done();
      case TimingUnpaired e -> new Writing().put("timing", e.timing()).put("rep", e.rep()).done();
    };
  }

  private static ObjectNode written(TimingRecorded timing) {
    ObjectNode node =
        new Writing()
            .put("device", timing.device())
            .put("sequence", timing.sequence())
            .put("deviceClock", timing.deviceClock())
            .put("entryAt", timing.entryAt())
            .put("exitAt", timing.exitAt())
            .put("session", timing.session())
            .put("dog", timing.dog())
            .put("rep", timing.rep())
            .put("battery", timing.battery())
            .done();
    if (timing.gaps() != null) {
      ArrayNode gaps = node.putArray("gaps");
      timing.gaps().forEach(gaps::add);
    }
    return node;
  }
}
