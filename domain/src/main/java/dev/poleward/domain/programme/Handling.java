package dev.poleward.domain.programme;

import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.Manoeuvre;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the handler does, and on which side the dog is.
 *
 * @param dogSide null for any side
 * @param untilAngle degrees; not asked for on larger entries; null for all entries
 */
public record Handling(
    Manoeuvre manoeuvre, @Nullable DogSide dogSide, @Nullable Double untilAngle) {

  /** Whether the handling is asked for on that rung. */
  public boolean isAskedAt(Rung rung) {
    return untilAngle == null || rung.size() <= untilAngle + Entries.SLIVER_DEGREES;
  }

  /** What reps that are handled like this say of the dog's side; null for nothing. */
  List<@Nullable DogSide> sidesDescribed() {
    return dogSide == null
        ? Arrays.asList(null, DogSide.LEFT, DogSide.RIGHT)
        : Arrays.asList(dogSide);
  }

  /** Whether some rep would be handled like both. */
  boolean overlaps(Handling other) {
    return manoeuvre == other.manoeuvre
        && (dogSide == null || other.dogSide == null || dogSide == other.dogSide);
  }

  /** Whether the manoeuvre knows sides: a handler who waits at the far end has the dog on none. */
  static boolean knowsSides(Manoeuvre manoeuvre) {
    return switch (manoeuvre) {
      case RECALL -> false;
      case ALONGSIDE, REAR_CROSS, FRONT_CROSS, BLIND_CROSS, LATERAL_DISTANCE, SEND, PRESSURE ->
          true;
    };
  }
}
