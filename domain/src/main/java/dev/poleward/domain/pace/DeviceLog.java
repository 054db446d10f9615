package dev.poleward.domain.pace;

import dev.poleward.domain.event.TimingEvent.TimingRecorded;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.timing.ClockReading;
import dev.poleward.domain.timing.DeviceClock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The timings of one device in the order in which it took them, by its own count. Where its clock
 * goes back from one to the next it began anew, and from there on it is another clock.
 */
final class DeviceLog {

  private static final Comparator<Fact<TimingRecorded>> AS_TAKEN =
      Comparator.<Fact<TimingRecorded>>comparingLong(fact -> fact.event().sequence())
          .thenComparingDouble(fact -> fact.event().exitAt())
          .thenComparing(Fact::moment);

  private final List<Fact<TimingRecorded>> taken;
  private final Map<String, Integer> places = new HashMap<>();
  private final Map<String, DeviceClock> clocks = new HashMap<>();
  private final List<DeviceClock> ascending = new ArrayList<>();

  /** Reads the timings of one device that count, in any order. */
  DeviceLog(List<Fact<TimingRecorded>> timings) {
    taken = timings.stream().sorted(AS_TAKEN).toList();
    int from = 0;
    for (int i = 0; i < taken.size(); i++) {
      places.put(taken.get(i).id(), i);
      boolean last = i + 1 == taken.size();
      if (last || taken.get(i + 1).event().exitAt() < taken.get(i).event().exitAt()) {
        addClock(taken.subList(from, i + 1));
        from = i + 1;
      }
    }
  }

  private void addClock(List<Fact<TimingRecorded>> timings) {
    List<ClockReading> readings =
        timings.stream()
            .map(
                fact ->
                    new ClockReading(fact.event().deviceClock(), Instants.millis(fact.recorded())))
            .toList();
    DeviceClock.of(readings)
        .ifPresent(
            clock -> {
              ascending.add(clock);
              timings.forEach(fact -> clocks.put(fact.id(), clock));
            });
  }

  /** Those of some timings of the device that count, as they were taken. */
  List<Fact<TimingRecorded>> inOrder(List<Fact<TimingRecorded>> some) {
    return some.stream()
        .filter(fact -> places.containsKey(fact.id()))
        .sorted(Comparator.comparingInt(fact -> places.getOrDefault(fact.id(), 0)))
        .toList();
  }

  /**
   * When a run ended, milliseconds since 1970. The clock is of no use where everything arrived long
   * after, what was said where whoever said it has no clock.
   *
   * @param byClock by the device's clock
   * @param asSaid as the event says
   */
  record End(double byClock, double asSaid) {}

  End end(Fact<TimingRecorded> fact) {
    DeviceClock clock = clocks.get(fact.id());
    double said = Instants.millis(fact.time());
    return new End(clock == null ? said : clock.at(fact.event().exitAt()), said);
  }

  /** The clocks that it had, the last one last; never empty of timings. */
  List<DeviceClock> clocks() {
    return ascending;
  }
}
