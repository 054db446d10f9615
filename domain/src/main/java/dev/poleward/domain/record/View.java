package dev.poleward.domain.record;

import dev.poleward.domain.event.AimEvent;
import dev.poleward.domain.event.ClassEvent;
import dev.poleward.domain.event.ClassEvent.ClassFormed;
import dev.poleward.domain.event.ClubEvent;
import dev.poleward.domain.event.DeviceEvent;
import dev.poleward.domain.event.DeviceEvent.DeviceEnrolled;
import dev.poleward.domain.event.DogEvent;
import dev.poleward.domain.event.DogEvent.DogAmended;
import dev.poleward.domain.event.DogEvent.DogMerged;
import dev.poleward.domain.event.DogEvent.DogRegistered;
import dev.poleward.domain.event.EventWithdrawn;
import dev.poleward.domain.event.ProgrammeEvent;
import dev.poleward.domain.event.ProgrammeEvent.ProgrammePublished;
import dev.poleward.domain.event.RegistryEvent;
import dev.poleward.domain.event.RepEvent;
import dev.poleward.domain.event.RepEvent.RepAmended;
import dev.poleward.domain.event.SessionEvent;
import dev.poleward.domain.event.TimingEvent;
import dev.poleward.domain.event.TimingEvent.TimingRecorded;
import dev.poleward.domain.event.TrainingEvent;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * How much of the record a question looks at. The two times are independent: what had happened by
 * then, and what was known by then.
 *
 * @param asOf only what happened up to this instant, inclusive; everything when absent
 * @param knownAt only what was recorded up to this instant, inclusive; everything when absent
 */
public record View(@Nullable Instant asOf, @Nullable Instant knownAt) {

  /** The whole record. */
  public static final View EVERYTHING = new View(null, null);

  /**
   * Whether it had happened by then. Registrations and corrections always have: they hold at the
   * time of what they concern.
   */
  public boolean happened(Fact<?> fact) {
    return asOf == null || !fact.time().isAfter(asOf) || isTimeless(fact.event());
  }

  private static boolean isTimeless(TrainingEvent event) {
    return switch (event) {
      case ClubEvent _, RegistryEvent _, EventWithdrawn _ -> true;
      case DogEvent e ->
          e instanceof DogRegistered || e instanceof DogAmended || e instanceof DogMerged;
      case ClassEvent e -> e instanceof ClassFormed;
      case ProgrammeEvent e -> e instanceof ProgrammePublished;
      case DeviceEvent e -> e instanceof DeviceEnrolled;
      case RepEvent e -> e instanceof RepAmended;
      case TimingEvent e -> !(e instanceof TimingRecorded);
      case SessionEvent _, AimEvent _ -> false;
    };
  }

  /** Whether it was known: for everything. */
  public boolean knew(Instant recorded) {
    return knownAt == null || !recorded.isAfter(knownAt);
  }
}
