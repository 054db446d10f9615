package dev.poleward.service.http;

import dev.poleward.domain.judgement.Evidence;
import dev.poleward.domain.judgement.NextRung;
import dev.poleward.domain.judgement.PoolStanding;
import dev.poleward.domain.judgement.RungJudgement;
import dev.poleward.domain.judgement.Verdict;
import dev.poleward.domain.programme.RungPool;
import java.util.Locale;

/** Why a rung is judged as it is, and why it is next, in a sentence or two. */
final class VerdictWords {

  private VerdictWords() {}

  /** What a client finds in {@code verdict}. */
  static String name(Verdict verdict) {
    return switch (verdict) {
      case Verdict.MoveOn _ -> "move-on";
      case Verdict.Hold _ -> "hold";
      case Verdict.StepBack _ -> "step-back";
      case Verdict.Undecided _ -> "undecided";
    };
  }

  static String reason(PoolStanding pool) {
    RungJudgement judgement = pool.judgement();
    if (pool.passedOver()) {
      return "The dog was said to start behind this.";
    }
    String reason =
        switch (judgement.verdict()) {
          case Verdict.MoveOn(Evidence evidence) ->
              reps(evidence) == 0
                  ? "Moved on from under what was followed before."
                  : "Mastered: %d of %d reps of the test were clean, and every handling at least once."
                      .formatted(evidence.clean(), reps(evidence));
          case Verdict.Hold(Evidence evidence) ->
              "Not there yet: %d of %d reps of the test were missed. It begins anew with the next rep."
                  .formatted(evidence.missed(), reps(evidence));
          case Verdict.StepBack(Evidence _, int misses) ->
              "%d misses in a row: something easier first.".formatted(misses);
          case Verdict.Undecided(Evidence evidence) -> undecided(judgement, evidence);
        };
    return judgement.misfits().isEmpty()
        ? reason
        : reason
            + " Lags behind the rest: "
            + TrainersWords.handlings(
                judgement.misfits().stream().map(misfit -> misfit.handling()).toList())
            + ".";
  }

  private static String undecided(RungJudgement judgement, Evidence evidence) {
    if (reps(evidence) == 0) {
      return "No rep of the test yet: " + cleanReps(judgement) + ".";
    }
    String soFar =
        "%d of %d clean so far; %s."
            .formatted(evidence.clean(), reps(evidence), cleanReps(judgement));
    return soFar + notCleanYet(judgement);
  }

  private static String notCleanYet(RungJudgement judgement) {
    return judgement.missing().isEmpty()
        ? ""
        : " Not clean yet: " + TrainersWords.handlings(judgement.missing()) + ".";
  }

  /** {@code 4 more clean reps would decide}. */
  static String cleanReps(RungJudgement judgement) {
    int reps = judgement.cleanRepsToDecide();
    return reps == 1 ? "1 more clean rep would decide" : reps + " more clean reps would decide";
  }

  private static int reps(Evidence evidence) {
    return evidence.clean() + evidence.missed();
  }

  /** Why it is next. */
  static String reason(NextRung next) {
    RungPool pool = next.standing().pool();
    String what =
        TrainersWords.setup(pool.drills().getFirst()) + ", " + TrainersWords.entry(pool.rung());
    String share = String.format(Locale.ROOT, "%.0f%%", 100 * next.expected());
    return switch (next.why()) {
      case SLIPPING -> what + ": was solid and slips; mend it before anything new.";
      case DUE -> what + ": solid, but not practised for long; refresh it with a few easy reps.";
      case EASIER -> what + ": easier than what went wrong last, and solid; start here.";
      case FRONTIER ->
          what
              + ": next to be learned; about "
              + share
              + " of the reps can be expected clean."
              + notCleanYet(next.standing().judgement());
      case PROBE -> what + ": a look ahead; failing it costs nothing.";
    };
  }
}
