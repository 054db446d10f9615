package dev.poleward.service.http;

import dev.poleward.domain.judgement.DrillStanding;
import dev.poleward.domain.judgement.Evidence;
import dev.poleward.domain.judgement.Misfit;
import dev.poleward.domain.judgement.NextRung;
import dev.poleward.domain.judgement.PoolStanding;
import dev.poleward.domain.judgement.RunEvidence;
import dev.poleward.domain.judgement.RungJudgement;
import dev.poleward.domain.judgement.SequentialEvidence;
import dev.poleward.domain.judgement.Verdict;
import dev.poleward.domain.judgement.WindowEvidence;
import dev.poleward.domain.programme.RungPool;
import java.util.Locale;
import java.util.stream.Collectors;

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
          case Verdict.MoveOn(Evidence evidence) -> movedOn(judgement, evidence);
          case Verdict.Hold(Evidence evidence) -> held(evidence);
          case Verdict.StepBack(Evidence _, int misses) ->
              "%d misses in a row: something easier first.".formatted(misses);
          case Verdict.Undecided(Evidence evidence) -> undecided(pool, evidence);
        };
    return judgement.misfits().isEmpty()
        ? reason
        : reason
            + " Lags behind the rest: "
            + judgement.misfits().stream()
                .map(VerdictWords::lagging)
                .collect(Collectors.joining("; "))
            + ".";
  }

  private static String movedOn(RungJudgement judgement, Evidence evidence) {
    if (reps(evidence) == 0) {
      return "Moved on from under what was followed before.";
    }
    // What holds of all handlings together need not hold of each.
    String what = judgement.misfits().isEmpty() ? "Mastered" : "Passed as a whole";
    return "%s: %d of %d reps of the test were clean, and every handling at least once."
        .formatted(what, evidence.clean(), reps(evidence));
  }

  private static String held(Evidence evidence) {
    return switch (evidence) {
      case SequentialEvidence it ->
          "Not there yet: %d of %d reps of the test were missed. It begins anew with the next rep."
              .formatted(it.missed(), reps(it));
      case WindowEvidence it ->
          "Not there yet: of the last %d reps %d were missed; %d of the last %d have to be clean."
              .formatted(reps(it), it.missed(), it.test().k(), it.test().n());
      case RunEvidence it ->
          "Not there yet: the last rep was missed, and the run of %d begins anew."
              .formatted(it.test().length());
    };
  }

  private static String lagging(Misfit misfit) {
    return "%s (%d of %d clean, the rest %d of %d)"
        .formatted(
            TrainersWords.handling(misfit.handling()),
            Math.round(misfit.own().made()),
            Math.round(misfit.own().made() + misfit.own().missed()),
            Math.round(misfit.others().made()),
            Math.round(misfit.others().made() + misfit.others().missed()));
  }

  private static String undecided(PoolStanding pool, Evidence evidence) {
    RungJudgement judgement = pool.judgement();
    if (reps(evidence) == 0) {
      return begun(pool) + ": " + cleanReps(judgement) + ".";
    }
    String handlings = TrainersWords.handlings(judgement.missing());
    if (judgement.testPassed()) {
      return "The test is through, with %d of %d clean; still to be clean: %s."
          .formatted(evidence.clean(), reps(evidence), handlings);
    }
    String soFar =
        "%d of %d clean so far; %s"
            .formatted(evidence.clean(), reps(evidence), cleanReps(judgement));
    if (judgement.missing().isEmpty()) {
      return soFar + ".";
    }
    return judgement.cleanRepsToDecide() == judgement.missing().size()
        ? soFar + ": " + handlings + "."
        : soFar + ", if these are among them: " + handlings + ".";
  }

  /** Nothing is evidence yet, which is not to say that nothing was run. */
  private static String begun(PoolStanding pool) {
    if (pool.judgement().slip() != null) {
      return "The test begins anew after the slip";
    }
    int before = pool.drills().stream().mapToInt(DrillStanding::reps).sum();
    return before == 0
        ? "No rep of the test yet"
        : "The test begins anew under this version of the programme, after %d %s under what was followed before"
            .formatted(before, before == 1 ? "rep" : "reps");
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
    String what = TrainersWords.setup(pool) + ", " + TrainersWords.entry(pool.rung());
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
