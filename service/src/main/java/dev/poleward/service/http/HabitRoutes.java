package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.judgement.FaultReview;
import dev.poleward.domain.judgement.StageRewards;
import dev.poleward.domain.judgement.StandingHistory;
import dev.poleward.domain.programme.ProgrammeInForce;
import dev.poleward.domain.programme.ProgrammesFollowed;
import dev.poleward.service.http.DogReads.Seen;
import java.time.Instant;
import java.util.List;
import java.util.Set;

/** What a dog does as a habit, and what it is paid for. Safe for use by many threads. */
final class HabitRoutes {

  private static final int DAYS_MAX = 3_650;
  private static final int DAYS_USUAL = 90;

  private final DogReads dogs;

  HabitRoutes(DogReads dogs) {
    this.dogs = dogs;
  }

  /** {@code GET …/dogs/{dog}/faults}. */
  Answer faults(Call call) {
    return dogs.read(
        call,
        Set.of("days"),
        (parameters, day) -> {
          int days = (int) parameters.whole("days", 1, DAYS_MAX, DAYS_USUAL);
          Instant from = day.date().minusDays(days - 1L).atStartOfDay(day.zone()).toInstant();
          return dog ->
              Answer.json(
                  200,
                  FaultsShape.of(
                      dog.asked(), day, days, FaultReview.of(dog.reps(), from, day.end())));
        });
  }

  /** {@code GET …/dogs/{dog}/reward-fade}. */
  Answer rewardFade(Call call) {
    return dogs.read(call, Set.of(), (_, day) -> dog -> Answer.json(200, rewardFade(dog, day)));
  }

  private static ObjectNode rewardFade(Seen dog, LocalDay day) {
    StandingHistory history =
        StandingHistory.of(
            dog.reps(), ProgrammesFollowed.of(dog.dog(), dog.registry()), dog.view().asOf());
    boolean readable = !(history.inForce() instanceof ProgrammeInForce.Unreadable);
    List<StageRewards> stages =
        readable ? StageRewards.of(history.reading(), dog.reps()) : List.of();
    return RewardFadeShape.of(dog.asked(), day, history.reading().programme(), stages);
  }
}
