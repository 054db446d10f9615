package dev.poleward.domain.pace;

import dev.poleward.domain.event.DeviceEvent.DeviceAssigned;
import dev.poleward.domain.record.EntityKind;
import dev.poleward.domain.record.EntityRef;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Knowledge;
import dev.poleward.domain.record.View;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a device measured when: the latest assignment up to that instant holds. */
final class Assignments {

  private static final DeviceAssigned NONE = new DeviceAssigned("", null, null, null);

  private final List<Fact<DeviceAssigned>> ascending;

  private Assignments(List<Fact<DeviceAssigned>> ascending) {
    this.ascending = ascending;
  }

  static Assignments of(String device, Knowledge knowledge, View view) {
    return new Assignments(
        knowledge.counting(new EntityRef(EntityKind.DEVICE, device), DeviceAssigned.class).stream()
            .filter(view::happened)
            .toList());
  }

  private DeviceAssigned at(Instant time) {
    for (Fact<DeviceAssigned> assigned : ascending.reversed()) {
      if (!assigned.time().isAfter(time)) {
        return assigned.event();
      }
    }
    return NONE;
  }

  @Nullable String dog(Instant time) {
    return at(time).dog();
  }

  @Nullable String ground(Instant time) {
    return at(time).ground();
  }

  /** Whether what it measured then may have been run on those poles. */
  boolean mayBeOn(String poleSet, Instant time) {
    String assigned = at(time).poleSet();
    return assigned == null || assigned.equals(poleSet);
  }
}
