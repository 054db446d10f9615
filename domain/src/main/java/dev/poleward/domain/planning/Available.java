package dev.poleward.domain.planning;

import dev.poleward.domain.programme.Drill;
import org.jspecify.annotations.Nullable;

/**
 * What is at hand on the ground.
 *
 * @param jump whether there is a jump
 * @param tunnel whether there is a tunnel
 * @param poles how many, from 2
 * @param stands what stands already; null when nothing does
 */
public record Available(boolean jump, boolean tunnel, int poles, @Nullable Drill stands) {

  /** Everything that a programme can ask for. */
  public static final Available EVERYTHING = new Available(true, true, 24, null);

  /** Whether a drill can be laid out with it. */
  public boolean allows(Drill drill) {
    boolean leadIn =
        switch (drill.runUp().asRun().leadIn()) {
          case NONE -> true;
          case JUMP -> jump;
          case TUNNEL -> tunnel;
        };
    return leadIn && drill.poles() <= poles;
  }
}
