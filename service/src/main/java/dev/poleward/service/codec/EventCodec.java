package dev.poleward.service.codec;

import com.fasterxml.jackson.databind.node.ObjectNode;
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
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Events as JSON data, both ways. What is decoded and encoded again is equal to the letter in RFC
 * 8785 form. Immutable; safe for use by many threads.
 */
public final class EventCodec {

  /** A type, the record that stands for it, and how it is read. */
  private record Known<E extends TrainingEvent>(
      String type, Class<E> event, Function<Members, E> reader) {}

  private static final List<Known<?>> KNOWN =
      List.of(
          new Known<>(
              "club.registered.v1", ClubEvent.ClubRegistered.class, ClubCodec::readRegistered),
          new Known<>(
              "club.settings-changed.v1",
              ClubEvent.ClubSettingsChanged.class,
              ClubCodec::readSettingsChanged),
          new Known<>(
              "access-key.issued.v1", ClubEvent.AccessKeyIssued.class, ClubCodec::readIssued),
          new Known<>(
              "access-key.revoked.v1", ClubEvent.AccessKeyRevoked.class, ClubCodec::readRevoked),
          new Known<>(
              "person.forgotten.v1", ClubEvent.PersonForgotten.class, ClubCodec::readForgotten),
          new Known<>(
              "ground.registered.v1", RegistryEvent.GroundRegistered.class, FieldCodec::readGround),
          new Known<>(
              "handler.registered.v1",
              RegistryEvent.HandlerRegistered.class,
              FieldCodec::readHandler),
          new Known<>("dog.registered.v1", DogEvent.DogRegistered.class, DogCodec::readRegistered),
          new Known<>("dog.amended.v1", DogEvent.DogAmended.class, DogCodec::readAmended),
          new Known<>("dog.merged.v1", DogEvent.DogMerged.class, DogCodec::readMerged),
          new Known<>("dog.rested.v1", DogEvent.DogRested.class, DogCodec::readRested),
          new Known<>("dog.cleared.v1", DogEvent.DogCleared.class, DogCodec::readCleared),
          new Known<>("class.formed.v1", ClassEvent.ClassFormed.class, TeachingCodec::readFormed),
          new Known<>("class.joined.v1", ClassEvent.ClassJoined.class, TeachingCodec::readJoined),
          new Known<>("class.left.v1", ClassEvent.ClassLeft.class, TeachingCodec::readLeft),
          new Known<>(
              "programme.published.v1",
              ProgrammeEvent.ProgrammePublished.class,
              TeachingCodec::readPublished),
          new Known<>(
              "programme.assigned.v1",
              ProgrammeEvent.ProgrammeAssigned.class,
              TeachingCodec::readAssigned),
          new Known<>("plan.issued.v1", ProgrammeEvent.PlanIssued.class, TeachingCodec::readPlan),
          new Known<>(
              "device.enrolled.v1", DeviceEvent.DeviceEnrolled.class, FieldCodec::readEnrolled),
          new Known<>(
              "device.assigned.v1", DeviceEvent.DeviceAssigned.class, FieldCodec::readAssigned),
          new Known<>(
              "session.opened.v1", SessionEvent.SessionOpened.class, FieldCodec::readOpened),
          new Known<>(
              "session.attended.v1", SessionEvent.SessionAttended.class, FieldCodec::readAttended),
          new Known<>(
              "session.closed.v1", SessionEvent.SessionClosed.class, FieldCodec::readClosed),
          new Known<>("setup.changed.v1", SessionEvent.SetupChanged.class, FieldCodec::readSetup),
          new Known<>("rep.logged.v1", RepEvent.RepLogged.class, RepCodec::readLogged),
          new Known<>("rep.amended.v1", RepEvent.RepAmended.class, RepCodec::readAmended),
          new Known<>("event.withdrawn.v1", EventWithdrawn.class, EventCodec::readWithdrawn),
          new Known<>(
              "timing.recorded.v1", TimingEvent.TimingRecorded.class, FieldCodec::readTiming),
          new Known<>("timing.paired.v1", TimingEvent.TimingPaired.class, FieldCodec::readPaired),
          new Known<>(
              "timing.unpaired.v1", TimingEvent.TimingUnpaired.class, FieldCodec::readUnpaired),
          new Known<>("homework.set.v1", AimEvent.HomeworkSet.class, TeachingCodec::readHomework),
          new Known<>("goal.set.v1", AimEvent.GoalSet.class, TeachingCodec::readGoal),
          new Known<>("trial.run.v1", AimEvent.TrialRun.class, TeachingCodec::readTrial),
          new Known<>("load.noted.v1", AimEvent.LoadNoted.class, TeachingCodec::readLoad));

  private static final Map<String, Known<?>> BY_TYPE =
      KNOWN.stream().collect(Collectors.toMap(Known::type, Function.identity()));

  private static final Map<Class<?>, String> TYPES =
      KNOWN.stream().collect(Collectors.toMap(Known::event, Known::type));

  private final Upcasters upcasters;

  /** Decodes today's types, and older ones through {@code upcasters}. */
  public EventCodec(Upcasters upcasters) {
    this.upcasters = upcasters;
  }

  /** All of today's types, internal ones included. */
  public static Set<String> types() {
    return new TreeSet<>(BY_TYPE.keySet());
  }

  /** Today's type of an event. */
  public static String typeOf(TrainingEvent event) {
    return Objects.requireNonNull(TYPES.get(event.getClass()));
  }

  /**
   * Reads an event's data, as the contract allowed it when it was sent.
   *
   * @return null when the type is not known to this version
   */
  public @Nullable TrainingEvent decode(String type, ObjectNode data) {
    Upcasters.Versioned newest = upcasters.newest(new Upcasters.Versioned(type, data));
    Known<?> known = BY_TYPE.get(newest.type());
    return known == null ? null : known.reader().apply(new Members(newest.data()));
  }

  private static EventWithdrawn readWithdrawn(Members in) {
    return new EventWithdrawn(in.text("event"), in.text("reason"));
  }

  /** Writes an event's data, without personal members. */
  public ObjectNode encode(TrainingEvent event) {
    return switch (event) {
      case ClubEvent e -> ClubCodec.write(e);
      case RegistryEvent e -> FieldCodec.write(e);
      case DogEvent e -> DogCodec.write(e);
      case ClassEvent e -> TeachingCodec.write(e);
      case ProgrammeEvent e -> TeachingCodec.write(e);
      case DeviceEvent e -> FieldCodec.write(e);
      case SessionEvent e -> FieldCodec.write(e);
      case RepEvent e -> RepCodec.write(e);
      case TimingEvent e -> FieldCodec.write(e);
      case AimEvent e -> TeachingCodec.write(e);
      case EventWithdrawn e ->
          new Writing().put("event", e.event()).put("reason", e.reason()).done();
    };
  }
}
