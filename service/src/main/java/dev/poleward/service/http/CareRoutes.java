package dev.poleward.service.http;

import dev.poleward.domain.care.CareQuestion;
import dev.poleward.domain.care.Conditions;
import java.util.Set;

/** What a dog may be asked for. Safe for use by many threads. */
final class CareRoutes {

  private static final double CELSIUS_MIN = -40;
  private static final double CELSIUS_MAX = 60;
  private static final double PERCENT_MAX = 100;

  private final DogReads dogs;

  CareRoutes(DogReads dogs) {
    this.dogs = dogs;
  }

  /** {@code GET …/dogs/{dog}/care}. */
  Answer care(Call call) {
    return dogs.read(
        call,
        Set.of("temperature", "humidity", "sky", "footing"),
        (parameters, day) -> {
          Conditions conditions =
              new Conditions(
                  parameters.number("temperature", CELSIUS_MIN, CELSIUS_MAX),
                  parameters.number("humidity", 0, PERCENT_MAX),
                  parameters.oneOf("sky", Conditions.Sky.class),
                  parameters.oneOf("footing", Conditions.Footing.class));
          return dog -> {
            CareQuestion question = Care.question(dog.registry(), conditions, day);
            return Answer.json(
                200, CareShape.of(dog.asked(), day, question.limits(), Care.review(dog, question)));
          };
        });
  }
}
