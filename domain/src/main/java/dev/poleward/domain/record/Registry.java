package dev.poleward.domain.record;

import dev.poleward.domain.event.AimEvent;
import dev.poleward.domain.event.ClassEvent;
import dev.poleward.domain.event.ClassEvent.ClassFormed;
import dev.poleward.domain.event.ClassEvent.ClassJoined;
import dev.poleward.domain.event.ClassEvent.ClassLeft;
import dev.poleward.domain.event.ClubEvent.ClubRegistered;
import dev.poleward.domain.event.ClubEvent.ClubSettingsChanged;
import dev.poleward.domain.event.ClubEvent.PersonForgotten;
import dev.poleward.domain.event.DeviceEvent.DeviceAssigned;
import dev.poleward.domain.event.DeviceEvent.DeviceEnrolled;
import dev.poleward.domain.event.DogEvent.DogAmended;
import dev.poleward.domain.event.DogEvent.DogCleared;
import dev.poleward.domain.event.DogEvent.DogRegistered;
import dev.poleward.domain.event.DogEvent.DogRested;
import dev.poleward.domain.event.DogTraits;
import dev.poleward.domain.event.ProgrammeEvent.PlanIssued;
import dev.poleward.domain.event.ProgrammeEvent.ProgrammeAssigned;
import dev.poleward.domain.event.ProgrammeEvent.ProgrammePublished;
import dev.poleward.domain.event.RegistryEvent.GroundRegistered;
import dev.poleward.domain.event.RegistryEvent.HandlerRegistered;
import dev.poleward.domain.event.SessionEvent.SessionAttended;
import dev.poleward.domain.event.SessionEvent.SessionClosed;
import dev.poleward.domain.event.SessionEvent.SessionOpened;
import dev.poleward.domain.event.SessionEvent.SetupChanged;
import dev.poleward.domain.event.TrainingEvent;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What the club has announced, as it stands in a view. A registration stands as soon as it is
 * recorded, even while something that it names is not known; what is said of it later counts only
 * when all of that is known. For one thread and one reading.
 */
public final class Registry {

  private final View view;
  private final Knowledge knowledge;
  private final DogIdentity identity;

  /** Looks at the registry through the same eyes as {@code placement}. */
  public Registry(Placement placement, View view) {
    this.view = view;
    this.knowledge = placement.knowledge();
    this.identity = placement.identity();
  }

  /** Which registrations are one animal in this view. */
  public DogIdentity identity() {
    return identity;
  }

  /** The club itself. */
  public Optional<ClubRecord> club() {
    return registered(EntityRef.CLUB_ITSELF, ClubRegistered.class).map(this::club);
  }

  private ClubRecord club(Registered<ClubRegistered> registered) {
    ClubRegistered first = registered.standing().event();
    String name = first.name();
    String timeZone = first.timeZone();
    Map<String, Object> careLimits = first.careLimits();
    Map<String, Object> defaults = first.defaults();
    for (Fact<ClubSettingsChanged> fact :
        knowledge.counting(EntityRef.CLUB_ITSELF, ClubSettingsChanged.class)) {
      ClubSettingsChanged changed = fact.event();
      name = changed.name() != null ? changed.name() : name;
      timeZone = changed.timeZone() != null ? changed.timeZone() : timeZone;
      careLimits = merged(careLimits, changed.careLimits());
      defaults = merged(defaults, changed.defaults());
    }
    return new ClubRecord(registered, first.club(), name, timeZone, careLimits, defaults);
  }

  private static @Nullable Map<String, Object> merged(
      @Nullable Map<String, Object> before, @Nullable Map<String, Object> changed) {
    if (changed == null) {
      return before;
    }
    Map<String, Object> merged = new TreeMap<>(before == null ? Map.of() : before);
    merged.putAll(changed);
    return merged;
  }

  /** A ground. */
  public Optional<Registered<GroundRegistered>> ground(String ground) {
    return registered(new EntityRef(EntityKind.GROUND, ground), GroundRegistered.class);
  }

