package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.care.LoadReview;
import dev.poleward.domain.care.LoadReview.OfSession;
import dev.poleward.domain.care.LoadReview.OfWeek;
import dev.poleward.domain.event.AimEvent.TrialRun;
import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.FadeReason;
import dev.poleward.domain.judgement.PoolStanding;
import dev.poleward.domain.judgement.StageRewards;
import dev.poleward.domain.judgement.StageStanding;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.mastery.SideComparison;
import dev.poleward.domain.mastery.SideComparison.Apart;
import dev.poleward.domain.mastery.SideMastery;
import dev.poleward.domain.outlook.Homework;
import dev.poleward.domain.outlook.Season;
import dev.poleward.domain.programme.RewardStep;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Membership;
import dev.poleward.domain.report.AtHome;
import dev.poleward.domain.report.AttendedSession;
import dev.poleward.domain.report.DogPage;
import dev.poleward.domain.report.StandingAt;
import dev.poleward.domain.report.WorkedRung;
import dev.poleward.service.codec.Writing;
import dev.poleward.service.http.MasteryShape.ThresholdShape;
import dev.poleward.service.render.FadeAdviceWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A dog's page as the contract shows it. Immutable; safe for use by many threads. */
final class DogPageShape {

  /** Most of each list of a page; what comes later is left out, and how much is said. */
  static final int LISTED_MAX = 100;

  /** Most sessions of the class. */
  static final int ATTENDED_MAX = 500;

  ObjectNode of(DogPage page) {
    Writing shape =
        new Writing()
            .put("dog", page.dog())
            .put("callName", page.known().callName())
            .put("guest", page.isGuest())
            .putTexts("handlers", page.known().traits().handlers())
            .putObjects("memberships", last(page.memberships()), DogPageShape::membership)
            .putObjects(
                "attended",
                ClassReportShape.first(page.attended(), ATTENDED_MAX),
                DogPageShape::attended)
            .put("amount", SeasonShape.amount(new Writing(), page.season().total()))
            .put("reps", ClassReportShape.tally(page.reps()));
    standing(shape, page);
    shape
        .put("faults", FaultsShape.seen(new Writing(), page.faults()).done())
        .put("load", load(page))
        .put(
            "care",
            new Writing()
                .put("mayTrain", page.care().mayTrain())
                .put("angleWork", page.care().angleWork())
                .putObjects("notes", page.care().notes(), PlanShape::note)
                .done());
    List<Homework> homework = ClassReportShape.first(page.homework(), LISTED_MAX);
    List<Fact<TrialRun>> trials = last(page.trials());
    return shape
        .putObjects("homework", homework, HomeworkShape::homework)
        .put("homeworkOmitted", page.homework().size() - homework.size())
        .put("atHome", atHome(page.atHome()))
        .put("rewards", page.rewards().map(stage -> rewards(page, stage)).orElse(null))
        .putObjects("trials", trials, trial -> TrialsShape.trial(trial).done())
        .put("trialsOmitted", page.trials().size() - trials.size())
        .putObjects(
            "notKnown",
            page.notKnown(),
            each -> ClassReportShape.notKnown(each, ReportWords.ofDog(each)))
        .done();
  }

  private static void standing(Writing shape, DogPage page) {
    Season season = page.season();
    List<Season.RungDone> movedOn = ClassReportShape.first(season.movedOn(), LISTED_MAX);
    List<PoolStanding> slipping = ClassReportShape.first(page.slipping(), LISTED_MAX);
    List<PoolStanding> due = ClassReportShape.first(page.due(), LISTED_MAX);
    List<WorkedRung> stuck = ClassReportShape.first(page.stuck(), LISTED_MAX);
    shape
        .put("begin", standing(page.begin()))
        .put("end", standing(page.end()))
        .putObjects("stagesDone", season.stages(), SeasonShape::done)
        .putObjects("movedOn", movedOn, SeasonShape::done)
        .put("movedOnOmitted", season.movedOn().size() - movedOn.size())
        .putObjects("sides", sides(page), side -> side)
        .put("lagging", lagging(page.sides()))
        .putObjects("stuck", stuck, DogPageShape::stuck)
        .put("stuckOmitted", page.stuck().size() - stuck.size())
        .putObjects(
            "slipping",
            slipping,
            pool -> rung(pool).putPrinted("since", pool.slippedSince()).done())
        .put("slippingOmitted", page.slipping().size() - slipping.size())
        .putObjects("due", due, pool -> rung(pool).putPrinted("since", pool.dueOn()).done())
        .put("dueOmitted", page.due().size() - due.size());
  }

  private static ObjectNode membership(Membership membership) {
    return new Writing()
        .putPrinted("since", membership.joined().time())
        .putPrinted("until", membership.left() == null ? null : membership.left().time())
        .done();
  }

  private static ObjectNode attended(AttendedSession attended) {
    return ClassReportShape.presence(
            new Writing()
                .put("session", attended.session())
                .putPrinted("opened", attended.opened())
                .putPrinted("day", attended.day()),
            attended.attendance())
        .done();
  }

  private static ObjectNode standing(StandingAt at) {
    DogStanding standing = at.standing();
    Optional<StageStanding> current = standing.current();
    return new Writing()
        .put("programme", standing.programme().id())
        .put("programmeVersion", standing.programme().version())
        .put("programmeName", standing.programme().name())
        .put("followed", StandingShape.followed(at.followed()))
        .put("stage", current.map(stage -> stage.stage().id()).orElse(null))
        .put("name", current.map(stage -> stage.stage().name()).orElse(null))
        .put("rungs", current.map(stage -> stage.pools().size()).orElse(null))
        .put("behind", current.map(StageStanding::behind).orElse(null))
        .put("finished", standing.finished())
        .done();
  }

