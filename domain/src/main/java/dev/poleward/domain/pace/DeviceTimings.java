package dev.poleward.domain.pace;

import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.event.TimingEvent;
import dev.poleward.domain.event.TimingEvent.TimingPaired;
import dev.poleward.domain.event.TimingEvent.TimingRecorded;
import dev.poleward.domain.event.TimingEvent.TimingUnpaired;
import dev.poleward.domain.record.EntityKind;
import dev.poleward.domain.record.EntityRef;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.PlacedRep;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.References;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Timings of one device, sorted by how they can come to a rep: by a word of somebody, by the dog
 * whose they are, or by the session. What costs more is found when it is first asked for. For one
 * thread and one reading.
 */
final class DeviceTimings {

  private final String device;
  private final List<Fact<TimingRecorded>> standing;
  private final Placement placement;
  private final Assignments assignments;

  private final Map<String, List<Fact<TimingRecorded>>> byWord = new TreeMap<>();
  private final Map<String, Map<String, List<Fact<TimingRecorded>>>> byDog = new HashMap<>();
  private final Map<String, List<Fact<TimingRecorded>>> bySession = new TreeMap<>();
  private final Map<String, Set<String>> apart = new HashMap<>();
  private final Map<String, List<PlaceInOrder.Pair>> pairsInSession = new HashMap<>();
  private @Nullable DeviceLog log;
  private @Nullable Set<String> spoken;

  /**
   * Sorts timings.
   *
   * @param standing those that happened in the view and are not withdrawn
   */
  DeviceTimings(
      String device,
      List<Fact<TimingRecorded>> standing,
      Placement placement,
      SessionsOpened opened) {
    this.device = device;
    this.standing = standing;
    this.placement = placement;
    this.assignments = Assignments.of(device, placement.knowledge(), placement.view());
    for (Fact<TimingRecorded> timing : standing) {
      SaidOfTiming.of(
              timing,
              placement.facts().corrections().pairingsOf(timing.id()),
              this::counts,
              this::isRep)
          .ifPresent(said -> sort(timing, said, opened));
    }
  }

  private void sort(Fact<TimingRecorded> timing, SaidOfTiming said, SessionsOpened opened) {
    if (!said.notReps().isEmpty()) {
      apart.put(timing.id(), said.notReps());
    }
    if (said.rep() != null) {
      add(byWord, said.rep(), timing);
      return;
    }
    String dog = timing.event().dog();
    dog = dog == null ? assignments.dog(timing.time()) : dog;
    String session = timing.event().session();
    if (dog != null) {
      add(
          byDog.computeIfAbsent(placement.identity().of(dog), _ -> new TreeMap<>()),
          session == null ? "on " + Instants.day(timing.time()) : "in " + session,
          timing);
      return;
    }
    session =
        session == null ? opened.at(timing.time(), assignments.ground(timing.time())) : session;
    if (session != null) {
      add(bySession, session, timing);
    }
  }

  private static void add(
      Map<String, List<Fact<TimingRecorded>>> parts, String part, Fact<TimingRecorded> timing) {
    parts.computeIfAbsent(part, _ -> new ArrayList<>()).add(timing);
  }

  /** A word of pairing counts when it stands and its rep is one in this view. */
  private boolean counts(Fact<TimingEvent> word) {
    return placement.knowledge().counts(word)
        && switch (word.event()) {
          case TimingPaired pairing -> isRep(pairing.rep());
          case TimingUnpaired pairing -> isRep(pairing.rep());
          case TimingRecorded _ -> false;
        };
  }

  private boolean isRep(String rep) {
    return placement.loggings(rep).stream().anyMatch(placement.view()::happened);
  }

  /** The device's id. */
  String device() {
    return device;
  }

  /**
   * Whether any of its timings may be the dog's, as far as that is plain. Most devices are other
   * dogs': whether all that a timing names is known, is asked later.
   */
  boolean mayBeOf(DogsReps dog) {
    return byDog.containsKey(dog.animal())
        || byWord.keySet().stream().anyMatch(dog.byId()::containsKey)
        || bySession.keySet().stream().anyMatch(dog.sessions()::contains);
  }

  /** Its timings that count, in the order in which it took them. */
  DeviceLog log() {
    DeviceLog known =
        log == null ? new DeviceLog(standing.stream().filter(this::isKnown).toList()) : log;
    log = known;
    return known;
  }

  /** A device's clock shows what it shows, whichever rep the timing is said to belong to. */
  private boolean isKnown(Fact<TimingRecorded> timing) {
    List<EntityRef> besidesRep = new ArrayList<>(References.of(timing.event()));
    besidesRep.removeIf(reference -> reference.kind() == EntityKind.REP);
    return placement.knowledge().missing(besidesRep).isEmpty();
  }

  /** Those that are said to belong to reps of the dog, by the rep. */
  Map<String, List<Fact<TimingRecorded>>> byWord(DogsReps dog) {
    Map<String, List<Fact<TimingRecorded>>> found = new TreeMap<>();
    byWord.forEach(
        (rep, timings) -> {
          if (dog.byId().containsKey(rep)) {
            found.put(rep, log().inOrder(timings));
          }
        });
    return found;
  }

  /** Those that are the dog's, in parts that are paired each by itself; no part is empty. */
  List<List<Fact<TimingRecorded>>> byDog(DogsReps dog) {
    return byDog.getOrDefault(dog.animal(), Map.of()).values().stream()
        .map(log()::inOrder)
        .filter(timings -> !timings.isEmpty())
        .toList();
  }

  /** Those that name no dog, in sessions of the dog, by the session; none is empty. */
  Map<String, List<Fact<TimingRecorded>>> bySession(DogsReps dog) {
    Map<String, List<Fact<TimingRecorded>>> found = new TreeMap<>();
    bySession.forEach(
        (session, timings) -> {
          List<Fact<TimingRecorded>> known =
              dog.sessions().contains(session) ? log().inOrder(timings) : List.of();
          if (!known.isEmpty()) {
            found.put(session, known);
          }
        });
    return found;
  }

  /** What timings that name no dog belong to, among all reps of their session; found once. */
  List<PlaceInOrder.Pair> pairsIn(
      String session, List<Fact<TimingRecorded>> timings, List<PlacedRep> reps) {
    return pairsInSession.computeIfAbsent(session, _ -> pairs(timings, reps));
  }

  /** What timings belong to, among reps in (time, id) order. */
  List<PlaceInOrder.Pair> pairs(List<Fact<TimingRecorded>> timings, List<PlacedRep> reps) {
    return PlaceInOrder.of(timings, reps, log(), this::leaveOpen);
  }

  /** Whether nobody says otherwise, of the timing or of the rep, and there was a run to time. */
  private boolean leaveOpen(Fact<TimingRecorded> timing, PlacedRep rep) {
    return rep.outcome() != Outcome.NO_ATTEMPT
        && !spoken().contains(rep.rep())
        && !apart.getOrDefault(timing.id(), Set.of()).contains(rep.rep())
        && assignments.mayBeOn(rep.poleSet(), timing.time());
  }

  /** Reps of any dog that one of the device's timings is said to belong to. */
  private Set<String> spoken() {
    Set<String> known = spoken == null ? new HashSet<>() : spoken;
    if (spoken == null) {
      byWord.forEach(
          (rep, timings) -> {
            if (!log().inOrder(timings).isEmpty()) {
              known.add(rep);
            }
          });
    }
    spoken = known;
    return known;
  }
}
