package dev.poleward.domain.running;

import dev.poleward.domain.layout.Setup;
import org.jspecify.annotations.Nullable;

/** What it takes to make one setup of another on the same pole set. */
@FunctionalInterface
public interface Carrying {

  /**
   * Metres over which pieces are carried, 0 or more and finite; counted to the millimetre.
   *
   * @param from what stands; null where nothing does
   */
  double metres(@Nullable Setup from, Setup to);
}
