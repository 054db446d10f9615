package dev.poleward.domain.outlook;

import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.event.Help;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.event.Reward;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.layout.Setup;
import dev.poleward.domain.learner.Expected;
import dev.poleward.domain.learner.SimulatedDog;
import dev.poleward.domain.learner.Task;
import dev.poleward.domain.mastery.Success;
import dev.poleward.domain.record.PlacedRep;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A rep as the learner model sees it.
 *
 * @param pieces what it was paid with, pieces of food and throws of a toy together
 */
record SeenRep(Task task, Outcome outcome, boolean entryMade, int pieces, Instant time) {

  /** Where nothing is said of rewards, one is assumed: the dog's mood neither gains nor loses. */
  private static final int PIECES_USUAL = 1;

  private static final int PIECES_MAX = 20;

  /** None of a void rep, and of one of which nobody knows what stood or where the dog began. */
  static Optional<SeenRep> of(PlacedRep rep) {
    Setup setup = rep.setup();
    EntryAngle angle = rep.angle();
    if (rep.outcome() == Outcome.VOID || setup == null || angle == null) {
      return Optional.empty();
    }
    // Poles alone from where a jump will be are run without a lead-in.
    boolean bare = rep.details().backChainStep() == BackChainStep.POLES_ONLY;
    return Optional.of(
        new SeenRep(
            new Task(
                angle,
                setup.poles(),
                bare ? LeadIn.NONE : setup.leadIn(),
                rep.details().backChainStep(),
                rep.manoeuvre(),
                rep.details().dogSide(),
                rep.details().help() == null ? Help.NONE : rep.details().help()),
            rep.outcome(),
            Success.ENTRY.made(rep),
            pieces(rep.details().rewards()),
            rep.moment().time()));
  }

  /** Those that can be seen, in their order. */
  static List<SeenRep> of(List<PlacedRep> reps) {
    return reps.stream().map(SeenRep::of).flatMap(Optional::stream).toList();
  }

  private static int pieces(@Nullable List<Reward> rewards) {
    if (rewards == null) {
      return PIECES_USUAL;
    }
    int pieces = 0;
    for (Reward reward : rewards) {
      pieces += reward.count() == null ? 1 : Math.min(reward.count(), PIECES_MAX);
    }
    return Math.min(pieces, PIECES_MAX);
  }

  /** Whether it says something of the dog: a helped rep teaches, and proves nothing. */
  boolean isEvidence() {
    return task.help() == Help.NONE;
  }

  boolean isClean() {
    return outcome == Outcome.CLEAN;
  }

  /** Puts a dog through it; what was to be expected before. */
  Expected lived(SimulatedDog dog) {
    Expected expected = dog.observed(task, outcome, entryMade, time);
    dog.rewarded(pieces);
    return expected;
  }
}
