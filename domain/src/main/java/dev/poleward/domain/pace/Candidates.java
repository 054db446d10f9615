package dev.poleward.domain.pace;

import dev.poleward.domain.event.TimingEvent;
import dev.poleward.domain.event.TimingEvent.TimingPaired;
import dev.poleward.domain.event.TimingEvent.TimingRecorded;
import dev.poleward.domain.event.TimingEvent.TimingUnpaired;
import dev.poleward.domain.pace.TimedRep.Told;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.PlacedRep;
import dev.poleward.domain.record.Placement;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Timings of one device that may be a dog's, sorted by how they can come to a rep. */
final class Candidates {

  private final Placement placement;
  private final DogsReps dog;
  private final Assignments assignments;
  private final SessionsOpened opened;

  private final List<TimedRep> byWord = new ArrayList<>();
  private final Map<String, List<Fact<TimingRecorded>>> byDog = new TreeMap<>();
  private final Map<String, List<Fact<TimingRecorded>>> bySession = new TreeMap<>();

  /** Reps of any dog that one of the device's timings is said to belong to. */
  private final Set<String> spoken = new HashSet<>();

  private final Map<String, Set<String>> apart = new HashMap<>();

  private Candidates(
      Placement placement, DogsReps dog, Assignments assignments, SessionsOpened opened) {
    this.placement = placement;
    this.dog = dog;
    this.assignments = assignments;
    this.opened = opened;
  }

  static Candidates of(
      List<Fact<TimingRecorded>> timings,
      Placement placement,
      DogsReps dog,
      Assignments assignments,
      SessionsOpened opened) {
    Candidates candidates = new Candidates(placement, dog, assignments, opened);
    for (Fact<TimingRecorded> timing : timings) {
      SaidOfTiming.of(
              timing,
              placement.facts().corrections().pairingsOf(timing.id()),
              candidates::counts,
              candidates::isRep)
          .ifPresent(said -> candidates.sort(timing, said));
    }
    return candidates;
  }

  /** Whether there are none. */
  boolean isEmpty() {
    return byWord.isEmpty() && byDog.isEmpty() && bySession.isEmpty();
  }

  /** Those of which somebody, or the timing itself, says that they belong to a rep of the dog. */
  List<TimedRep> byWord() {
    return byWord;
  }

  /** Those that are the dog's, in parts that are paired each by itself. */
  Iterable<List<Fact<TimingRecorded>>> byDog() {
    return byDog.values();
  }

  /** Those that name no dog, by the session that they are of. */
  Map<String, List<Fact<TimingRecorded>>> bySession() {
    return bySession;
  }

  /** Whether nobody says otherwise, of the timing or of the rep. */
  boolean leaveOpen(Fact<TimingRecorded> timing, PlacedRep rep) {
    return !spoken.contains(rep.rep())
        && !apart.getOrDefault(timing.id(), Set.of()).contains(rep.rep())
        && assignments.mayBeOn(rep.poleSet(), timing.time());
  }

  private void sort(Fact<TimingRecorded> timing, SaidOfTiming said) {
    if (!said.notReps().isEmpty()) {
      apart.put(timing.id(), said.notReps());
    }
    String named = said.rep();
    if (named != null) {
      spoken.add(named);
      PlacedRep rep = dog.byId().get(named);
      if (rep != null) {
        byWord.add(new TimedRep(rep, timing, Told.BY_WORD));
      }
      return;
    }
    String ofDog = timing.event().dog();
    ofDog = ofDog == null ? assignments.dog(timing.time()) : ofDog;
    String session = timing.event().session();
    if (ofDog != null) {
      if (placement.identity().of(ofDog).equals(dog.animal())) {
        add(byDog, session == null ? "on " + day(timing) : "in " + session, timing);
      }
      return;
    }
    session =
        session == null ? opened.at(timing.time(), assignments.ground(timing.time())) : session;
    if (session != null && dog.sessions().contains(session)) {
      add(bySession, session, timing);
    }
  }

  private static void add(
      Map<String, List<Fact<TimingRecorded>>> parts, String part, Fact<TimingRecorded> timing) {
    parts.computeIfAbsent(part, _ -> new ArrayList<>()).add(timing);
  }

  private static String day(Fact<TimingRecorded> timing) {
    return timing.time().atOffset(ZoneOffset.UTC).toLocalDate().toString();
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
    return dog.byId().containsKey(rep)
        || placement.loggings(rep).stream().anyMatch(placement.view()::happened);
  }
}
