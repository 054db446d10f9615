package dev.poleward.domain.programme;

import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.EntrySide;
import java.util.Comparator;

/**
 * One angle on one entry side; straight on is one rung for both sides.
 *
 * <p>In order of the size of the angle, and of two of one size {@code pole} before {@code gap}.
 */
public record Rung(EntryAngle angle) implements Comparable<Rung> {

  private static final Comparator<Rung> ORDER =
      Comparator.comparingDouble(Rung::size).thenComparing(Rung::side);

  /** Which side it is on; {@code BOTH} for straight on. */
  public EntrySide side() {
    return angle.side();
  }

  /** Degrees, 0 to below 180. */
  public double size() {
    return angle.size();
  }

  /** Whether a rep from there is run on the same side: the two sides are never pooled. */
  boolean isOnSideOf(EntryAngle approach) {
    return side() == EntrySide.BOTH || side() == approach.side();
  }

  /** Degrees between this rung and an approach. */
  double distanceTo(EntryAngle approach) {
    return Math.abs(angle.degrees() - approach.degrees());
  }

  @Override
  public int compareTo(Rung other) {
    return ORDER.compare(this, other);
  }
}
