package dev.poleward.domain.timing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A device's clock against ours. What is sent is under way for a while, never for less than no time
 * at all: so the clock lies along the lower edge of what arrived, on the line below all readings
 * that is nearest to them (Moon, Skelly, Towsley 1999, IEEE INFOCOM, 227).
 *
 * @param zero when the device's clock showed 0, milliseconds since 1970
 * @param drift by how much more time passes in each unit of time that the device counts; above 0
 *     where its clock is slow, and 0 where the readings do not tell
 * @param readings how many there were
 * @param usualDelay median of how long they were under way, milliseconds, beyond the quickest
 */
public record DeviceClock(double zero, double drift, int readings, double usualDelay) {

  /** Fewer readings tell no drift. */
  public static final int DRIFT_READINGS_MIN = 5;

  /** Over less time on the device's clock they tell none. */
  public static final double DRIFT_MILLIS_MIN = 3_600_000;

  /** A clock of quartz that drifts more is broken; what looks like it is delay [C]. */
  public static final double DRIFT_MAX = 500e-6;

  /** Of readings in any order, of one clock that was not set meanwhile; empty of none. */
  public static Optional<DeviceClock> of(List<ClockReading> readings) {
    if (readings.isEmpty()) {
      return Optional.empty();
    }
    List<ClockReading> edge = lowerEdge(readings);
    double drift = readings.size() < DRIFT_READINGS_MIN ? 0 : drift(edge, middle(readings));
    double zero = Double.POSITIVE_INFINITY;
    for (ClockReading reading : readings) {
      zero = Math.min(zero, reading.arrived() - (1 + drift) * reading.shown());
    }
    return Optional.of(
        new DeviceClock(zero, drift, readings.size(), usualDelay(readings, zero, drift)));
  }

  /** When the clock showed that, milliseconds since 1970. */
  public double at(double shown) {
    return zero + (1 + drift) * shown;
  }

  private static double middle(List<ClockReading> readings) {
    return readings.stream().mapToDouble(ClockReading::shown).sorted().sum() / readings.size();
  }

  private static double usualDelay(List<ClockReading> readings, double zero, double drift) {
    return MedianAndMad.median(
        readings.stream()
            .map(reading -> reading.arrived() - zero - (1 + drift) * reading.shown())
            .toList());
  }

  /** Of the edge's pieces the one over the middle of the readings is nearest to all of them. */
  private static double drift(List<ClockReading> edge, double middle) {
    if (edge.getLast().shown() - edge.getFirst().shown() < DRIFT_MILLIS_MIN) {
      return 0;
    }
    int end = 1;
    while (end < edge.size() - 1 && edge.get(end).shown() < middle) {
      end++;
    }
    double drift = rise(edge.get(end - 1), edge.get(end));
    return Math.abs(drift) <= DRIFT_MAX ? drift : 0;
  }

  /** How much more arrived than was shown between two readings, by what was shown. */
  private static double rise(ClockReading from, ClockReading to) {
    double shown = to.shown() - from.shown();
    return (to.arrived() - from.arrived() - shown) / shown;
  }

  /** The corners of the lower convex hull, from left to right. */
  private static List<ClockReading> lowerEdge(List<ClockReading> readings) {
    List<ClockReading> edge = new ArrayList<>();
    readings.stream()
        .sorted(
            Comparator.comparingDouble(ClockReading::shown)
                .thenComparingDouble(ClockReading::arrived))
        .forEach(reading -> add(edge, reading));
    return edge;
  }

  private static void add(List<ClockReading> edge, ClockReading reading) {
    if (!edge.isEmpty() && edge.getLast().shown() == reading.shown()) {
      return;
    }
    while (edge.size() > 1
        && rise(edge.get(edge.size() - 2), edge.getLast()) >= rise(edge.getLast(), reading)) {
      edge.removeLast();
    }
    edge.add(reading);
  }
}
