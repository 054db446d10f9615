package dev.poleward.domain.pace;

import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.event.TimingEvent;
import dev.poleward.domain.event.TimingEvent.TimingRecorded;
import dev.poleward.domain.pace.PairedTimings.DeviceSeen;
import dev.poleward.domain.pace.TimedRep.Told;
import dev.poleward.domain.record.EntityKind;
import dev.poleward.domain.record.EntityRef;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Facts;
import dev.poleward.domain.record.PlacedRep;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.References;
import dev.poleward.domain.record.View;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Which timings belong to which reps of a dog. What somebody said of it holds; the rest is given by
 * the order in which things happened ({@link PlaceInOrder}), each device by itself. A function of
 * the events with their first recording times. For one thread and one reading.
 */
public final class Pairing {

  private static final int DEVICES_AT_ONCE = 500;

  private final Facts facts;
  private final View view;
  private final Placement placement;
  private final String animal;
  private final List<PlacedRep> reps;
  private final Map<String, PlacedRep> repsById;
  private final Set<String> sessions;
  private final SessionsOpened opened;
  private final Map<String, List<PlacedRep>> inSession = new HashMap<>();

  private final List<TimedRep> timed = new ArrayList<>();
  private final List<Fact<TimingRecorded>> unpaired = new ArrayList<>();
  private final List<DeviceSeen> devices = new ArrayList<>();
  private int unclaimed;

  private Pairing(
      String dog,
      List<PlacedRep> reps,
      Facts facts,
      View view,
      Placement placement,
      SessionsOpened opened) {
    this.facts = facts;
    this.view = view;
    this.placement = placement;
    this.animal = placement.identity().of(dog);
    this.reps = reps;
    this.repsById = new HashMap<>();
    reps.forEach(rep -> repsById.put(rep.rep(), rep));
    this.sessions = reps.stream().map(PlacedRep::session).collect(Collectors.toSet());
    this.opened = opened;
  }

  /**
   * The timings of a dog that happened from one instant on to before another.
   *
   * @param reps of the dog, ascending by (time, id), placed by {@code placement}
   * @param facts those of {@code placement}
   * @param view that of {@code placement}
   */
  public static PairedTimings ofDog(
      String dog,
      List<PlacedRep> reps,
      Facts facts,
      View view,
      Placement placement,
      Instant from,
      Instant until) {
    Pairing pairing =
        new Pairing(
            dog,
            reps,
            facts,
            view,
            placement,
            new SessionsOpened(facts, placement.knowledge(), from, until));
    String after = "";
    List<String> page;
    do {
      page = facts.announced(EntityKind.DEVICE, after, DEVICES_AT_ONCE);
      for (String device : page) {
        pairing.take(device, facts.timingsOf(device, from, until));
        after = device;
      }
    } while (page.size() == DEVICES_AT_ONCE);
    return pairing.paired();
  }

  /**
   * Timings of one device that may be the dog's, by how they can come to a rep.
   *
   * @param spoken reps of any dog that one of the device's timings is said to belong to
   */
  private record Candidates(
      List<TimedRep> byWord,
      Map<String, List<Fact<TimingRecorded>>> byDog,
      Map<String, List<Fact<TimingRecorded>>> bySession,
      Map<String, SaidOfTiming> said,
      Set<String> spoken) {

    boolean isEmpty() {
      return byWord.isEmpty() && byDog.isEmpty() && bySession.isEmpty();
    }

    /** Whether nobody says otherwise, of the timing or of the rep. */
    boolean leaveOpen(Fact<TimingRecorded> timing, PlacedRep rep) {
      SaidOfTiming ofTiming = said.get(timing.id());
      return !spoken.contains(rep.rep())
          && (ofTiming == null || !ofTiming.notReps().contains(rep.rep()));
    }
  }

  private void take(String device, List<Fact<TimingRecorded>> timings) {
    List<Fact<TimingRecorded>> standing =
        timings.stream()
            .filter(fact -> view.happened(fact) && placement.knowledge().stands(fact))
            .toList();
    if (standing.isEmpty()) {
      return;
    }
    Assignments assignments = Assignments.of(device, placement.knowledge(), view);
    if (sorted(standing, assignments).isEmpty()) {
      return;
    }
    List<Fact<TimingRecorded>> counting = standing.stream().filter(this::isKnown).toList();
    Candidates candidates = sorted(counting, assignments);
    if (!candidates.isEmpty()) {
      pair(device, new DeviceLog(counting), candidates, assignments);
    }
  }

