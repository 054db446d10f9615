package dev.poleward.service.http;

import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.Help;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.mastery.LimitMethod;
import dev.poleward.domain.mastery.MasteryQuestion;
import dev.poleward.domain.mastery.Success;
import dev.poleward.domain.record.View;
import dev.poleward.service.render.MasteryPictures;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What is asked of angle mastery.
 *
 * @param width of a picture, in pixels of CSS
 */
record MasteryParameters(
    View view, MasteryQuestion question, MasteryPictures.Kind picture, int width) {

  private static final int POLES_MIN = 2;
  private static final int POLES_MAX = 24;
  private static final double LEVEL_MIN = 0.01;
  private static final double LEVEL_MAX = 0.99;
  private static final double HALF_LIFE_DAYS_MIN = 0.1;
  private static final double HALF_LIFE_DAYS_MAX = 36_500;

  private static final Set<String> KNOWN =
      Set.of(
          "asOf",
          "knownAt",
          "poles",
          "level",
          "halfLifeDays",
          "interval",
          "of",
          "manoeuvre",
          "dogSide",
          "leadIn",
          "help",
          "picture",
          "width");

  /** What came of reading them. */
  sealed interface Read {
    /** All is well. */
    record Understood(MasteryParameters parameters) implements Read {}

    /** Something is wrong. */
    record Faulty(Problem problem) implements Read {}
  }

  static Read of(Call call) {
    Parameters parameters = new Parameters(call, KNOWN);
    View view = parameters.view();
    MasteryQuestion question =
        new MasteryQuestion(
            poles(parameters),
            or(parameters.number("level", LEVEL_MIN, LEVEL_MAX), MasteryQuestion.DEFAULT_LEVEL),
            halfLifeDays(parameters),
            or(parameters.oneOf("interval", LimitMethod.class), LimitMethod.PROFILE),
            or(parameters.oneOf("of", Success.class), Success.ENTRY),
            parameters.oneOf("manoeuvre", Manoeuvre.class),
            parameters.oneOf("dogSide", DogSide.class),
            parameters.oneOf("leadIn", LeadIn.class),
            parameters.oneOf("help", Help.class));
    MasteryPictures.Kind picture =
        or(parameters.oneOf("picture", MasteryPictures.Kind.class), MasteryPictures.Kind.CURVE);
    int width = Pictures.width(parameters);
    Optional<Problem> problem = parameters.problem();
    return problem.isPresent()
        ? new Read.Faulty(problem.get())
        : new Read.Understood(new MasteryParameters(view, question, picture, width));
  }

  private static @Nullable Integer poles(Parameters parameters) {
    int poles = (int) parameters.whole("poles", POLES_MIN, POLES_MAX, 0);
    return poles == 0 ? null : poles;
  }

  private static @Nullable Double halfLifeDays(Parameters parameters) {
    return parameters.says("halfLifeDays", "none")
        ? null
        : or(
            parameters.number("halfLifeDays", HALF_LIFE_DAYS_MIN, HALF_LIFE_DAYS_MAX, ", or none"),
            MasteryQuestion.DEFAULT_HALF_LIFE_DAYS);
  }

  private static <T> T or(@Nullable T given, T otherwise) {
    return Objects.requireNonNullElse(given, otherwise);
  }
}
