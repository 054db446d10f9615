package dev.poleward.domain.record;

import dev.poleward.domain.event.ClassEvent.ClassJoined;
import dev.poleward.domain.event.ClassEvent.ClassLeft;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One time in which a dog was a member of a class.
 *
 * @param joined with which it began
 * @param left with which it ended; null while it lasts
 */
public record Membership(Fact<ClassJoined> joined, @Nullable Fact<ClassLeft> left) {

  /** Whether it lasted at some time from one instant on to before another. */
  public boolean overlaps(Instant from, Instant until) {
    return joined.time().isBefore(until) && (left == null || left.time().isAfter(from));
  }
}
