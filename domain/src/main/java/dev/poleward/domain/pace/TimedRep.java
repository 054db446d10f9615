package dev.poleward.domain.pace;

import dev.poleward.domain.event.TimingEvent.TimingRecorded;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.PlacedRep;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A rep with the timing that is taken for its time.
 *
 * @param told how the two came together
 */
public record TimedRep(PlacedRep rep, Fact<TimingRecorded> timing, Told told)
    implements Comparable<TimedRep> {

  private static final double MILLIS = 1_000;

  /** How a timing came to its rep; what is earlier here goes before. */
  public enum Told {
    /** Somebody said so, or the timing itself. */
    BY_WORD,
    /** By its place among the reps of the dog that it names, or that the device is assigned to. */
    BY_DOG,
    /** By its place among all reps of the session. */
    BY_SESSION
  }

  /** From the entry to the exit, seconds. */
  public double seconds() {
    return (timing.event().exitAt() - timing.event().entryAt()) / MILLIS;
  }

  /** Seconds in each gap, where the device told all gaps of so many poles; else null. */
  public @Nullable List<Double> gapSeconds(int poles) {
    List<Double> gaps = timing.event().gaps();
    return gaps == null || gaps.size() != poles - 1 || gaps.stream().anyMatch(gap -> gap <= 0)
        ? null
        : gaps.stream().map(gap -> gap / MILLIS).toList();
  }

  /** Which of two timings of one rep is taken: by word goes first, then the earlier one. */
  @Override
  public int compareTo(TimedRep other) {
    int byWord = told.compareTo(other.told);
    return byWord != 0 ? byWord : timing.moment().compareTo(other.timing.moment());
  }
}
