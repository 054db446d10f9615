package dev.poleward.domain.record;

import dev.poleward.domain.event.ClubEvent;
import dev.poleward.domain.event.EventWithdrawn;
import dev.poleward.domain.event.ProgrammeEvent.PlanIssued;
import dev.poleward.domain.event.TrainingEvent;
import java.util.Comparator;
import java.util.List;

/** The tie rules: which of several facts stands. All go by (time, id), never by arrival. */
public final class Precedence {

  /** By (time, id). */
  public static final Comparator<Fact<?>> BY_MOMENT = Comparator.comparing(Fact::moment);

  private Precedence() {}

  /**
   * Of several announcements of one entity the least stands; the rest, ascending, are duplicates.
   */
  public static <E extends TrainingEvent> List<Fact<E>> standingFirst(List<Fact<E>> announcements) {
    return announcements.stream().sorted(BY_MOMENT).toList();
  }

  /**
   * Whether a withdrawal of such an event has any effect. What only the service writes stays as it
   * is, and a withdrawal is final.
   */
  public static boolean canBeWithdrawn(TrainingEvent event) {
    return switch (event) {
      case ClubEvent.ClubSettingsChanged _ -> true;
      case ClubEvent _, PlanIssued _, EventWithdrawn _ -> false;
      case TrainingEvent _ -> true;
    };
  }
}
