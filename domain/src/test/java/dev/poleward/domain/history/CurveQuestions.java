package dev.poleward.domain.history;

import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.Help;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.mastery.LimitMethod;
import dev.poleward.domain.mastery.MasteryQuestion;
import dev.poleward.domain.mastery.Success;
import java.time.Instant;
import java.util.List;

/** What the laws ask of every dog's reps: each method, each filter, aged and not. */
final class CurveQuestions {

  /** In the midst of all that is generated: some reps have an age, some are yet to come. */
  static final Instant AGED_TO = Instant.parse("2026-03-02T17:09:00Z");

  private static final double MINUTES_4 = 4.0 / (24 * 60);

  static final MasteryQuestion OF_ANY_REPS =
      new MasteryQuestion(
          null, 0.8, null, LimitMethod.PROFILE, Success.ENTRY, null, null, null, null);

  static final List<MasteryQuestion> ALL =
      List.of(
          OF_ANY_REPS,
          new MasteryQuestion(
              null,
              0.5,
              MINUTES_4,
              LimitMethod.FIELLER,
              Success.CLEAN,
              Manoeuvre.ALONGSIDE,
              null,
              null,
              null),
          new MasteryQuestion(
              null, 0.6, MINUTES_4, LimitMethod.DELTA, Success.ENTRY, null, null, null, null),
          new MasteryQuestion(
              4,
              0.7,
              null,
              LimitMethod.PROFILE,
              Success.ENTRY,
              null,
              DogSide.LEFT,
              LeadIn.TUNNEL,
              Help.LURE));

  private CurveQuestions() {}
}
