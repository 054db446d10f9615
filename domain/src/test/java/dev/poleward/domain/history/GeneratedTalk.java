package dev.poleward.domain.history;

import dev.poleward.domain.event.AimEvent.GoalSet;
import dev.poleward.domain.event.AimEvent.HomeworkSet;
import dev.poleward.domain.event.AimEvent.LoadNoted;
import dev.poleward.domain.event.AimEvent.TrialRun;
import dev.poleward.domain.event.ClassEvent.ClassFormed;
import dev.poleward.domain.event.ClassEvent.ClassJoined;
import dev.poleward.domain.event.ClassEvent.ClassLeft;
import dev.poleward.domain.event.ClubEvent.AccessKeyIssued;
import dev.poleward.domain.event.ClubEvent.AccessKeyRevoked;
import dev.poleward.domain.event.ClubEvent.ClubRegistered;
import dev.poleward.domain.event.ClubEvent.ClubSettingsChanged;
import dev.poleward.domain.event.ClubEvent.PersonForgotten;
import dev.poleward.domain.event.DeviceEvent.DeviceAssigned;
import dev.poleward.domain.event.DeviceEvent.DeviceEnrolled;
import dev.poleward.domain.event.DeviceKind;
import dev.poleward.domain.event.DogEvent.DogAmended;
import dev.poleward.domain.event.DogEvent.DogCleared;
import dev.poleward.domain.event.DogEvent.DogMerged;
import dev.poleward.domain.event.DogEvent.DogRegistered;
import dev.poleward.domain.event.DogEvent.DogRested;
import dev.poleward.domain.event.DogTrait;
import dev.poleward.domain.event.DogTraits;
import dev.poleward.domain.event.HeatRisk;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.event.ProgrammeEvent.PlanIssued;
import dev.poleward.domain.event.ProgrammeEvent.ProgrammeAssigned;
import dev.poleward.domain.event.ProgrammeEvent.ProgrammePublished;
import dev.poleward.domain.event.RegistryEvent.GroundRegistered;
import dev.poleward.domain.event.RegistryEvent.HandlerRegistered;
import dev.poleward.domain.event.SessionEvent.SessionAttended;
import dev.poleward.domain.event.SessionEvent.SessionClosed;
import dev.poleward.domain.event.SessionEvent.SessionOpened;
import dev.poleward.domain.event.TimingEvent.TimingRecorded;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What a club says besides its reps, as the contract allows it. */
final class GeneratedTalk {

  private static final LocalDate DAY = LocalDate.parse("2026-03-01");
  private static final List<String> NAMES = List.of("Juniper", "Bramble", "Sorrel");

  private final Pick pick;

  GeneratedTalk(Pick pick) {
    this.pick = pick;
  }

  DogRegistered dogRegistered(String dog) {
    return new DogRegistered(dog, pick.of(NAMES), traits(3));
  }

  DogAmended dogAmended() {
    String dog = pick.of(GeneratedHistory.DOGS);
    if (pick.onceIn(3)) {
      Set<DogTrait> cleared = EnumSet.of(pick.of(DogTrait.class), pick.of(DogTrait.class));
      return new DogAmended(dog, null, new DogTraits(null, null, null, null, null), cleared);
    }
    return new DogAmended(dog, pick.of(NAMES), traits(2), Set.of());
  }

  private DogTraits traits(int times) {
    return new DogTraits(
        pick.sometimes(times, () -> DAY.minusDays(300 + pick.below(2_000))),
        pick.sometimes(times, () -> 0.3 + pick.below(30) / 100.0),
        pick.sometimesOf(times, HeatRisk.class),
        pick.sometimes(2 * times, () -> List.of(pick.of(GeneratedHistory.HANDLERS))),
        pick.sometimes(times, () -> pick.onceIn(2)));
  }

  /** A dog is never merged into itself: the contract refuses it. */
  DogMerged dogMerged() {
    int dog = pick.below(GeneratedHistory.DOGS.size());
    int into =
        (dog + 1 + pick.below(GeneratedHistory.DOGS.size() - 1)) % GeneratedHistory.DOGS.size();
    return new DogMerged(GeneratedHistory.DOGS.get(dog), GeneratedHistory.DOGS.get(into));
  }

  DogRested dogRested() {
    return new DogRested(
        pick.of(GeneratedHistory.DOGS),
        pick.sometimes(2, () -> "paw"),
        pick.sometimes(2, () -> DAY.plusDays(pick.below(20))));
  }

  DogCleared dogCleared() {
    return new DogCleared(
        pick.of(GeneratedHistory.DOGS),
        pick.sometimes(2, () -> "veterinarian"),
        pick.sometimes(2, () -> Map.of("poles", (Object) 6L)));
  }

  ClassFormed classFormed(String group) {
    return new ClassFormed(
        group,
        "Evening " + pick.below(3),
        pick.sometimes(3, () -> pick.of(GeneratedHistory.HANDLERS)),
        pick.sometimes(3, () -> "Mondays"));
  }

  ClassJoined classJoined() {
    return new ClassJoined(pick.of(GeneratedHistory.CLASSES), pick.of(GeneratedHistory.DOGS));
  }

  ClassLeft classLeft() {
    return new ClassLeft(pick.of(GeneratedHistory.CLASSES), pick.of(GeneratedHistory.DOGS));
  }

  GroundRegistered ground(String ground) {
    return new GroundRegistered(
        ground,
        pick.sometimes(2, () -> "Lower field"),
        pick.sometimes(2, () -> 30.0 + pick.below(9)),
        pick.sometimes(2, () -> 20.0),
        pick.sometimes(2, () -> "grass"));
  }

