package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.DrillStanding;
import dev.poleward.domain.judgement.Evidence;
import dev.poleward.domain.judgement.Misfit;
import dev.poleward.domain.judgement.NextRung;
import dev.poleward.domain.judgement.PoolStanding;
import dev.poleward.domain.judgement.StageStanding;
import dev.poleward.domain.mastery.Proportion;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.DrillOfStage;
import dev.poleward.domain.programme.Handling;
import dev.poleward.domain.programme.ProgrammeInForce;
import dev.poleward.domain.programme.RungPool;
import dev.poleward.service.codec.Writing;
import java.util.List;

/** Where a dog stands in its programme, as the contract shows it. */
final class StandingShape {

  private StandingShape() {}

  /** Adds what the programme makes of the reps. */
  static void write(Writing out, ProgrammeInForce inForce, DogStanding dog, List<NextRung> next) {
    out.put("programme", dog.programme().id())
        .put("programmeVersion", dog.programme().version())
        .put("programmeName", dog.programme().name())
        .put("followed", followed(inForce))
        .putObjects("advice", AssignmentAdvice.of(inForce), each -> each)
        .put("stage", dog.current().map(stage -> stage.stage().id()).orElse(null))
        .put("finished", dog.finished())
        .put("forgetting", ForgettingShape.of(dog.forgetting()))
        .putObjects("stages", dog.stages(), StandingShape::stage)
        .putObjects("rungs", dog.pools(), StandingShape::rung)
        .putObjects("next", next, StandingShape::next)
        .putObjects(
            "drills",
            dog.pools().stream().flatMap(pool -> pool.drills().stream()).toList(),
            StandingShape::drill);
  }

  static String followed(ProgrammeInForce inForce) {
    return switch (inForce) {
      case ProgrammeInForce.Unassigned _ -> "by-default";
      case ProgrammeInForce.Assigned _ -> "assigned";
      case ProgrammeInForce.Unreadable _ -> "assigned-unreadable";
    };
  }

  private static ObjectNode stage(StageStanding stage) {
    return new Writing()
        .put("stage", stage.stage().id())
        .put("name", stage.stage().name())
        .put("state", stage.state())
        .put("probe", stage.isProbe())
        .put("rungs", stage.pools().size())
        .put("behind", stage.behind())
        .putTexts("waitsFor", stage.waitsFor())
        .done();
  }

  /** What one verdict is about. */
  static Writing place(String stage, RungPool pool) {
    Drill any = pool.drills().getFirst();
    return new Writing()
        .put("stage", stage)
        .put("poles", any.poles())
        .put("leadIn", any.runUp().leadIn())
        .put("backChainStep", pool.step())
        .put("entrySide", pool.rung().side())
        .put("angle", pool.rung().angle().degrees())
        .putPrinted("clock", pool.rung().angle().clock().orElse(null));
  }

  private static ObjectNode rung(PoolStanding pool) {
    Evidence evidence = pool.judgement().verdict().evidence();
    return place(pool.stage().id(), pool.pool())
        .put("state", pool.state())
        .put("verdict", VerdictWords.name(pool.judgement().verdict()))
        .put("reason", VerdictWords.reason(pool))
        .put(
            "evidence",
            new Writing().put("clean", evidence.clean()).put("missed", evidence.missed()).done())
        .put("testPassed", pool.judgement().testPassed())
        .put("cleanRepsToDecide", pool.judgement().cleanRepsToDecide())
        .putObjects("missing", pool.judgement().missing(), StandingShape::handling)
        .putObjects("lagging", pool.judgement().misfits(), StandingShape::misfit)
        .put("passedOver", pool.passedOver())
        .putPrinted("movedOn", pool.movedOn())
        .putPrinted("practised", pool.practised())
        .putPrinted("dueOn", pool.dueOn())
        .putPrinted("slippingSince", pool.slippedSince())
        .done();
  }

  private static ObjectNode handling(Handling handling) {
    return new Writing()
        .put("manoeuvre", handling.manoeuvre())
        .put("dogSide", handling.dogSide())
        .done();
  }

  private static ObjectNode misfit(Misfit misfit) {
    return new Writing()
        .put("manoeuvre", misfit.handling().manoeuvre())
        .put("dogSide", misfit.handling().dogSide())
        .put("clean", made(misfit.own()))
        .put("of", reps(misfit.own()))
        .put("othersClean", made(misfit.others()))
        .put("othersOf", reps(misfit.others()))
        .put("chance", misfit.chance())
        .done();
  }

  private static int made(Proportion of) {
    return Math.toIntExact(Math.round(of.made()));
  }

  private static int reps(Proportion of) {
    return Math.toIntExact(Math.round(of.made() + of.missed()));
  }

  /** Something to be worked on, as the contract's {@code NextRung}. */
  static ObjectNode next(NextRung next) {
    return place(next.standing().stage().id(), next.standing().pool())
        .put("why", next.why())
        .put("reason", VerdictWords.reason(next))
        .put("expectedClean", next.expected())
        .done();
  }

  private static ObjectNode drill(DrillStanding drill) {
    return new Writing()
        .put("drill", drill(drill.drill()))
        .put("state", drill.state())
        .put("reps", drill.reps())
        .put("clean", drill.clean())
        .put(
            "recent",
            new Writing()
                .put("clean", drill.recent().clean())
                .put("of", drill.recent().of())
                .done())
        .put("helped", drill.helped())
        .putPrinted("lastRun", drill.lastRun())
        .done();
  }

  /** A drill of a programme as the contract's {@code DrillOfProgramme}. */
  static ObjectNode drill(DrillOfStage of) {
    return DrillShape.of(of.drill()).put("stage", of.stage());
  }
}
