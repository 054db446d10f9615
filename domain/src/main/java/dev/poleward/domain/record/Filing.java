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

/**
 * Under which entity an event is filed, so that all that is said of a dog, a class or a session can
 * be read together. Reps are filed by dog and by session instead, corrections by club.
 */
public final class Filing {

  private Filing() {}

  /** Where {@code event} is filed, or null when it is found by other ways. */
  public static @Nullable EntityRef of(TrainingEvent event) {
    return switch (event) {
      case ClubEvent.ClubRegistered _, ClubEvent.ClubSettingsChanged _ -> EntityRef.CLUB_ITSELF;
      case ClubEvent.AccessKeyIssued e -> new EntityRef(EntityKind.KEY, e.key());
      case ClubEvent.AccessKeyRevoked e -> new EntityRef(EntityKind.KEY, e.key());
      case ClubEvent.PersonForgotten e -> new EntityRef(EntityKind.HANDLER, e.handler());
      case RegistryEvent.GroundRegistered e -> new EntityRef(EntityKind.GROUND, e.ground());
      case RegistryEvent.HandlerRegistered e -> new EntityRef(EntityKind.HANDLER, e.handler());
      case DogEvent e -> new EntityRef(EntityKind.DOG, e.dog());
      case ClassEvent e -> new EntityRef(EntityKind.CLASS, e.group());
      case ProgrammeEvent.ProgrammePublished e ->
          new EntityRef(EntityKind.PROGRAMME, e.programme());
      case ProgrammeEvent.ProgrammeAssigned e -> new EntityRef(EntityKind.DOG, e.dog());
      case ProgrammeEvent.PlanIssued e -> new EntityRef(EntityKind.PLAN, e.plan());
      case DeviceEvent e -> new EntityRef(EntityKind.DEVICE, e.device());
      case SessionEvent e -> new EntityRef(EntityKind.SESSION, e.session());
      case AimEvent e -> new EntityRef(EntityKind.DOG, e.dog());
      case RepEvent _, TimingEvent _, EventWithdrawn _ -> null;
    };
  }
}
