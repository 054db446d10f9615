package dev.poleward.domain.care;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a dog may be asked for in its next session.
 *
 * @param polesMax the most that may stand
 * @param gapsMax passed in all; 0 where nothing may be asked
 * @param sharpBendsMax entries from beyond 60 degrees
 * @param angleWork whether entries may be turned at all
 * @param load by now
 * @param heat degrees Celsius as they are for this dog; null when nobody said the temperature
 * @param notes the most severe first
 */
public record CarePermit(
    int polesMax,
    int gapsMax,
    int sharpBendsMax,
    boolean angleWork,
    LoadSeen load,
    @Nullable Double heat,
    List<CareNote> notes) {

  /** Keeps the notes from changing. */
  public CarePermit {
    notes = List.copyOf(notes);
  }

  /** Whether it may run at all. */
  public boolean mayTrain() {
    return notes.stream().noneMatch(note -> note.severity() == Severity.STOP);
  }
}
