package dev.poleward.domain.record;

import dev.poleward.domain.event.DogEvent.DogMerged;
import dev.poleward.domain.event.EventWithdrawn;
import dev.poleward.domain.event.RepEvent.RepAmended;
import dev.poleward.domain.event.RepEvent.RepLogged;
import dev.poleward.domain.event.TimingEvent;
import dev.poleward.domain.event.TimingEvent.TimingPaired;
import dev.poleward.domain.event.TimingEvent.TimingRecorded;
import dev.poleward.domain.event.TimingEvent.TimingUnpaired;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * All of a club's corrections, found by what they correct. Immutable once built; safe for use by
 * many threads.
 */
public final class Corrections {

  private final Map<String, List<Fact<EventWithdrawn>>> withdrawn = new HashMap<>();
  private final Map<String, List<Fact<RepAmended>>> amendments = new HashMap<>();
  private final Map<String, Set<String>> movedToDog = new HashMap<>();
  private final Map<String, Set<String>> movedToSession = new HashMap<>();
  private final Map<String, List<Fact<RepLogged>>> furtherLoggings = new HashMap<>();
  private final Map<String, List<Fact<TimingEvent>>> pairings = new HashMap<>();
  private final List<Fact<DogMerged>> merges = new ArrayList<>();

  private Corrections() {}

  /**
   * Gathers corrections.
   *
   * @param facts withdrawals, amendments, merges, pairings and their undoing, and the second and
   *     later loggings of a rep; other events are passed over
   */
  public static Corrections of(Iterable<? extends Fact<?>> facts) {
    Corrections corrections = new Corrections();
    for (Fact<?> fact : facts) {
      corrections.take(fact);
    }
    return corrections;
  }

  private void take(Fact<?> fact) {
    Fact<EventWithdrawn> withdrawal = fact.as(EventWithdrawn.class);
    if (withdrawal != null) {
      withdrawn.computeIfAbsent(withdrawal.event().event(), _ -> new ArrayList<>()).add(withdrawal);
    }
    Fact<RepLogged> logging = fact.as(RepLogged.class);
    if (logging != null) {
      furtherLoggings.computeIfAbsent(logging.event().rep(), _ -> new ArrayList<>()).add(logging);
    }
    Fact<DogMerged> merge = fact.as(DogMerged.class);
    if (merge != null) {
      merges.add(merge);
    }
    Fact<TimingEvent> timing = fact.as(TimingEvent.class);
    String paired = timing == null ? null : paired(timing.event());
    if (timing != null && paired != null) {
      pairings.computeIfAbsent(paired, _ -> new ArrayList<>()).add(timing);
    }
    Fact<RepAmended> amendment = fact.as(RepAmended.class);
    if (amendment != null) {
      RepAmended amended = amendment.event();
      amendments.computeIfAbsent(amended.rep(), _ -> new ArrayList<>()).add(amendment);
      index(movedToDog, amended.dog(), amended.rep());
      index(movedToSession, amended.session(), amended.rep());
    }
  }

  private static @Nullable String paired(TimingEvent event) {
    return switch (event) {
      case TimingPaired pairing -> pairing.timing();
      case TimingUnpaired pairing -> pairing.timing();
      case TimingRecorded _ -> null;
    };
  }

  private static void index(Map<String, Set<String>> moved, @Nullable String target, String rep) {
    if (target != null) {
      moved.computeIfAbsent(target, _ -> new TreeSet<>()).add(rep);
    }
  }

  /** Whether that event had been withdrawn, as far as {@code view} knows. */
  public boolean withdrawn(String event, View view) {
    for (Fact<EventWithdrawn> withdrawal : withdrawalsOf(event)) {
      if (view.knew(withdrawal.recorded())) {
        return true;
      }
    }
    return false;
  }

  /** Withdrawals of an event, in no particular order. */
  public List<Fact<EventWithdrawn>> withdrawalsOf(String event) {
    return withdrawn.getOrDefault(event, List.of());
  }

  /** Ids of all events that were ever withdrawn. */
  public Set<String> withdrawnEvents() {
    return withdrawn.keySet();
  }

  /** Amendments of a rep, in no particular order. */
  public List<Fact<RepAmended>> amendmentsOf(String rep) {
    return amendments.getOrDefault(rep, List.of());
  }

  /** Reps that some amendment says were this dog's. */
  public Set<String> repsMovedToDog(String dog) {
    return movedToDog.getOrDefault(dog, Set.of());
  }

  /** Reps that some amendment says were of this session. */
  public Set<String> repsMovedToSession(String session) {
    return movedToSession.getOrDefault(session, Set.of());
  }

  /** Whether a rep of that id was logged more than once. */
  public boolean loggedTwice(String rep) {
    return furtherLoggings.containsKey(rep);
  }

  /** Loggings of a rep other than the one applied first, in no particular order. */
  public List<Fact<RepLogged>> furtherLoggings(String rep) {
    return furtherLoggings.getOrDefault(rep, List.of());
  }

  /** What was said of which reps a timing belongs to, or does not, in no particular order. */
  public List<Fact<TimingEvent>> pairingsOf(String timing) {
    return pairings.getOrDefault(timing, List.of());
  }

  /** Merges of dogs, in no particular order. */
  public List<Fact<DogMerged>> merges() {
    return merges;
  }
}
