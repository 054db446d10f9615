package dev.poleward.domain.mastery;

import dev.poleward.domain.record.PlacedRep;

/** What counts as made. */
public enum Success {
  /** The entry was made, whatever came after it. */
  ENTRY {
    @Override
    public boolean made(PlacedRep rep) {
      return switch (rep.outcome()) {
        case CLEAN, POPPED_OUT, BACK_WEAVE, VOID -> true;
        case SKIPPED_POLE -> !Integer.valueOf(1).equals(rep.details().atPole());
        case MISSED_ENTRY, NO_ATTEMPT -> false;
      };
    }
  },
  /** No fault at all. */
  CLEAN {
    @Override
    public boolean made(PlacedRep rep) {
      return switch (rep.outcome()) {
        case CLEAN, VOID -> true;
        case MISSED_ENTRY, SKIPPED_POLE, POPPED_OUT, NO_ATTEMPT, BACK_WEAVE -> false;
      };
    }
  };

  /** Whether a rep counts as made; of a void one, which counts for nothing, it says nothing. */
  public abstract boolean made(PlacedRep rep);
}
