package dev.poleward.domain.judgement;

import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.EntrySide;

/**
 * Entry angles of one side that are looked at together, an hour of the clock each.
 *
 * @param side {@link EntrySide#BOTH} for straight on
 * @param from size from beyond which it begins, degrees; 0 for straight on
 * @param to size up to which it reaches, degrees; 0 for straight on
 */
public record AngleBand(EntrySide side, double from, double to) implements Comparable<AngleBand> {

  private static final double HOUR_DEGREES = 30;

  static AngleBand of(EntryAngle angle) {
    double to = Math.ceil(angle.size() / HOUR_DEGREES) * HOUR_DEGREES;
    return new AngleBand(angle.side(), Math.max(0, to - HOUR_DEGREES), to);
  }

  @Override
  public int compareTo(AngleBand other) {
    int bySize = Double.compare(to, other.to);
    return bySize == 0 ? side.compareTo(other.side) : bySize;
  }
}
