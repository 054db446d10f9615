package dev.poleward.domain.record;

import dev.poleward.domain.event.AimEvent;
import dev.poleward.domain.event.ClassEvent;
import dev.poleward.domain.event.ClubEvent;
import dev.poleward.domain.event.DeviceEvent;
import dev.poleward.domain.event.DogEvent;
import dev.poleward.domain.event.EventWithdrawn;
import dev.poleward.domain.event.ProgrammeEvent;
import dev.poleward.domain.event.RegistryEvent;
import dev.poleward.domain.event.RepEvent;
import dev.poleward.domain.event.SessionEvent;
import dev.poleward.domain.event.TimingEvent;
import dev.poleward.domain.event.TrainingEvent;
import org.jspecify.annotations.Nullable;

/** What an event makes known to the club for the first time. */
public final class Announcement {

  private Announcement() {}

  /** The entity that {@code event} announces, or null when it announces none. */
  public static @Nullable EntityRef of(TrainingEvent event) {
    return switch (event) {
      case ClubEvent.ClubRegistered _ -> EntityRef.CLUB_ITSELF;
      case ClubEvent.AccessKeyIssued e -> new EntityRef(EntityKind.KEY, e.key());
      case ClubEvent.ClubSettingsChanged _,
          ClubEvent.AccessKeyRevoked _,
          ClubEvent.PersonForgotten _ ->
          null;
      case RegistryEvent.GroundRegistered e -> new EntityRef(EntityKind.GROUND, e.ground());
      case RegistryEvent.HandlerRegistered e -> new EntityRef(EntityKind.HANDLER, e.handler());
      case DogEvent.DogRegistered e -> new EntityRef(EntityKind.DOG, e.dog());
      case DogEvent.DogAmended _,
          DogEvent.DogMerged _,
          DogEvent.DogRested _,
          DogEvent.DogCleared _ ->
          null;
      case ClassEvent.ClassFormed e -> new EntityRef(EntityKind.CLASS, e.group());
      case ClassEvent.ClassJoined _, ClassEvent.ClassLeft _ -> null;
      case ProgrammeEvent.ProgrammePublished e ->
          new EntityRef(EntityKind.PROGRAMME, e.programme());
      case ProgrammeEvent.PlanIssued e -> new EntityRef(EntityKind.PLAN, e.plan());
      case ProgrammeEvent.ProgrammeAssigned _ -> null;
      case DeviceEvent.DeviceEnrolled e -> new EntityRef(EntityKind.DEVICE, e.device());
      case DeviceEvent.DeviceAssigned _ -> null;
      case SessionEvent.SessionOpened e -> new EntityRef(EntityKind.SESSION, e.session());
      case SessionEvent.SessionAttended _,
          SessionEvent.SessionClosed _,
          SessionEvent.SetupChanged _ ->
          null;
      case RepEvent.RepLogged e -> new EntityRef(EntityKind.REP, e.rep());
      case RepEvent.RepAmended _ -> null;
      case TimingEvent _, AimEvent _, EventWithdrawn _ -> null;
    };
  }
}
