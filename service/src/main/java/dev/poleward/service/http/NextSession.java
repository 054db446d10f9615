package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.care.CarePermit;
import dev.poleward.domain.care.CareReview;
import dev.poleward.domain.care.SessionAhead;
import dev.poleward.domain.care.Trained;
import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.ExpectedRetention;
import dev.poleward.domain.judgement.StandingHistory;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.pace.ClubTimings;
import dev.poleward.domain.planning.CleanForecast;
import dev.poleward.domain.planning.Limits;
import dev.poleward.domain.planning.Planner;
import dev.poleward.domain.planning.RewardSteps;
import dev.poleward.domain.planning.SessionPlan;
import dev.poleward.domain.programme.ProgrammesFollowed;
import dev.poleward.domain.record.DogRecord;
import dev.poleward.domain.record.PlacedRep;
import dev.poleward.domain.record.Registry;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a dog does next, with all that it was made of.
 *
 * @param permit with what is to be minded in this session
 * @param plan without drills where the dog may not train
 * @param rewards by which its drills are rewarded
 * @param text why it has less than was asked for; empty where it has all
 */
record NextSession(
    DogStanding standing,
    CarePermit permit,
    SessionPlan plan,
    RewardSteps rewards,
    Optional<String> text) {

  /** As it is recorded of a plan, and shown. */
  ObjectNode document(String plan, String dog, ObjectNode asked) {
    return PlanShape.document(plan, dog, asked, standing, this.plan, text, rewards, permit);
  }

  /**
   * Planned from the record.
   *
   * @param timings as care looks at them at that time
   * @param retention how the dog is expected to forget
   * @param asOf what happened later was left out; null where nothing was
   * @param time of the session
   */
  static NextSession of(
      String dog,
      DogRecord known,
      Registry registry,
      ClubTimings timings,
      List<PlacedRep> reps,
      ExpectedRetention retention,
      @Nullable Instant asOf,
      PlanAsked asked,
      Instant time) {
    Meanwhile<CleanForecast> forecast = Meanwhile.of(() -> CleanForecast.of(reps, time));
    StandingHistory history = StandingHistory.of(reps, ProgrammesFollowed.of(dog, registry), asOf);
    DogStanding standing = history.reading().standing(time, retention.of(dog, time));
    CarePermit permit =
        CareReview.of(
            known,
            Trained.of(dog, reps, timings, standing.slips()),
            Care.question(registry, asked.conditions(), time));
    Limits limits = Limits.of(asked.reps(), permit, asked.sides(), asked.pressure());
    SessionPlan plan =
        permit.mayTrain()
            ? Planner.plan(standing, forecast.get(), asked.available(), limits)
            : new SessionPlan(List.of());
    return new NextSession(
        standing,
        permit.planned(ahead(plan, standing, asked)),
        plan,
        RewardSteps.of(history.reading(), reps, forecast.get()),
        new PlanWords(standing).ofWhole(plan, limits, permit.mayTrain()));
  }

  private static SessionAhead ahead(SessionPlan plan, DogStanding standing, PlanAsked asked) {
    return new SessionAhead(
        plan.poles(),
        plan.blocks().stream()
            .anyMatch(block -> block.drill().drill().rung().side() != EntrySide.BOTH),
        !plan.blocks().isEmpty() && (asked.pressure() || standing.mayCrowd()));
  }
}
