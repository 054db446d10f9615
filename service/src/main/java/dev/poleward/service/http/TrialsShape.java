package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.event.AimEvent.TrialRun;
import dev.poleward.domain.outlook.Trials;
import dev.poleward.domain.outlook.Trials.CarryOver;
import dev.poleward.domain.outlook.Trials.Run;
import dev.poleward.domain.record.Fact;
import dev.poleward.service.codec.Writing;
import java.util.List;

/** Trials beside training as the contract shows them. Immutable; safe for use by many threads. */
final class TrialsShape {

  /** Most trials of one answer; the earliest are left out, of the comparison they are part. */
  static final int TRIALS_MAX = 500;

  ObjectNode of(String dog, LocalDay day, Trials trials) {
    List<Run> shown = trials.runs().stream().limit(TRIALS_MAX).toList();
    return new Writing()
        .put("dog", dog)
        .putPrinted("agedTo", day.date())
        .putObjects("carryOver", trials.carryOver(), TrialsShape::carryOver)
        .put("omitted", trials.runs().size() - shown.size())
        .putObjects("trials", shown, TrialsShape::run)
        .done();
  }

  private static ObjectNode run(Run run) {
    return trial(run.run())
        .put("training", new Writing().put("reps", run.reps()).put("clean", run.clean()).done())
        .done();
  }

  /** What was told of a trial. */
  static Writing trial(Fact<TrialRun> run) {
    TrialRun trial = run.event();
    return new Writing()
        .put("event", run.id())
        .putPrinted("time", run.time())
        .put("poles", trial.poles())
        .put("outcome", trial.outcome())
        .put("atPole", trial.atPole())
        .put("seconds", trial.seconds())
        .put("angle", trial.angle());
  }

  private static ObjectNode carryOver(CarryOver over) {
    return new Writing()
        .put("poles", over.poles())
        .put("trials", new Writing().put("runs", over.runs()).put("clean", over.cleanRuns()).done())
        .put(
            "training",
            new Writing().put("reps", over.reps()).put("clean", over.cleanReps()).done())
        .put("change", ChangeShape.of(over.change()))
        .put("verdict", over.verdict())
        .put("text", sentence(over))
        .done();
  }

  private static String sentence(CarryOver over) {
    return switch (over.verdict()) {
      case NOT_ENOUGH_YET ->
          "Not enough yet: %d of %d trials and %d of %d reps in training like them."
              .formatted(over.runs(), Trials.RUNS_MIN, over.reps(), Trials.REPS_MIN);
      case FALLS_SHORT -> "Surely less clean in trials than in training.";
      case CARRIES_OVER -> "What is trained carries over to trials.";
      case UNDECIDED -> "It may carry over or not: more trials would tell.";
    };
  }
}
