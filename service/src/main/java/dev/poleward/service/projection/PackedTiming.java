package dev.poleward.service.projection;

import dev.poleward.domain.event.TimingEvent.TimingRecorded;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A timing in a row, member by member. */
final class PackedTiming {

  private PackedTiming() {}

  static void put(RowOutput out, TimingRecorded timing) {
    out.text(timing.device())
        .number(timing.sequence())
        .number(timing.deviceClock())
        .real(timing.entryAt())
        .real(timing.exitAt())
        .list(timing.gaps(), RowOutput::real)
        .text(timing.session())
        .text(timing.dog())
        .text(timing.rep())
        .real(timing.battery());
  }

  static TimingRecorded read(RowInput in) {
    String device = in.text();
    long sequence = in.number();
    long deviceClock = in.number();
    double entryAt = in.real();
    double exitAt = in.real();
    @Nullable List<Double> gaps = in.optionalList(RowInput::real);
    return new TimingRecorded(
        device,
        sequence,
        deviceClock,
        entryAt,
        exitAt,
        gaps,
        in.optionalText(),
        in.optionalText(),
        in.optionalText(),
        in.optionalReal());
  }
}