  /** A handler. */
  public Optional<HandlerRecord> handler(String handler) {
    EntityRef entity = new EntityRef(EntityKind.HANDLER, handler);
    return registered(entity, HandlerRegistered.class)
        .map(registered -> new HandlerRecord(registered, latest(entity, PersonForgotten.class)));
  }

  /** A dog, under whichever of its registrations it is asked for. */
  public Optional<DogRecord> dog(String dog) {
    EntityRef entity = new EntityRef(EntityKind.DOG, dog);
    return registered(entity, DogRegistered.class).map(registered -> dog(entity, registered));
  }

  private DogRecord dog(EntityRef entity, Registered<DogRegistered> registered) {
    String callName = registered.standing().event().callName();
    DogTraits traits = registered.standing().event().traits();
    List<Fact<DogAmended>> amendments = knowledge.counting(entity, DogAmended.class);
    for (Fact<DogAmended> amendment : amendments) {
      DogAmended amended = amendment.event();
      callName = amended.callName() != null ? amended.callName() : callName;
      traits = DogRecord.corrected(traits, amended);
    }
    String animal = identity.of(entity.id());
    List<String> others = new ArrayList<>(identity.group(entity.id()));
    others.remove(entity.id());
    return new DogRecord(
        registered,
        callName,
        traits,
        amendments,
        animal.equals(entity.id()) ? null : animal,
        List.copyOf(others),
        latestOfAnimal(entity.id(), DogRested.class),
        latestOfAnimal(entity.id(), DogCleared.class),
        latestOfAnimal(entity.id(), ProgrammeAssigned.class));
  }

  /** A class with its members. */
  public Optional<ClassRecord> group(String group) {
    EntityRef entity = new EntityRef(EntityKind.CLASS, group);
    return registered(entity, ClassFormed.class)
        .map(formed -> new ClassRecord(formed, members(entity)));
  }

  private Map<String, Fact<ClassJoined>> members(EntityRef entity) {
    Map<String, Fact<ClassJoined>> members = new TreeMap<>();
    memberships(entity)
        .forEach(
            (dog, all) -> {
              if (all.getLast().left() == null) {
                members.put(dog, all.getLast().joined());
              }
            });
    return members;
  }

  /** Every membership of a class there ever was, by dog, ascending by id; one after the other. */
  public SortedMap<String, List<Membership>> memberships(String group) {
    return memberships(new EntityRef(EntityKind.CLASS, group));
  }

  private SortedMap<String, List<Membership>> memberships(EntityRef entity) {
    SortedMap<String, List<Membership>> memberships = new TreeMap<>();
    for (Fact<ClassEvent> fact : happened(knowledge.counting(entity, ClassEvent.class))) {
      switch (fact.event()) {
        case ClassFormed _ -> {}
        case ClassJoined joined -> {
          List<Membership> ofDog =
              memberships.computeIfAbsent(identity.of(joined.dog()), _ -> new ArrayList<>());
          if (ofDog.isEmpty() || ofDog.getLast().left() != null) {
            ofDog.add(new Membership(Objects.requireNonNull(fact.as(ClassJoined.class)), null));
          }
        }
        case ClassLeft left -> {
          List<Membership> ofDog = memberships.get(identity.of(left.dog()));
          if (ofDog != null && ofDog.getLast().left() == null) {
            Membership ended = ofDog.removeLast();
            ofDog.add(new Membership(ended.joined(), fact.as(ClassLeft.class)));
          }
        }
      }
    }
    return memberships;
  }

