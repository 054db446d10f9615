package dev.poleward.domain.record;

import dev.poleward.domain.event.DeviceEvent.DeviceAssigned;
import dev.poleward.domain.event.DeviceEvent.DeviceEnrolled;
import org.jspecify.annotations.Nullable;

/**
 * A device as it stands in a view.
 *
 * @param assigned the latest assignment, if any
 */
public record DeviceRecord(
    Registered<DeviceEnrolled> enrolled, @Nullable Fact<DeviceAssigned> assigned) {}
