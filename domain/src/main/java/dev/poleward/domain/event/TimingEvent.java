package dev.poleward.domain.event;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** What timers measured and which rep it belongs to. */
public sealed interface TimingEvent extends TrainingEvent {

  /**
   * A run through the poles as a device saw it.
   *
   * @param sequence the device's own count
   * @param deviceClock milliseconds on the device's clock when it sent this
   * @param entryAt milliseconds on the device's clock
   * @param exitAt milliseconds on the device's clock
   * @param gaps milliseconds spent in each gap
   * @param battery percent
   */
  record TimingRecorded(
      String device,
      long sequence,
      long deviceClock,
      double entryAt,
      double exitAt,
      @Nullable List<Double> gaps,
      @Nullable String session,
      @Nullable String dog,
      @Nullable String rep,
      @Nullable Double battery)
      implements TimingEvent {

    /** Keeps the gaps from changing. */
    public TimingRecorded {
      gaps = gaps == null ? null : List.copyOf(gaps);
    }
  }

  /** Somebody says which rep a timing belongs to; {@code timing} is an event id. */
  record TimingPaired(String timing, String rep) implements TimingEvent {}

  /** Somebody says that they do not belong together. */
  record TimingUnpaired(String timing, String rep) implements TimingEvent {}
}
