package dev.poleward.domain.history;

import dev.poleward.domain.care.CareLimits;
import dev.poleward.domain.care.CarePermit;
import dev.poleward.domain.care.CareQuestion;
import dev.poleward.domain.care.CareReview;
import dev.poleward.domain.care.Conditions;
import dev.poleward.domain.care.SessionAhead;
import dev.poleward.domain.care.Trained;
import dev.poleward.domain.event.ProgrammeEvent.PlanIssued;
import dev.poleward.domain.judgement.ClubRetention;
import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.StageRewards;
import dev.poleward.domain.judgement.StandingHistory;
import dev.poleward.domain.judgement.StandingReading;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.layout.Setup;
import dev.poleward.domain.planning.CleanForecast;
import dev.poleward.domain.planning.Limits;
import dev.poleward.domain.planning.PlanBlock;
import dev.poleward.domain.planning.PlanOutcome;
import dev.poleward.domain.planning.Planner;
import dev.poleward.domain.planning.RewardSteps;
import dev.poleward.domain.planning.SessionPlan;
import dev.poleward.domain.programme.DrillOfStage;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.programme.ProgrammesFollowed;
import dev.poleward.domain.record.ClubRecord;
import dev.poleward.domain.record.DogRecord;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Facts;
import dev.poleward.domain.record.PlacedRep;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.Registry;
import dev.poleward.domain.record.View;
import dev.poleward.domain.running.AsItStands;
import dev.poleward.domain.running.RunningOrder;
import dev.poleward.domain.running.RunningOrders;
import dev.poleward.domain.running.RunningQuestion;
import dev.poleward.domain.running.SwungPoles;
import dev.poleward.domain.running.Wanted;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Everything that is to come of a record in one view: what each dog may be asked for and is to do
 * next, how it is rewarded, what came of what was planned before, and who of a class runs when.
 * Dearer than {@link EveryAnswer} by far, so it is asked of fewer histories.
 */
final class EveryPlan {

  /** How rewards faded. */
  record Rewards(List<StageRewards> stages) {}

  /**
   * The step by which a drill of a plan is rewarded.
   *
   * @param ofStage of what is not new there
   */
  record RewardedDrill(DrillOfStage drill, int ofStage, int step) {}

  private final View view;
  private final Placement placement;
  private final Registry registry;
  private final Map<String, Object> answers = new TreeMap<>();
  private final Map<String, SessionPlan> lenient = new TreeMap<>();

  private EveryPlan(Facts facts, View view) {
    this.view = view;
    this.placement = new Placement(facts, view);
    this.registry = new Registry(placement, view);
  }

  /** The answers by question. */
  static Map<String, Object> of(Facts facts, View view) {
    EveryPlan every = new EveryPlan(facts, view);
    GeneratedHistory.DOGS.forEach(every::ask);
    GeneratedHistory.PLANS.forEach(every::askOfPlan);
    GeneratedHistory.CLASSES.forEach(every::askOfClass);
    return every.answers;
  }

  private void ask(String dog) {
    List<PlacedRep> reps = placement.ofDog(dog);
    if (reps.isEmpty()) {
      return;
    }
    registry
        .dog(dog)
        .ifPresent(
            known -> {
              String animal = placement.identity().of(dog);
              ProgrammesFollowed followed = ProgrammesFollowed.of(animal, registry);
              StandingHistory history = StandingHistory.of(reps, followed, view.asOf());
              ask(dog + " as it follows", known, reps, history.reading());
              StandingReading reading = StandingReading.begun(PlanQuestions.PROGRAMME, null);
              reps.forEach(reading::read);
              lenient.put(animal, ask(dog + " leniently", known, reps, reading));
            });
  }

