package dev.poleward.service.http;

import dev.poleward.domain.judgement.FaultReview;
import dev.poleward.domain.judgement.StageRewards;
import dev.poleward.domain.judgement.StandingHistory;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.programme.ProgrammeInForce;
import dev.poleward.service.http.DogReads.Seen;
import dev.poleward.service.render.DogRewards;
import dev.poleward.service.render.FadePicture;
import dev.poleward.service.render.Studio;
import java.time.Instant;
import java.util.List;
import java.util.Set;

/** What a dog does as a habit, and what it is paid for. Safe for use by many threads. */
final class HabitRoutes {

  /** What the fading of rewards comes as, the usual form first. */
  static final List<String> FADE_FORMS = List.of(Answer.JSON, Pictures.SVG, Pictures.PNG);

  private static final int DAYS_MAX = 3_650;
  private static final int DAYS_USUAL = 90;

  private final DogReads dogs;
  private final Pictures pictures;

  HabitRoutes(DogReads dogs, Studio studio) {
    this.dogs = dogs;
    this.pictures = new Pictures(studio);
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
    return dogs.read(
        call,
        Set.of("width"),
        (parameters, day) -> {
          int width = Pictures.width(parameters);
          return dog -> rewardFade(call, dog, day, width);
        });
  }

  private Answer rewardFade(Call call, Seen dog, LocalDay day, int width) {
    StandingHistory history = dog.history(dog.view().asOf());
    boolean readable = !(history.inForce() instanceof ProgrammeInForce.Unreadable);
    // Stages that nothing was told of are left out.
    List<StageRewards> stages =
        readable
            ? StageRewards.of(history.reading(), dog.reps()).stream()
                .filter(stage -> !stage.rewarded().isEmpty())
                .toList()
            : List.of();
    Programme programme = history.reading().programme();
    return switch (call.form()) {
      case Pictures.SVG, Pictures.PNG ->
          pictures.painted(
              call,
              FadePicture.of(
                  new DogRewards(dog.inPicture(), programme, day.zone(), stages), width));
      default -> Answer.json(200, RewardFadeShape.of(dog.asked(), day, programme, stages));
    };
  }
}
