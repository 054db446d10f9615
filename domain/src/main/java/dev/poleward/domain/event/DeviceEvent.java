package dev.poleward.domain.event;

import org.jspecify.annotations.Nullable;

/** Timers and wearables. */
public sealed interface DeviceEvent extends TrainingEvent {

  /** The device that is spoken of. */
  String device();

  record DeviceEnrolled(String device, DeviceKind kind) implements DeviceEvent {}

  /** From here on it measures this dog, this set of poles or this ground. */
  record DeviceAssigned(
      String device, @Nullable String dog, @Nullable String poleSet, @Nullable String ground)
      implements DeviceEvent {}
}