  HandlerRegistered handler(String handler) {
    return new HandlerRegistered(handler);
  }

  ProgrammePublished published(String programme) {
    int version = 1 + pick.below(3);
    String name = "Weaves " + pick.below(3);
    return new ProgrammePublished(
        programme,
        version,
        Map.of(
            "programme",
            programme,
            "version",
            (long) version,
            "name",
            name,
            "stages",
            List.of(stage())));
  }

  private static Map<String, Object> stage() {
    return Map.of(
        "stage",
        "st-1",
        "poles",
        3L,
        "leadIn",
        "none",
        "entries",
        Map.of("clocks", List.of("12:00", "1:30")),
        "handlings",
        List.of(Map.of("manoeuvre", "alongside")));
  }

  ProgrammeAssigned assigned() {
    return new ProgrammeAssigned(
        pick.of(GeneratedHistory.DOGS),
        pick.of(GeneratedHistory.PROGRAMMES_TO_ASSIGN),
        pick.sometimes(3, () -> "st-1"));
  }

  DeviceEnrolled enrolled(String device) {
    return new DeviceEnrolled(device, pick.of(DeviceKind.class));
  }

  DeviceAssigned deviceAssigned() {
    String device = pick.of(GeneratedHistory.DEVICES);
    return switch (pick.below(3)) {
      case 0 -> new DeviceAssigned(device, pick.of(GeneratedHistory.DOGS), null, null);
      case 1 -> new DeviceAssigned(device, null, pick.of(GeneratedHistory.POLE_SETS), null);
      default -> new DeviceAssigned(device, null, null, pick.of(GeneratedHistory.GROUNDS));
    };
  }

  SessionOpened opened(String session) {
    return new SessionOpened(
        session,
        pick.sometimes(4, () -> pick.of(GeneratedHistory.GROUNDS)),
        pick.sometimes(4, () -> pick.of(GeneratedHistory.CLASSES)),
        pick.sometimes(3, () -> 10.0 + pick.below(20)),
        pick.sometimes(3, () -> 60.0),
        pick.sometimes(4, () -> "sand"));
  }

  SessionAttended attended() {
    return new SessionAttended(
        pick.of(GeneratedHistory.SESSIONS), pick.of(GeneratedHistory.DOGS), pick.onceIn(2));
  }

  SessionClosed closed() {
    return new SessionClosed(pick.of(GeneratedHistory.SESSIONS));
  }

  ClubSettingsChanged settingsChanged() {
    String limit = pick.of(List.of("gapsPerSession", "easeBackDays", "ageMonths"));
    return new ClubSettingsChanged(
        pick.sometimes(3, () -> "Saltmarsh " + pick.below(3)),
        pick.sometimes(3, () -> pick.of(List.of("Europe/Lisbon", "Europe/Oslo"))),
        Map.of(limit, (long) pick.below(5)),
        pick.sometimes(3, () -> Map.of("spacing", (Object) 0.6)));
  }

  TimingRecorded timing() {
    long entry = 1_000L * pick.below(500);
    return new TimingRecorded(
        pick.of(GeneratedHistory.DEVICES),
        pick.below(50),
        entry + 9_000,
        entry,
        entry + 2_500,
        pick.sometimes(2, () -> List.of(210.5, 220.0, 230.0)),
        pick.sometimes(3, () -> pick.of(GeneratedHistory.SESSIONS)),
        pick.sometimes(3, () -> pick.of(GeneratedHistory.DOGS)),
        pick.sometimes(3, () -> pick.of(GeneratedHistory.REPS)),
        pick.sometimes(3, () -> 80.0));
  }

  HomeworkSet homework() {
    return new HomeworkSet(
        pick.of(GeneratedHistory.DOGS), List.of(Map.of("poles", 4L)), DAY.plusDays(pick.below(20)));
  }

  GoalSet goal() {
    return new GoalSet(
        pick.of(GeneratedHistory.DOGS),
        DAY.plusDays(pick.below(90)),
        pick.sometimes(2, () -> "st-1"));
  }

  TrialRun trial() {
    return new TrialRun(
        pick.of(GeneratedHistory.DOGS),
        12,
        pick.of(Outcome.class),
        pick.sometimes(3, () -> 1 + pick.below(12)),
        pick.sometimes(2, () -> 3.25),
        pick.sometimes(2, () -> 30.0));
  }

  LoadNoted load() {
    return new LoadNoted(pick.of(GeneratedHistory.DOGS), "walk", 10.0 * pick.below(10));
  }

  ClubRegistered clubRegistered() {
    return new ClubRegistered(
        "saltmarsh",
        "Saltmarsh " + pick.below(3),
        "Europe/Lisbon",
        pick.sometimes(2, () -> Map.of("ageMonths", (Object) 15L)),
        null);
  }

  AccessKeyIssued keyIssued() {
    return new AccessKeyIssued(
        pick.of(GeneratedHistory.KEYS),
        List.of("records:read"),
        null,
        null,
        "sha256:" + "0".repeat(64));
  }

  AccessKeyRevoked keyRevoked() {
    return new AccessKeyRevoked(pick.of(GeneratedHistory.KEYS));
  }

  PersonForgotten forgotten() {
    return new PersonForgotten(pick.of(GeneratedHistory.HANDLERS));
  }

  PlanIssued planIssued() {
    String plan = pick.of(GeneratedHistory.PLANS);
    String dog = pick.of(GeneratedHistory.DOGS);
    return new PlanIssued(plan, dog, Map.of("plan", plan, "dog", dog, "drills", List.of()));
  }
}
