package dev.poleward.domain.pace;

import dev.poleward.domain.layout.EntrySide;
import java.util.Comparator;
import org.jspecify.annotations.Nullable;

/**
 * Runs whose times can be compared.
 *
 * @param poles that stood
 * @param entrySide where the dog came from; null where nobody said the angle
 */
public record RunKind(int poles, @Nullable EntrySide entrySide) implements Comparable<RunKind> {

  private static final Comparator<RunKind> ORDER =
      Comparator.comparingInt(RunKind::poles)
          .thenComparing(RunKind::entrySide, Comparator.nullsLast(Comparator.naturalOrder()));

  @Override
  public int compareTo(RunKind other) {
    return ORDER.compare(this, other);
  }

  /** Gaps that were passed. */
  public int gaps() {
    return poles - 1;
  }
}
