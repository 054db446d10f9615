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
import dev.poleward.service.render.Counted;
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
              misses == 1
                  ? "A miss: something easier first."
                  : "%d misses in a row: something easier first.".formatted(misses);
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
    return "%s: %d of %s clean, and every handling at least once."
        .formatted(what, evidence.clean(), ofTheTest(evidence));
  }

  private static String held(Evidence evidence) {
    return switch (evidence) {
      case SequentialEvidence it ->
          "Not there yet: %d of %s missed. It begins anew with the next rep."
              .formatted(it.missed(), ofTheTest(it));
      case WindowEvidence it ->
          (reps(it) == 1
                  ? "Not there yet: the last rep was missed"
                  : "Not there yet: of the last %d reps %d %s missed"
                      .formatted(reps(it), it.missed(), it.missed() == 1 ? "was" : "were"))
              + "; %d of the last %d have to be clean.".formatted(it.test().k(), it.test().n());
      case RunEvidence it ->
          "Not there yet: the last rep was missed, and the run of %d begins anew."
              .formatted(it.test().length());
    };
  }

  /** {@code 6 reps of the test were}. */
  private static String ofTheTest(Evidence evidence) {
    int reps = reps(evidence);
    return Counted.of(reps, "rep") + " of the test " + (reps == 1 ? "was" : "were");
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
        : "The test begins anew under this version of the programme, after %s under what was followed before"
            .formatted(Counted.of(before, "rep"));
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
