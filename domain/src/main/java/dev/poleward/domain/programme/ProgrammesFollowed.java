package dev.poleward.domain.programme;

import dev.poleward.domain.event.ProgrammeEvent.ProgrammeAssigned;
import dev.poleward.domain.event.ProgrammeEvent.ProgrammePublished;
import dev.poleward.domain.programme.DocumentReading.Faulty;
import dev.poleward.domain.programme.DocumentReading.Sound;
import dev.poleward.domain.programme.ProgrammeInForce.Assigned;
import dev.poleward.domain.programme.ProgrammeInForce.Unassigned;
import dev.poleward.domain.programme.ProgrammeInForce.Unreadable;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.ProgrammeRecord;
import dev.poleward.domain.record.Registry;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * What a dog followed when: a dog's past is judged under the programme in force then. An assignment
 * or a version holds from its time on, that instant included. Of a programme the highest version
 * published by then is in force; one that was assigned before any was published is followed in its
 * first version.
 *
 * @param periods ascending, without gaps, from the beginning on; never empty
 */
public record ProgrammesFollowed(List<Period> periods) {

  /**
   * A time in which the same is followed.
   *
   * @param from when it begins; null for the beginning
   */
  public record Period(@Nullable Instant from, ProgrammeInForce inForce) {}

  /** Refuses none, and keeps the periods from changing. */
  public ProgrammesFollowed {
    if (periods.isEmpty() || periods.getFirst().from() != null) {
      throw new IllegalArgumentException("periods begin at the beginning: " + periods);
    }
    periods = List.copyOf(periods);
  }

  /** What a dog, under whichever of its registrations, followed in the registry's view. */
  public static ProgrammesFollowed of(String dog, Registry registry) {
    return new Tracing(registry, registry.programmesAssigned(dog)).followed();
  }

  /** What was followed at that instant. */
  public ProgrammeInForce at(Instant time) {
    Period found = periods.getFirst();
    for (Period period : periods) {
      if (period.from() != null && period.from().isAfter(time)) {
        break;
      }
      found = period;
    }
    return found.inForce();
  }

  /** Goes along the assignments and versions. Reads each document once. For one thread. */
  private static final class Tracing {

    private final List<Fact<ProgrammeAssigned>> assignments;
    private final Map<String, ProgrammeRecord> programmes = new HashMap<>();
    private final Map<String, DocumentReading> readings = new HashMap<>();

    Tracing(Registry registry, List<Fact<ProgrammeAssigned>> assignments) {
      this.assignments = assignments;
      for (Fact<ProgrammeAssigned> fact : assignments) {
        String programme = fact.event().programme();
        registry.programme(programme).ifPresent(known -> programmes.put(programme, known));
      }
    }

    ProgrammesFollowed followed() {
      TreeSet<Instant> changes = new TreeSet<>();
      assignments.forEach(fact -> changes.add(fact.time()));
      programmes
          .values()
          .forEach(known -> known.versions().forEach(v -> changes.add(v.standing().time())));
      List<Period> periods = new ArrayList<>();
      periods.add(new Period(null, new Unassigned()));
      for (Instant change : changes) {
        ProgrammeInForce inForce = at(change);
        if (!inForce.equals(periods.getLast().inForce())) {
          periods.add(new Period(change, inForce));
        }
      }
      return new ProgrammesFollowed(periods);
    }

    private ProgrammeInForce at(Instant time) {
      Fact<ProgrammeAssigned> assigned = null;
      for (Fact<ProgrammeAssigned> fact : assignments) {
        assigned = fact.time().isAfter(time) ? assigned : fact;
      }
      if (assigned != null && assigned.event().programme().equals(DefaultProgramme.ID)) {
        return new Assigned(assigned, null, DefaultProgramme.programme());
      }
      ProgrammeRecord known =
          assigned == null ? null : programmes.get(assigned.event().programme());
      return assigned == null || known == null
          ? new Unassigned()
          : inForce(assigned, known.inForceAt(time).standing());
    }

    private ProgrammeInForce inForce(
        Fact<ProgrammeAssigned> assigned, Fact<ProgrammePublished> published) {
      DocumentReading reading =
          readings.computeIfAbsent(
              published.id(), _ -> ProgrammeDocument.read(published.event().document()));
      return switch (reading) {
        case Sound(Programme programme) -> new Assigned(assigned, published, programme);
        case Faulty(List<DocumentFault> faults) -> new Unreadable(assigned, published, faults);
      };
    }
  }
}
