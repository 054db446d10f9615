package dev.poleward.domain.pace;

import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.event.TimingEvent.TimingRecorded;
import dev.poleward.domain.pace.PairedTimings.DeviceSeen;
import dev.poleward.domain.pace.TimedRep.Told;
import dev.poleward.domain.record.EntityKind;
import dev.poleward.domain.record.EntityRef;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.PlacedRep;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.References;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Which timings belong to which reps of a dog. What somebody said of it holds; the rest is given by
 * the order in which things happened ({@link PlaceInOrder}), each device by itself. A function of
 * the events with their first recording times. For one thread and one reading.
 */
public final class Pairing {

  private static final int DEVICES_AT_ONCE = 500;

  private final Placement placement;
  private final Supplier<DogsReps> reps;
  private final SessionsOpened opened;
  private final Map<String, List<PlacedRep>> inSession = new HashMap<>();
  private @Nullable DogsReps dog;

  private final List<TimedRep> timed = new ArrayList<>();
  private final List<Fact<TimingRecorded>> unpaired = new ArrayList<>();
  private final List<DeviceSeen> devices = new ArrayList<>();
  private int unclaimed;

  private Pairing(Placement placement, Supplier<DogsReps> reps, SessionsOpened opened) {
    this.placement = placement;
    this.reps = reps;
    this.opened = opened;
  }

  /**
   * The timings of a dog that happened from one instant on to before another.
   *
   * @param reps of the dog, ascending by (time, id), placed by {@code placement}
   */
  public static PairedTimings ofDog(
      String dog, List<PlacedRep> reps, Placement placement, Instant from, Instant until) {
    Pairing pairing =
        new Pairing(
            placement,
            () -> DogsReps.of(dog, reps, placement),
            new SessionsOpened(placement.facts(), placement.knowledge(), from, until));
    String after = "";
    List<String> page;
    do {
      page = placement.facts().announced(EntityKind.DEVICE, after, DEVICES_AT_ONCE);
      for (String device : page) {
        pairing.take(device, placement.facts().timingsOf(device, from, until));
        after = device;
      }
    } while (page.size() == DEVICES_AT_ONCE);
    return pairing.paired();
  }

  private void take(String device, List<Fact<TimingRecorded>> timings) {
    List<Fact<TimingRecorded>> standing =
        timings.stream()
            .filter(fact -> placement.view().happened(fact) && placement.knowledge().stands(fact))
            .toList();
    if (standing.isEmpty()) {
      return;
    }
    Assignments assignments = Assignments.of(device, placement.knowledge(), placement.view());
    // Most devices are other dogs': whether all that a timing names is known, is asked later.
    if (candidates(standing, assignments).isEmpty()) {
      return;
    }
    List<Fact<TimingRecorded>> counting = standing.stream().filter(this::isKnown).toList();
    Candidates candidates = candidates(counting, assignments);
    if (!candidates.isEmpty()) {
      pair(device, new DeviceLog(counting), candidates);
    }
  }

  private Candidates candidates(List<Fact<TimingRecorded>> timings, Assignments assignments) {
    return Candidates.of(timings, placement, dog(), assignments, opened);
  }

  /** Made when the first device has timings: clubs without any pay nothing for it. */
  private DogsReps dog() {
    DogsReps known = dog == null ? reps.get() : dog;
    dog = known;
    return known;
  }

  /** A device's clock shows what it shows, whichever rep the timing is said to belong to. */
  private boolean isKnown(Fact<TimingRecorded> timing) {
    List<EntityRef> besidesRep = new ArrayList<>(References.of(timing.event()));
    besidesRep.removeIf(reference -> reference.kind() == EntityKind.REP);
    return placement.knowledge().missing(besidesRep).isEmpty();
  }

  private void pair(String device, DeviceLog log, Candidates candidates) {
    int before = timed.size() + unpaired.size();
    timed.addAll(candidates.byWord());
    PlaceInOrder.Allowed allowed =
        (timing, rep) -> rep.outcome() != Outcome.NO_ATTEMPT && candidates.leaveOpen(timing, rep);
    candidates.byDog().forEach(timings -> takeOfDog(timings, log, allowed));
    candidates
        .bySession()
        .forEach((session, timings) -> takeOfSession(session, timings, log, allowed));
    devices.add(
        new DeviceSeen(
            device,
            timed.size() + unpaired.size() - before,
            log.clocks().size() - 1,
            log.clocks().getLast()));
  }

  private void takeOfDog(
      List<Fact<TimingRecorded>> timings, DeviceLog log, PlaceInOrder.Allowed allowed) {
    String session = timings.getFirst().event().session();
    List<PlacedRep> near =
        dog().ascending().stream()
            .filter(
                rep ->
                    session == null
                        ? timings.stream().anyMatch(each -> PlaceInOrder.near(each, rep, log))
                        : rep.session().equals(session))
            .toList();
    Set<String> found = new HashSet<>();
    for (PlaceInOrder.Pair pair : PlaceInOrder.of(timings, near, log, allowed)) {
      timed.add(new TimedRep(pair.rep(), pair.timing(), Told.BY_DOG));
      found.add(pair.timing().id());
    }
    timings.stream().filter(timing -> !found.contains(timing.id())).forEach(unpaired::add);
  }

  private void takeOfSession(
      String session,
      List<Fact<TimingRecorded>> timings,
      DeviceLog log,
      PlaceInOrder.Allowed allowed) {
    List<PlacedRep> all = inSession.computeIfAbsent(session, placement::inSession);
    List<PlaceInOrder.Pair> pairs = PlaceInOrder.of(timings, all, log, allowed);
    unclaimed += timings.size() - pairs.size();
    for (PlaceInOrder.Pair pair : pairs) {
      if (pair.rep().dog().equals(dog().animal())) {
        timed.add(new TimedRep(pair.rep(), pair.timing(), Told.BY_SESSION));
      }
    }
  }

  /** Of several timings of one rep one is taken. */
  private PairedTimings paired() {
    Map<String, TimedRep> taken = new HashMap<>();
    for (TimedRep each : timed) {
      taken.merge(each.rep().rep(), each, (one, other) -> one.compareTo(other) <= 0 ? one : other);
    }
    return new PairedTimings(
        taken.values().stream().sorted(Comparator.comparing(TimedRep::rep)).toList(),
        timed.size() - taken.size(),
        unpaired.stream().sorted(Comparator.comparing(Fact::moment)).toList(),
        unclaimed,
        List.copyOf(devices));
  }
}
