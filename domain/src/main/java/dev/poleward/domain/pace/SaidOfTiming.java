package dev.poleward.domain.pace;

import dev.poleward.domain.event.TimingEvent;
import dev.poleward.domain.event.TimingEvent.TimingPaired;
import dev.poleward.domain.event.TimingEvent.TimingRecorded;
import dev.poleward.domain.event.TimingEvent.TimingUnpaired;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Precedence;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * What was said of the rep that a timing belongs to. The latest word (time, id) holds: a pairing
 * names a rep, an unpairing takes it away and keeps the two apart; before all of them stands what
 * the timing says itself.
 *
 * @param rep null when nobody says one
 * @param notReps reps that it does not belong to
 */
record SaidOfTiming(@Nullable String rep, Set<String> notReps) {

  /**
   * What was said; empty when the timing itself names a rep that is none.
   *
   * @param counts whether a word of pairing counts, and so whether its rep is one
   */
  static Optional<SaidOfTiming> of(
      Fact<TimingRecorded> timing,
      List<Fact<TimingEvent>> pairings,
      Predicate<Fact<TimingEvent>> counts,
      Predicate<String> isRep) {
    String rep = timing.event().rep();
    if (pairings.isEmpty()) {
      return Optional.of(new SaidOfTiming(rep, Set.of()));
    }
    if (rep != null && !isRep.test(rep)) {
      return Optional.empty();
    }
    Set<String> not = new TreeSet<>();
    for (Fact<TimingEvent> fact : pairings.stream().sorted(Precedence.BY_MOMENT).toList()) {
      if (counts.test(fact)) {
        switch (fact.event()) {
          case TimingPaired pairing -> {
            rep = pairing.rep();
            not.remove(rep);
          }
          case TimingUnpaired pairing -> {
            rep = pairing.rep().equals(rep) ? null : rep;
            not.add(pairing.rep());
          }
          case TimingRecorded _ -> {}
        }
      }
    }
    return Optional.of(new SaidOfTiming(rep, not));
  }
}
