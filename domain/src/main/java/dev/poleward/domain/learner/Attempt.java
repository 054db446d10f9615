package dev.poleward.domain.learner;

import dev.poleward.domain.event.Outcome;
import org.jspecify.annotations.Nullable;

/**
 * What the dog made of a rep.
 *
 * @param outcome how it ended; never void, which is not the dog's to say
 * @param atPole pole of the fault, where the fault lies at one
 * @param drive how keen the dog was, 1 to 3
 * @param seconds from pole 1 to the last; null unless it was clean
 */
public record Attempt(
    Outcome outcome, @Nullable Integer atPole, int drive, @Nullable Double seconds) {

  /** Whether the entry was made. */
  public boolean entryMade() {
    return switch (outcome) {
      case CLEAN, POPPED_OUT, BACK_WEAVE -> true;
      case SKIPPED_POLE -> atPole == null || atPole > 1;
      case MISSED_ENTRY, NO_ATTEMPT, VOID -> false;
    };
  }
}
