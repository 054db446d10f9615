package dev.poleward.domain.judgement;

import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.event.Help;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.event.RepDetails;
import dev.poleward.domain.layout.Approach;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.layout.Setup;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.record.Moment;
import dev.poleward.domain.record.PlacedRep;
import java.time.Instant;
import java.util.List;

/** Reps of a dog as a drill asks for them. */
public final class Ran {

  private Ran() {}

  /** A rep without help. */
  public static PlacedRep of(Drill drill, boolean clean, Instant time) {
    return of(drill, clean ? Outcome.CLEAN : Outcome.MISSED_ENTRY, Help.NONE, time);
  }

  /** A rep that ended so. */
  public static PlacedRep of(Drill drill, Outcome outcome, Help help, Instant time) {
    BackChainStep step = drill.runUp().step();
    LeadIn leadIn = drill.runUp().leadIn();
    Approach approach = new Approach(drill.rung().angle(), null);
    return new PlacedRep(
        new Moment(time, "e-" + time),
        "r-" + time,
        "s-1",
        "juniper",
        drill.handling().manoeuvre(),
        outcome,
        new RepDetails(
            drill.handling().dogSide(),
            step,
            drill.runUp().turn(),
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            help,
            null,
            null,
            null,
            null),
        drill.rung().angle(),
        new Setup(drill.poles(), 0.6, leadIn, null, approach, null, null, null),
        null,
        null,
        List.of(),
        List.of());
  }
}
