package dev.poleward.domain.record;

import dev.poleward.domain.event.AimEvent;
import dev.poleward.domain.event.ClassEvent;
import dev.poleward.domain.event.ClubEvent;
import dev.poleward.domain.event.DeviceEvent;
import dev.poleward.domain.event.DogEvent;
import dev.poleward.domain.event.DogTraits;
import dev.poleward.domain.event.EventWithdrawn;
import dev.poleward.domain.event.ProgrammeEvent;
import dev.poleward.domain.event.RegistryEvent;
import dev.poleward.domain.event.RepDetails;
import dev.poleward.domain.event.RepEvent;
import dev.poleward.domain.event.SessionEvent;
import dev.poleward.domain.event.TimingEvent;
import dev.poleward.domain.event.TrainingEvent;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What an event refers to, and so waits for while it is not known. */
public final class References {

  private final List<EntityRef> found = new ArrayList<>(4);

  private References() {}

  /** Everything that {@code event} refers to, each once, in a fixed order. */
  public static List<EntityRef> of(TrainingEvent event) {
    References references = new References();
    references.collect(event);
    return references.found;
  }

  private void collect(TrainingEvent event) {
    switch (event) {
      case ClubEvent e -> ofClub(e);
      case RegistryEvent _ -> {}
      case DogEvent e -> ofDog(e);
      case ClassEvent e -> ofClass(e);
      case ProgrammeEvent e -> ofProgramme(e);
      case DeviceEvent e -> ofDevice(e);
      case SessionEvent e -> ofSession(e);
      case RepEvent e -> ofRep(e);
      case TimingEvent e -> ofTiming(e);
      case AimEvent e -> add(EntityKind.DOG, e.dog());
      case EventWithdrawn e -> add(EntityKind.EVENT, e.event());
    }
  }

  private void ofClub(ClubEvent event) {
    switch (event) {
      case ClubEvent.ClubRegistered _, ClubEvent.ClubSettingsChanged _ -> {}
      case ClubEvent.AccessKeyIssued _ -> {}
      case ClubEvent.AccessKeyRevoked e -> add(EntityKind.KEY, e.key());
      case ClubEvent.PersonForgotten _ -> {}
    }
  }

  private void ofDog(DogEvent event) {
    switch (event) {
      case DogEvent.DogRegistered e -> ofTraits(e.traits());
      case DogEvent.DogAmended e -> {
        add(EntityKind.DOG, e.dog());
        ofTraits(e.traits());
      }
      case DogEvent.DogMerged e -> {
        add(EntityKind.DOG, e.dog());
        add(EntityKind.DOG, e.into());
      }
      case DogEvent.DogRested e -> add(EntityKind.DOG, e.dog());
      case DogEvent.DogCleared e -> add(EntityKind.DOG, e.dog());
    }
  }

  private void ofTraits(DogTraits traits) {
    if (traits.handlers() != null) {
      traits.handlers().forEach(handler -> add(EntityKind.HANDLER, handler));
    }
  }

  private void ofClass(ClassEvent event) {
    switch (event) {
      case ClassEvent.ClassFormed e -> add(EntityKind.HANDLER, e.instructor());
      case ClassEvent.ClassJoined e -> {
        add(EntityKind.CLASS, e.group());
        add(EntityKind.DOG, e.dog());
      }
      case ClassEvent.ClassLeft e -> {
        add(EntityKind.CLASS, e.group());
        add(EntityKind.DOG, e.dog());
      }
    }
  }

  private void ofProgramme(ProgrammeEvent event) {
    switch (event) {
      case ProgrammeEvent.ProgrammePublished _ -> {}
      case ProgrammeEvent.ProgrammeAssigned e -> {
        add(EntityKind.DOG, e.dog());
        add(EntityKind.PROGRAMME, e.programme());
      }
      case ProgrammeEvent.PlanIssued e -> add(EntityKind.DOG, e.dog());
    }
  }

  private void ofDevice(DeviceEvent event) {
    switch (event) {
      case DeviceEvent.DeviceEnrolled _ -> {}
      case DeviceEvent.DeviceAssigned e -> {
        add(EntityKind.DEVICE, e.device());
        add(EntityKind.DOG, e.dog());
        add(EntityKind.GROUND, e.ground());
      }
    }
  }

  private void ofSession(SessionEvent event) {
    switch (event) {
      case SessionEvent.SessionOpened e -> {
        add(EntityKind.GROUND, e.ground());
        add(EntityKind.CLASS, e.group());
      }
      case SessionEvent.SessionAttended e -> {
        add(EntityKind.SESSION, e.session());
        add(EntityKind.DOG, e.dog());
      }
      case SessionEvent.SessionClosed e -> add(EntityKind.SESSION, e.session());
      case SessionEvent.SetupChanged e -> add(EntityKind.SESSION, e.session());
    }
  }

  private void ofRep(RepEvent event) {
    switch (event) {
      case RepEvent.RepLogged e -> {
        add(EntityKind.SESSION, e.session());
        add(EntityKind.DOG, e.dog());
        ofDetails(e.details());
      }
      case RepEvent.RepAmended e -> {
        add(EntityKind.REP, e.rep());
        add(EntityKind.SESSION, e.session());
        add(EntityKind.DOG, e.dog());
        ofDetails(e.details());
      }
    }
  }

  private void ofDetails(RepDetails details) {
    add(EntityKind.HANDLER, details.handler());
    add(EntityKind.HANDLER, details.observer());
  }

  private void ofTiming(TimingEvent event) {
    switch (event) {
      case TimingEvent.TimingRecorded e -> {
        add(EntityKind.DEVICE, e.device());
        add(EntityKind.SESSION, e.session());
        add(EntityKind.DOG, e.dog());
        add(EntityKind.REP, e.rep());
      }
      case TimingEvent.TimingPaired e -> {
        add(EntityKind.EVENT, e.timing());
        add(EntityKind.REP, e.rep());
      }
      case TimingEvent.TimingUnpaired e -> {
        add(EntityKind.EVENT, e.timing());
        add(EntityKind.REP, e.rep());
      }
    }
  }

  private void add(EntityKind kind, @Nullable String id) {
    if (id != null) {
      EntityRef reference = new EntityRef(kind, id);
      if (!found.contains(reference)) {
        found.add(reference);
      }
    }
  }
}
