package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.event.ClassEvent.ClassJoined;
import dev.poleward.domain.event.DogEvent.DogCleared;
import dev.poleward.domain.event.DogEvent.DogRested;
import dev.poleward.domain.event.ProgrammeEvent.ProgrammeAssigned;
import dev.poleward.domain.event.RegistryEvent.GroundRegistered;
import dev.poleward.domain.programme.DefaultProgramme;
import dev.poleward.domain.record.ClassRecord;
import dev.poleward.domain.record.ClubRecord;
import dev.poleward.domain.record.DeviceRecord;
import dev.poleward.domain.record.DogRecord;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.HandlerRecord;
import dev.poleward.domain.record.ProgrammeRecord;
import dev.poleward.domain.record.Registered;
import dev.poleward.service.codec.Documents;
import dev.poleward.service.codec.DogCodec;
import dev.poleward.service.codec.EventCodec;
import dev.poleward.service.codec.Writing;
import java.util.Map;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** What is registered, as the contract shows it. Immutable; safe for use by many threads. */
final class RegistryShapes {

  private final EventCodec codec;

  RegistryShapes(EventCodec codec) {
    this.codec = codec;
  }

  ObjectNode club(ClubRecord club, long position) {
    Fact<?> standing = club.registered().standing();
    return new Writing()
        .put("club", club.club())
        .put("name", club.name())
        .put("timeZone", club.timeZone())
        .put("careLimits", settings(club.careLimits()))
        .put("defaults", settings(club.defaults()))
        .putPrinted("registered", standing.time())
        .put("event", standing.id())
        .put("position", position)
        .done();
  }

  private static ObjectNode settings(@Nullable Map<String, Object> settings) {
    return Documents.write(settings == null ? Map.of() : settings);
  }

  ObjectNode ground(Registered<GroundRegistered> ground) {
    return flat(ground);
  }

  ObjectNode handler(PersonalView personal, HandlerRecord handler) {
    ObjectNode shape = flat(handler.registered());
    Fact<?> standing = handler.registered().standing();
    if (handler.forgotten() != null) {
      return shape.put("forgotten", true);
    }
    shape.setAll(personal.members(standing.id(), standing.sealed()));
    return shape;
  }

  ObjectNode dog(DogRecord dog) {
    Fact<?> standing = dog.registered().standing();
    Writing out =
        new Writing()
            .put("dog", dog.registered().standing().event().dog())
            .put("callName", dog.callName());
    DogCodec.writeTraits(out, dog.traits());
    out.put("mergedInto", dog.mergedInto()).putTexts("merged", dog.merged());
    if (dog.rested() != null) {
      out.put("rested", rested(dog.rested()));
    }
    if (dog.cleared() != null) {
      out.put("cleared", cleared(dog.cleared()));
    }
    if (dog.programme() != null) {
      out.put("programme", assigned(dog.programme()));
    }
    return registered(out.done(), standing, dog.registered());
  }

  private static ObjectNode rested(Fact<DogRested> rested) {
    return new Writing()
        .put("reason", rested.event().reason())
        .putPrinted("until", rested.event().until())
        .putPrinted("since", rested.time())
        .done();
  }

  private static ObjectNode cleared(Fact<DogCleared> cleared) {
    return new Writing()
        .put("by", cleared.event().by())
        .put("limits", cleared.event().limits())
        .putPrinted("since", cleared.time())
        .done();
  }

  private static ObjectNode assigned(Fact<ProgrammeAssigned> assigned) {
    return new Writing()
        .put("programme", assigned.event().programme())
        .put("startStage", assigned.event().startStage())
        .putPrinted("since", assigned.time())
        .done();
  }

  /** A class in a list, without its members. */
  ObjectNode group(ClassRecord group) {
    return flat(group.formed());
  }

  /**
   * A class with its members.
   *
   * @param visible which dogs the reader may see
   */
  ObjectNode groupWithMembers(ClassRecord group, Predicate<String> visible) {
    ObjectNode shape = group(group);
    ArrayNode members = shape.putArray("members");
    group
        .members()
        .forEach(
            (dog, joined) -> {
              if (visible.test(dog)) {
                members.add(member(dog, joined));
              }
            });
    return shape;
  }

  /** A member of a class. */
  ObjectNode member(String dog, Fact<ClassJoined> joined) {
    return new Writing().put("dog", dog).putPrinted("since", joined.time()).done();
  }

  ObjectNode programme(ProgrammeRecord programme) {
    ObjectNode shape = flat(programme.inForce());
    return shape.put("version", programme.inForce().standing().event().version());
  }

  /** The programme that ships: no event announced it. */
  ObjectNode defaultProgramme() {
    ObjectNode shape = Documents.write(DefaultProgramme.document());
    shape.put("version", DefaultProgramme.programme().version()).putArray("duplicates");
    return shape;
  }

  /**
   * A device with its assignment.
   *
   * @param visible which dogs the reader may see
   */
  ObjectNode device(DeviceRecord device, Predicate<String> visible) {
    ObjectNode shape = flat(device.enrolled());
    if (device.assigned() != null) {
      shape.set(
          "assigned",
          new Writing()
              .put("dog", shown(device.assigned().event().dog(), visible))
              .put("poleSet", device.assigned().event().poleSet())
              .put("ground", device.assigned().event().ground())
              .putPrinted("since", device.assigned().time())
              .done());
    }
    return shape;
  }

  private static @Nullable String shown(@Nullable String dog, Predicate<String> visible) {
    return dog == null || visible.test(dog) ? dog : null;
  }

  /** The data of the announcement that stands, and which that is. */
  ObjectNode flat(Registered<?> thing) {
    return registered(codec.encode(thing.standing().event()), thing);
  }

  private static ObjectNode registered(ObjectNode shape, Registered<?> thing) {
    return registered(shape, thing.standing(), thing);
  }

  private static ObjectNode registered(ObjectNode shape, Fact<?> standing, Registered<?> thing) {
    shape.put("registered", standing.time().toString()).put("event", standing.id());
    ArrayNode duplicates = shape.putArray("duplicates");
    thing.duplicates().forEach(duplicates::add);
    return shape;
  }
}