  private static List<ObjectNode> sides(DogPage page) {
    List<ObjectNode> sides = new ArrayList<>();
    List<SideMastery> before = page.season().before().sides();
    List<SideMastery> after = page.season().after().sides();
    for (int i = 0; i < after.size(); i++) {
      SideMastery side = after.get(i);
      sides.add(
          new Writing()
              .put("entrySide", side.side())
              .put("reps", side.reps())
              .put("made", side.made())
              .put("effectiveReps", side.effectiveReps())
              .put("before", ThresholdShape.of(before.get(i).threshold()).written())
              .put("after", ThresholdShape.of(side.threshold()).written())
              .put("rungs", rungsOn(page, side.side()).count())
              .put("behind", rungsOn(page, side.side()).filter(PoolStanding::isBehind).count())
              .done());
    }
    return sides;
  }

  private static Stream<PoolStanding> rungsOn(DogPage page, EntrySide side) {
    return page.end().standing().current().stream()
        .flatMap(stage -> stage.pools().stream())
        .filter(pool -> pool.pool().rung().side() == side);
  }

  private static ObjectNode lagging(SideComparison sides) {
    Writing shape = new Writing();
    switch (sides) {
      case SideComparison.Lags it ->
          shape
              .put("verdict", "lags")
              .put("entrySide", it.side())
              .put("degrees", degrees(it.behind()));
      case SideComparison.Alike it ->
          shape.put("verdict", "alike").put("degrees", degrees(it.difference()));
      case SideComparison.CannotTell it ->
          shape
              .put("verdict", "cannot-tell")
              .put("why", it.why())
              .put("degrees", degrees(it.difference()));
    }
    return shape.put("text", ReportWords.sides(sides)).done();
  }

  private static @Nullable ObjectNode degrees(@Nullable Apart apart) {
    return apart == null
        ? null
        : new Writing()
            .put("value", apart.degrees())
            .put("lower", apart.lower())
            .put("upper", apart.upper())
            .done();
  }

  private static Writing rung(PoolStanding pool) {
    return StandingShape.place(pool.stage().id(), pool.pool());
  }

  private static ObjectNode stuck(WorkedRung worked) {
    return rung(worked.standing())
        .putPrinted("since", worked.since())
        .put("reps", worked.reps())
        .put("days", worked.days())
        .put("enough", worked.enough())
        .put("verdict", VerdictWords.name(worked.standing().judgement().verdict()))
        .put("text", VerdictWords.reason(worked.standing()))
        .done();
  }

  private static ObjectNode load(DogPage page) {
    LoadReview load = page.load();
    return new Writing()
        .put("sessions", load.sessions().size())
        .put("sessionsOver", load.sessionsOver())
        .put("weeksOver", load.weeksOver())
        .put("mostSharpBends", load.mostSharpBends())
        .put("mostGaps", load.mostGaps().map(DogPageShape::session).orElse(null))
        .put("heaviestWeek", load.heaviestWeek().map(DogPageShape::week).orElse(null))
        .done();
  }

  private static ObjectNode session(OfSession session) {
    return new Writing()
        .put("session", session.session())
        .putPrinted("day", session.day())
        .put("gaps", session.load().gaps())
        .put("sharpBends", session.load().sharpBends())
        .put("gapsLimit", session.limits().gapsPerSession())
        .put("sharpBendsLimit", session.limits().sharpBendsPerSession())
        .put("age", session.limits().age())
        .put("over", session.isOver())
        .done();
  }

  private static ObjectNode week(OfWeek week) {
    return new Writing()
        .putPrinted("last", week.last())
        .put("gaps", week.load().gaps())
        .put("sharpBends", week.load().sharpBends())
        .put("sessions", week.load().sessions())
        .put("gapsLimit", week.limits().gapsPerWeek())
        .put("over", week.isOver())
        .done();
  }

  private static ObjectNode atHome(AtHome atHome) {
    Writing shape = new Writing();
    switch (atHome) {
      case AtHome.Rest _ -> shape.put("kind", "rest");
      case AtHome.Homeworks(List<Homework> open) ->
          shape
              .put("kind", "homework")
              .putTexts(
                  "homework",
                  open.stream().limit(LISTED_MAX).map(each -> each.set().id()).toList());
      case AtHome.Proposed it ->
          shape
              .put("kind", "proposed")
              .putObjects("refresh", it.refresh(), StandingShape::next)
              .putObjects("next", it.next(), StandingShape::next)
              .put("heldBack", it.heldBack());
    }
    return shape.put("text", ReportWords.atHome(atHome)).done();
  }

  private static ObjectNode rewards(DogPage page, StageRewards stage) {
    List<RewardStep> ladder = stage.stage().terms().rewardLadder().steps();
    FadeReason reason = stage.fade().reason();
    return DrillShape.of(stage.stage())
        .put("steps", ladder.size())
        .put("step", stage.step())
        .put("stepName", ladder.get(stage.step()).name())
        .put("advice", stage.fade().advice())
        .put("reason", reason)
        .put("nextStep", stage.nextStep())
        .put("nextStepName", ladder.get(stage.nextStep()).name())
        .put("text", FadeAdviceWords.of(stage.fade(), page.end().standing().programme()))
        .done();
  }

  private static <T> List<T> last(List<T> all) {
    return all.subList(Math.max(0, all.size() - LISTED_MAX), all.size());
  }
}
