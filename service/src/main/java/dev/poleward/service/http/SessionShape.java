package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.event.SessionEvent.SessionAttended;
import dev.poleward.domain.event.SessionEvent.SetupChanged;
import dev.poleward.domain.record.DogIdentity;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.PlacedRep;
import dev.poleward.domain.record.SessionRecord;
import dev.poleward.service.codec.SetupCodec;
import dev.poleward.service.codec.Writing;
import java.util.List;

/** Sessions as the contract shows them. Immutable; safe for use by many threads. */
final class SessionShape {

  private static final String MAIN_POLE_SET = "main";

  private final RegistryShapes shapes;
  private final RepShape reps;

  SessionShape(RegistryShapes shapes, RepShape reps) {
    this.shapes = shapes;
    this.reps = reps;
  }

  /** A session in a list. */
  ObjectNode inList(SessionRecord session) {
    ObjectNode shape = shapes.flat(session.opened());
    if (session.closed() != null) {
      shape.put("closed", session.closed().time().toString());
    }
    return shape;
  }

  /**
   * A session as it stands, as far as the reader may see it.
   *
   * @param visible the reps among its own that the reader may see
   */
  ObjectNode asItStands(
      ClubReads.Reader reader, SessionRecord session, List<PlacedRep> visible, DogIdentity dogs) {
    ObjectNode shape = inList(session);
    ArrayNode setups = shape.putArray("setups");
    session.setups().forEach(setup -> setups.add(setup(setup)));
    ArrayNode attendance = shape.putArray("attendance");
    for (Fact<SessionAttended> attended : session.attendance()) {
      String dog = dogs.of(attended.event().dog());
      if (reader.maySee(dogs, dog)) {
        attendance.add(attendance(attended, dog));
      }
    }
    ArrayNode shown = shape.putArray("reps");
    visible.forEach(rep -> shown.add(reps.of(reader.personal(), rep)));
    return shape;
  }

  /**
   * Whether a dog is there.
   *
   * @param dog the one animal that it is
   */
  ObjectNode attendance(Fact<SessionAttended> attended, String dog) {
    return new Writing()
        .put("dog", dog)
        .put("present", attended.event().present())
        .putPrinted("time", attended.time())
        .put("event", attended.id())
        .done();
  }

  /** What stands from some time on. */
  ObjectNode setup(Fact<SetupChanged> setup) {
    SetupChanged changed = setup.event();
    ObjectNode shape =
        new Writing()
            .put("event", setup.id())
            .putPrinted("time", setup.time())
            .put("poleSet", changed.poleSet() == null ? MAIN_POLE_SET : changed.poleSet())
            .done();
    shape.set("setup", SetupCodec.write(changed.setup()));
    return shape;
  }
}