  /** A device's clock shows what it shows, whichever rep the timing is said to belong to. */
  private boolean isKnown(Fact<TimingRecorded> timing) {
    List<EntityRef> besidesRep = new ArrayList<>(References.of(timing.event()));
    besidesRep.removeIf(reference -> reference.kind() == EntityKind.REP);
    return placement.knowledge().missing(besidesRep).isEmpty();
  }

  private Candidates sorted(List<Fact<TimingRecorded>> timings, Assignments assignments) {
    Candidates candidates =
        new Candidates(
            new ArrayList<>(), new TreeMap<>(), new TreeMap<>(), new HashMap<>(), new HashSet<>());
    for (Fact<TimingRecorded> timing : timings) {
      SaidOfTiming said =
          SaidOfTiming.of(
                  timing, facts.corrections().pairingsOf(timing.id()), this::counts, this::isRep)
              .orElse(null);
      if (said != null) {
        candidates.said().put(timing.id(), said);
        sort(timing, said, assignments, candidates);
      }
    }
    return candidates;
  }

  private void sort(
      Fact<TimingRecorded> timing,
      SaidOfTiming said,
      Assignments assignments,
      Candidates candidates) {
    String named = said.rep();
    if (named != null) {
      candidates.spoken().add(named);
      PlacedRep rep = repsById.get(named);
      if (rep != null) {
        candidates.byWord().add(new TimedRep(rep, timing, Told.BY_WORD));
      }
      return;
    }
    String dog = timing.event().dog();
    dog = dog == null ? assignments.dog(timing.time()) : dog;
    String session = timing.event().session();
    if (dog != null) {
      if (placement.identity().of(dog).equals(animal)) {
        String key = session == null ? "on " + day(timing) : "in " + session;
        candidates.byDog().computeIfAbsent(key, _ -> new ArrayList<>()).add(timing);
      }
      return;
    }
    session =
        session == null ? opened.at(timing.time(), assignments.ground(timing.time())) : session;
    if (session != null && sessions.contains(session)) {
      candidates.bySession().computeIfAbsent(session, _ -> new ArrayList<>()).add(timing);
    }
  }

  private static String day(Fact<TimingRecorded> timing) {
    return timing.time().atOffset(ZoneOffset.UTC).toLocalDate().toString();
  }

  /** A word of pairing counts when it stands and its rep is one in this view. */
  private boolean counts(Fact<TimingEvent> word) {
    return placement.knowledge().counts(word)
        && switch (word.event()) {
          case TimingEvent.TimingPaired pairing -> isRep(pairing.rep());
          case TimingEvent.TimingUnpaired pairing -> isRep(pairing.rep());
          case TimingRecorded _ -> false;
        };
  }

  private boolean isRep(String rep) {
    return repsById.containsKey(rep) || placement.loggings(rep).stream().anyMatch(view::happened);
  }

  private void pair(String device, DeviceLog log, Candidates candidates, Assignments assignments) {
    int before = timed.size() + unpaired.size();
    timed.addAll(candidates.byWord());
    PlaceInOrder.Allowed allowed =
        (timing, rep) ->
            rep.outcome() != Outcome.NO_ATTEMPT
                && assignments.mayBeOn(rep.poleSet(), timing.time())
                && candidates.leaveOpen(timing, rep);
    candidates.byDog().forEach((_, timings) -> takeOfDog(timings, log, allowed));
    candidates
        .bySession()
        .forEach((session, timings) -> takeOfSession(session, timings, log, allowed));
    int seen = timed.size() + unpaired.size() - before;
    devices.add(new DeviceSeen(device, seen, log.clocks().size() - 1, log.clocks().getLast()));
  }

  private void takeOfDog(
      List<Fact<TimingRecorded>> timings, DeviceLog log, PlaceInOrder.Allowed allowed) {
    String session = timings.getFirst().event().session();
    List<PlacedRep> near =
        session == null
            ? around(timings, log)
            : reps.stream().filter(rep -> rep.session().equals(session)).toList();
    Set<String> found = new HashSet<>();
    for (PlaceInOrder.Pair pair : PlaceInOrder.of(timings, near, log, allowed)) {
      timed.add(new TimedRep(pair.rep(), pair.timing(), Told.BY_DOG));
      found.add(pair.timing().id());
    }
    timings.stream().filter(timing -> !found.contains(timing.id())).forEach(unpaired::add);
  }

  /** The dog's reps that lie near enough to one of the timings. */
  private List<PlacedRep> around(List<Fact<TimingRecorded>> timings, DeviceLog log) {
    return reps.stream()
        .filter(rep -> timings.stream().anyMatch(timing -> PlaceInOrder.near(timing, rep, log)))
        .toList();
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
      if (pair.rep().dog().equals(animal)) {
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
