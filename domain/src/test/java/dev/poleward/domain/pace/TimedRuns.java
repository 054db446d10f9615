package dev.poleward.domain.pace;

import dev.poleward.domain.event.Help;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.event.TimingEvent.TimingRecorded;
import dev.poleward.domain.judgement.Ran;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.pace.TimedRep.Told;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.Handling;
import dev.poleward.domain.programme.RunUp;
import dev.poleward.domain.programme.Rung;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Moment;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Timed reps of so many poles, from an angle, with a manoeuvre. */
public record TimedRuns(int poles, double degrees, Manoeuvre manoeuvre) {

  /** Of four poles from the side of pole 1. */
  public static final TimedRuns OF_FOUR = new TimedRuns(4, 30, Manoeuvre.ALONGSIDE);

  /** A clean run that took so long. */
  public TimedRep clean(Instant at, double seconds) {
    return ran(at, seconds, Outcome.CLEAN, Help.NONE, null);
  }

  /** A clean run with a time for each gap, seconds. */
  public TimedRep withGaps(Instant at, Double... gaps) {
    List<Double> millis = List.of(gaps).stream().map(gap -> 1_000 * gap).toList();
    double seconds = List.of(gaps).stream().mapToDouble(gap -> gap).sum();
    return ran(at, seconds, Outcome.CLEAN, Help.NONE, millis);
  }

  TimedRep ran(
      Instant at, double seconds, Outcome outcome, Help help, @Nullable List<Double> gaps) {
    Drill drill =
        new Drill(
            poles,
            new RunUp(LeadIn.NONE, null, null),
            new Rung(new EntryAngle(degrees)),
            new Handling(manoeuvre, null, null));
    TimingRecorded timing =
        new TimingRecorded("gate-1", 0, 0, 0, 1_000 * seconds, gaps, null, null, null, null);
    return new TimedRep(
        Ran.of(drill, outcome, help, at),
        new Fact<>(new Moment(at, "t-" + at), at, timing, null),
        Told.BY_WORD);
  }
}
