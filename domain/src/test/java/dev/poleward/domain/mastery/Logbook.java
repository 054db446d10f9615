package dev.poleward.domain.mastery;

import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.event.RepDetails;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.record.Moment;
import dev.poleward.domain.record.PlacedRep;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** Reps of one dog, a minute apart from {@link #START} on, told by angle. For one thread. */
final class Logbook {

  static final Instant START = Instant.parse("2026-05-04T17:00:00Z");

  private final List<PlacedRep> reps = new ArrayList<>();
  private Instant next = START;

  static Logbook logbook() {
    return new Logbook();
  }

  /** From here on it is so many days later. */
  Logbook daysLater(double days) {
    next = next.plus(Duration.ofMillis(Math.round(days * 86_400_000)));
    return this;
  }

  /** So many that made the entry at a signed angle, and so many that did not. */
  Logbook at(double degrees, int made, int missed) {
    for (int i = 0; i < made; i++) {
      at(degrees, Outcome.CLEAN);
    }
    for (int i = 0; i < missed; i++) {
      at(degrees, Outcome.MISSED_ENTRY);
    }
    return this;
  }

  /** One that ended so. */
  Logbook at(double degrees, Outcome outcome) {
    PlacedRep rep =
        new PlacedRep(
            new Moment(next, "e-%06d".formatted(reps.size())),
            "r-" + reps.size(),
            "s-1",
            "juniper",
            Manoeuvre.ALONGSIDE,
            outcome,
            RepDetails.NONE,
            new EntryAngle(degrees),
            null,
            null,
            null,
            List.of(),
            List.of());
    reps.add(rep);
    next = next.plusSeconds(60);
    return this;
  }

  List<PlacedRep> reps() {
    return List.copyOf(reps);
  }

  /** When the last rep was run; the start before the first. */
  Instant last() {
    return reps.isEmpty() ? START : reps.getLast().moment().time();
  }

  /** The curve as it stands after the last rep, weighing all alike. */
  MasteryCurve curve() {
    return curve(Questions.ANY);
  }

  /** The curve as it stands after the last rep. */
  MasteryCurve curve(MasteryQuestion question) {
    return MasteryCurve.of(reps(), question, last());
  }
}