  /** Answers all of a dog, and gives the first of its plans. */
  private SessionPlan ask(
      String dog, DogRecord known, List<PlacedRep> reps, StandingReading reading) {
    List<SessionPlan> plans = new ArrayList<>();
    String animal = placement.identity().of(known.registered().standing().event().dog());
    RewardSteps steps =
        RewardSteps.of(reading, reps, CleanForecast.of(reps, PlanQuestions.TIMES.getFirst()));
    List<StageRewards> stages = StageRewards.of(reading, reps);
    answers.put("rewards of dog " + dog, new Rewards(stages));
    for (Instant at : PlanQuestions.TIMES) {
      DogStanding standing = reading.standing(at, ClubRetention.UNKNOWN);
      CleanForecast forecast = CleanForecast.of(reps, at);
      for (Conditions day : PlanQuestions.DAYS) {
        CareQuestion care = care(day, at);
        Trained trained = Trained.of(animal, reps, placement, standing.slips(), care.end());
        CarePermit permit = CareReview.of(known, trained, care);
        SessionPlan plan =
            Planner.plan(
                standing,
                forecast,
                PlanQuestions.AVAILABLE,
                Limits.of(
                    PlanQuestions.REPS, permit, PlanQuestions.SIDES, day.temperature() != null));
        plans.add(plan);
        String question = " of dog " + dog + " at " + at + " " + day;
        answers.put("care" + question, permit.planned(ahead(plan, day)));
        answers.put("plan" + question, plan);
        for (int i = 0; i < plan.blocks().size(); i++) {
          answers.put(
              "reward of block " + i + question, rewarded(plan.blocks().get(i), steps, stages));
        }
      }
    }
    return plans.getFirst();
  }

  private static RewardedDrill rewarded(
      PlanBlock block, RewardSteps steps, List<StageRewards> stages) {
    DrillOfStage drill = block.drill();
    int ofStage =
        stages.stream()
            .filter(each -> each.stage().id().equals(drill.stage()))
            .mapToInt(StageRewards::nextStep)
            .findFirst()
            .orElseThrow();
    return new RewardedDrill(drill, ofStage, steps.of(drill));
  }

  private static SessionAhead ahead(SessionPlan plan, Conditions day) {
    boolean turned =
        plan.blocks().stream()
            .anyMatch(block -> block.drill().drill().rung().side() != EntrySide.BOTH);
    return new SessionAhead(plan.poles(), turned, day.temperature() != null);
  }

  private CareQuestion care(Conditions day, Instant at) {
    Map<String, Object> said = registry.club().map(ClubRecord::careLimits).orElse(Map.of());
    ZoneId zone =
        registry.club().<ZoneId>map(club -> ZoneId.of(club.timeZone())).orElse(ZoneOffset.UTC);
    return new CareQuestion(CareLimits.of(said), day, at.atZone(zone).toLocalDate(), zone);
  }

  private void askOfPlan(String plan) {
    Optional<Fact<PlanIssued>> issued = registry.plan(plan);
    answers.put("plan " + plan, issued);
    answers.put("outcome of plan " + plan, issued.map(this::outcome));
  }

  private PlanOutcome outcome(Fact<PlanIssued> issued) {
    return PlanOutcome.of(
        PlanQuestions.PLANNED, placement.ofDog(issued.event().dog()), issued.time());
  }

  private void askOfClass(String group) {
    registry
        .group(group)
        .ifPresent(
            known -> {
              Map<String, SessionPlan> plans = new LinkedHashMap<>();
              for (String dog : known.members().keySet()) {
                SessionPlan plan = lenient.get(dog);
                if (plan != null) {
                  plans.put(dog, plan);
                }
              }
              answers.put("running order of class " + group, order(plans));
            });
  }

  private static RunningOrder order(Map<String, SessionPlan> plans) {
    List<Wanted> wanted = new ArrayList<>();
    plans.forEach(
        (dog, plan) -> {
          Map<Setup, Integer> reps = new LinkedHashMap<>();
          plan.blocks().forEach(block -> reps.merge(laidFor(block), block.reps(), Integer::sum));
          reps.forEach(
              (setup, count) -> wanted.add(new Wanted(dog, setup, Math.ceilDiv(count, 3))));
        });
    return RunningOrders.of(
        new RunningQuestion(
            List.copyOf(plans.keySet()),
            wanted,
            PlanQuestions.POLE_SETS,
            2,
            PlanQuestions.PACE,
            (int) PlanQuestions.CLASS_LASTS.toSeconds(),
            Set.of(),
            Map.of(),
            List.of()),
        new SwungPoles());
  }

  private static Setup laidFor(PlanBlock block) {
    Programme programme = PlanQuestions.PROGRAMME;
    return AsItStands.of(
        programme
            .stage(block.drill().stage())
            .orElseThrow()
            .ground()
            .laidFor(block.drill().drill()));
  }
}
