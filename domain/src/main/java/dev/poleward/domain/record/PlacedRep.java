package dev.poleward.domain.record;

import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.event.RepDetails;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.Setup;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A rep with all that was in force for it.
 *
 * @param moment when it was run; the id is the standing event's
 * @param dog the dog it counts for, after amendments and merges
 * @param details what was said of it, after amendments
 * @param angle the entry angle: the rep's own, else the setup's; null when neither says
 * @param setup what stood; null when no setup was in force
 * @param setupEvent id of the setup event in force; null for an inline setup
 * @param note the sealed note, if there is one
 * @param amendedBy ids of the amendments that count
 * @param duplicates ids of later loggings of the same rep
 */
public record PlacedRep(
    Moment moment,
    String rep,
    String session,
    String dog,
    Manoeuvre manoeuvre,
    Outcome outcome,
    RepDetails details,
    @Nullable EntryAngle angle,
    @Nullable Setup setup,
    @Nullable String setupEvent,
    @Nullable SealedNote note,
    List<String> amendedBy,
    List<String> duplicates)
    implements Comparable<PlacedRep> {

  /** The pole set it was run on. */
  public String poleSet() {
    return details.poleSet() == null ? SessionSetups.MAIN : details.poleSet();
  }

  /** Whether the dog was helped: practice of what it did, and no evidence. */
  public boolean isHelped() {
    return switch (details.help()) {
      case null -> false;
      case NONE -> false;
      case LURE, GUIDE, CUE -> true;
    };
  }

  @Override
  public int compareTo(PlacedRep other) {
    return moment.compareTo(other.moment);
  }
}
