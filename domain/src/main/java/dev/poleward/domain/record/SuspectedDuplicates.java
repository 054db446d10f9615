package dev.poleward.domain.record;

import dev.poleward.domain.event.Manoeuvre;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Finds reps that two phones may have logged. Two reps are suspected when one dog ran them on one
 * set of poles with one manoeuvre, closely after one another, and neither the dog's side nor the
 * entry angle tells them apart; what is unsaid tells nothing apart. How they ended does not matter:
 * two who watch may disagree, and one may call void what the other counts.
 *
 * <p>Who logged them, and through which app, is no part of the rule: one observer may have tapped
 * twice, and most say nothing of themselves. Each rep is compared with the nearest before it that
 * fits, and so is suspected once at most as the later one. For one thread and one session.
 */
public final class SuspectedDuplicates {

  /** What both must say alike. */
  private record Run(String dog, String poleSet, Manoeuvre manoeuvre) {}

  /**
   * Under what the latest rep is found: what was said of the side and the angle, {@link
   * Open#UNSAID} where nothing was, or {@link Open#ANYTHING} whatever it was.
   */
  private record Key(Run run, Object side, Object angle) {}

  private enum Open {
    UNSAID,
    ANYTHING
  }

  private final Map<Key, PlacedRep> latest = new HashMap<>();

  private SuspectedDuplicates() {}

  /**
   * The suspicions among the reps of a session, ascending by (time, id) of the later one. Takes
   * time in proportion to the reps, however close they lie.
   *
   * @param reps of one session, ascending by (time, id)
   * @param within the longest time between two that are suspected, inclusive
   */
  public static List<SuspectedDuplicate> among(List<PlacedRep> reps, Duration within) {
    SuspectedDuplicates seen = new SuspectedDuplicates();
    List<SuspectedDuplicate> found = new ArrayList<>();
    for (PlacedRep rep : reps) {
      PlacedRep earlier = seen.nearestFitting(rep);
      if (earlier != null) {
        SuspectedDuplicate pair =
            new SuspectedDuplicate(earlier, rep, RepAspect.differing(earlier, rep));
        if (pair.apart().compareTo(within) <= 0) {
          found.add(pair);
        }
      }
      seen.add(rep);
    }
    return List.copyOf(found);
  }

  private @Nullable PlacedRep nearestFitting(PlacedRep rep) {
    PlacedRep nearest = null;
    for (Object side : fitting(rep.details().dogSide())) {
      for (Object angle : fitting(rep.angle())) {
        PlacedRep earlier = latest.get(new Key(run(rep), side, angle));
        if (earlier != null && (nearest == null || earlier.compareTo(nearest) > 0)) {
          nearest = earlier;
        }
      }
    }
    return nearest;
  }

  private void add(PlacedRep rep) {
    for (Object side : List.of(said(rep.details().dogSide()), Open.ANYTHING)) {
      for (Object angle : List.of(said(rep.angle()), Open.ANYTHING)) {
        latest.put(new Key(run(rep), side, angle), rep);
      }
    }
  }

  private static List<Object> fitting(@Nullable Object said) {
    return said == null ? List.of(Open.ANYTHING) : List.of(said, Open.UNSAID);
  }

  private static Object said(@Nullable Object said) {
    return said == null ? Open.UNSAID : said;
  }

  private static Run run(PlacedRep rep) {
    return new Run(rep.dog(), rep.poleSet(), rep.manoeuvre());
  }
}