  /** A programme of the club with its versions; empty for the one that ships. */
  public Optional<ProgrammeRecord> programme(String programme) {
    EntityRef entity = new EntityRef(EntityKind.PROGRAMME, programme);
    if (entity.equals(EntityRef.DEFAULT_PROGRAMME)) {
      return Optional.empty();
    }
    Map<Integer, List<Fact<ProgrammePublished>>> versions = new TreeMap<>();
    for (Fact<ProgrammePublished> fact :
        knowledge.announcements(entity, ProgrammePublished.class)) {
      versions.computeIfAbsent(fact.event().version(), _ -> new ArrayList<>()).add(fact);
    }
    return versions.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new ProgrammeRecord(
                versions.values().stream().map(Registered::of).flatMap(Optional::stream).toList()));
  }

  /** A plan as it was handed out. */
  public Optional<Fact<PlanIssued>> plan(String plan) {
    return registered(new EntityRef(EntityKind.PLAN, plan), PlanIssued.class)
        .map(Registered::standing)
        .filter(view::happened);
  }

  /** A device with its assignment. */
  public Optional<DeviceRecord> device(String device) {
    EntityRef entity = new EntityRef(EntityKind.DEVICE, device);
    return registered(entity, DeviceEnrolled.class)
        .map(enrolled -> new DeviceRecord(enrolled, latest(entity, DeviceAssigned.class)));
  }

  /** A session with its setups and attendance. */
  public Optional<SessionRecord> session(String session) {
    EntityRef entity = new EntityRef(EntityKind.SESSION, session);
    return registered(entity, SessionOpened.class)
        .map(
            opened ->
                new SessionRecord(
                    opened,
                    happened(knowledge.counting(entity, SetupChanged.class)),
                    attendance(entity),
                    first(entity, SessionClosed.class)));
  }

  /** The session of an opening, when it is that opening which stands, and it had happened. */
  public Optional<SessionRecord> sessionOpenedBy(Fact<SessionOpened> opening) {
    return session(opening.event().session())
        .filter(session -> session.opened().standing().id().equals(opening.id()))
        .filter(session -> view.happened(session.opened().standing()));
  }

  private List<Fact<SessionAttended>> attendance(EntityRef entity) {
    Map<String, Fact<SessionAttended>> latest = new TreeMap<>();
    for (Fact<SessionAttended> fact : happened(knowledge.counting(entity, SessionAttended.class))) {
      latest.put(identity.of(fact.event().dog()), fact);
    }
    return List.copyOf(latest.values());
  }

  private <E extends TrainingEvent> Optional<Registered<E>> registered(
      EntityRef entity, Class<E> type) {
    return Registered.of(knowledge.announcements(entity, type));
  }

  private <E extends TrainingEvent> @Nullable Fact<E> first(EntityRef entity, Class<E> type) {
    List<Fact<E>> happened = happened(knowledge.counting(entity, type));
    return happened.isEmpty() ? null : happened.getFirst();
  }

  private <E extends TrainingEvent> @Nullable Fact<E> latest(EntityRef entity, Class<E> type) {
    List<Fact<E>> happened = happened(knowledge.counting(entity, type));
    return happened.isEmpty() ? null : happened.getLast();
  }

  /** What was ever assigned to a dog, under any of its registrations, ascending by (time, id). */
  public List<Fact<ProgrammeAssigned>> programmesAssigned(String dog) {
    return identity.group(dog).stream()
        .map(registration -> new EntityRef(EntityKind.DOG, registration))
        .flatMap(entity -> happened(knowledge.counting(entity, ProgrammeAssigned.class)).stream())
        .sorted(Precedence.BY_MOMENT)
        .toList();
  }

  /** Aims of one type for a dog, under any of its registrations, ascending by (time, id). */
  public <E extends AimEvent> List<Fact<E>> aims(String dog, Class<E> type) {
    return identity.group(dog).stream()
        .map(registration -> new EntityRef(EntityKind.DOG, registration))
        .flatMap(entity -> happened(knowledge.counting(entity, type)).stream())
        .sorted(Precedence.BY_MOMENT)
        .toList();
  }

  private <E extends TrainingEvent> @Nullable Fact<E> latestOfAnimal(String dog, Class<E> type) {
    Map<Moment, Fact<E>> latest = new HashMap<>();
    for (String registration : identity.group(dog)) {
      Fact<E> fact = latest(new EntityRef(EntityKind.DOG, registration), type);
      if (fact != null) {
        latest.put(fact.moment(), fact);
      }
    }
    return latest.values().stream().max(Precedence.BY_MOMENT).orElse(null);
  }

  private <E extends TrainingEvent> List<Fact<E>> happened(List<Fact<E>> facts) {
    return facts.stream().filter(view::happened).toList();
  }
}
