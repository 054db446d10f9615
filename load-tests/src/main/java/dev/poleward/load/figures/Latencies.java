package dev.poleward.load.figures;

import org.HdrHistogram.ConcurrentHistogram;
import org.HdrHistogram.Histogram;

/** Times that many threads took. Safe for use by many threads. */
public final class Latencies {

  private static final double NANOS_PER_MILLI = 1e6;

  private final Histogram nanos = new ConcurrentHistogram(3);

  /** Notes a time. */
  public void took(long elapsedNanos) {
    nanos.recordValue(elapsedNanos);
  }

  /** How many were noted. */
  public long count() {
    return nanos.getTotalCount();
  }

  /** The time below which {@code percent} of them are, in milliseconds. */
  public String percentile(double percent) {
    return millis(nanos.getValueAtPercentile(percent) / NANOS_PER_MILLI);
  }

  /** The shortest, in milliseconds. */
  public String min() {
    return millis(nanos.getMinValue() / NANOS_PER_MILLI);
  }

  /** The longest, in milliseconds. */
  public String max() {
    return millis(nanos.getMaxValue() / NANOS_PER_MILLI);
  }

  /** Milliseconds as figures show them. */
  public static String millis(double millis) {
    return "%.2f".formatted(millis);
  }
}
