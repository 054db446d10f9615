package dev.poleward.domain.care;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a dog may be asked for in its next session.
 *
 * @param polesMax the most that may stand
 * @param gapsMax passed in all; 0 where nothing may be asked
 * @param sharpBendsMax entries from beyond 60 degrees
 * @param barHeightMax metres; null where the rules of the day's jumps are enough
 * @param angleWork whether entries may be turned at all
 * @param load by now
 * @param heat degrees Celsius as they are for this dog; null when nobody said the temperature
 * @param notes the most severe first
 */
public record CarePermit(
    int polesMax,
    int gapsMax,
    int sharpBendsMax,
    @Nullable Double barHeightMax,
    boolean angleWork,
    LoadSeen load,
    @Nullable Double heat,
    List<CareNote> notes) {

  /** Keeps the notes from changing. */
  public CarePermit {
    notes = List.copyOf(notes);
  }

  /**
   * The same with what is to be minded in a session: the load where a rep is more than twice what
   * the dog is used to, the sides of turned entries, pressure.
   */
  public CarePermit planned(SessionAhead session) {
    List<CareNote> more = new ArrayList<>(notes);
    UsualLine usual = load.line();
    if (usual != null && usual.isFarExceededBy(session.poles())) {
      more.add(CareNotes.longerLineAhead(usual, session.poles()));
    }
    if (session.isTurned()) {
      more.add(CareNotes.alternateSides());
    }
    if (session.mayCrowd()) {
      more.add(CareNotes.pressure());
    }
    more.sort(Comparator.comparing(CareNote::severity).reversed());
    return new CarePermit(
        polesMax, gapsMax, sharpBendsMax, barHeightMax, angleWork, load, heat, more);
  }

  /**
   * The same with what is to be minded in whatever session the dog may have next.
   *
   * @param mayCrowd whether its programme has come to where the handler crowds it
   */
  public CarePermit unplanned(boolean mayCrowd) {
    return planned(new SessionAhead(0, mayTrain() && angleWork, mayTrain() && mayCrowd));
  }

  /** Whether it may run at all. */
  public boolean mayTrain() {
    return notes.stream().noneMatch(note -> note.severity() == Severity.STOP);
  }
}
