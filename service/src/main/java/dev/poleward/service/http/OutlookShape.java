package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.outlook.Normal;
import dev.poleward.domain.outlook.Outlook;
import dev.poleward.domain.outlook.Outlook.Reason;
import dev.poleward.domain.outlook.OutlookQuestion;
import dev.poleward.domain.outlook.OwnRhythm;
import dev.poleward.domain.outlook.Quantiles;
import dev.poleward.domain.outlook.Reaching;
import dev.poleward.domain.outlook.RhythmAhead;
import dev.poleward.domain.outlook.Trait;
import dev.poleward.service.codec.Writing;
import dev.poleward.service.render.Counted;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;

/** An outlook as the contract shows it. Immutable; safe for use by many threads. */
final class OutlookShape {

  /** Half the width of 95% limits, in deviations. */
  private static final double LIMITS = 1.959963984540054;

  /** Part of what is held below which a dog's own reps say little. */
  private static final double LITTLE = 0.5;

  private static final List<String> ASSUMED =
      List.of(
          "A plain trainer teaches: the stages in their order, rung by rung, each until its rule is passed.",
          "What is passed stays passed; slips, breaks and care limits are not foreseen.",
          "Sessions are evenly apart, with as many reps each as the rhythm says.");

  ObjectNode of(String dog, OutlookQuestion asked, Outlook outlook, List<ObjectNode> goals) {
    Writing shape = new Writing().put("dog", dog).putPrinted("agedTo", asked.today());
    switch (outlook) {
      case Outlook.CannotTell cannotTell ->
          shape
              .put("status", "cannot-tell")
              .put("reason", cannotTell.reason())
              .putTexts("reasons", List.of(sentence(cannotTell.reason(), asked)));
      case Outlook.Told told -> put(shape, told, asked);
    }
    return shape.putObjects("goals", goals, goal -> goal).done();
  }

  private static void put(Writing shape, Outlook.Told told, OutlookQuestion asked) {
    shape
        .put("status", "told")
        .putTexts("reasons", reasons(told))
        .putTexts("assumed", ASSUMED)
        .put("programme", DrillShape.of(told.programme()))
        .putPrinted("from", told.from())
        .put("horizonDays", asked.terms().horizon().toDays())
        .put("basis", basis(told))
        .put("ownRhythm", own(told.own()))
        .putObjects("rhythms", told.rhythms(), each -> rhythm(each, told.from()));
  }

  /** In whole sentences, as a trainer would say it. */
  static String sentence(Reason reason, OutlookQuestion asked) {
    return switch (reason) {
      case NO_PROGRAMME -> "The programme that is assigned has a document with faults.";
      case RESTING -> "The dog rests until further notice.";
      case TOO_FEW_REPS ->
          "The dog has run fewer than %d reps without help, of which it is known what stood and where it started."
              .formatted(asked.terms().repsMin());
      case TOO_FEW_SESSIONS ->
          "The dog has trained in fewer than %d sessions.".formatted(asked.terms().sessionsMin());
    };
  }

  private static List<String> reasons(Outlook.Told told) {
    List<String> reasons = new ArrayList<>();
    RhythmAhead ahead = told.likeliest();
    String rhythm =
        "%s, %s a week of %s"
            .formatted(
                ahead.isOwn() ? "At its own rhythm" : "At this rhythm",
                sessions(ahead.rhythm().sessionsPerWeek()),
                Counted.of(ahead.rhythm().repsPerSession(), "rep"));
    if (ahead.programme().isReached()) {
      reasons.add("The programme is finished.");
    } else {
      reasons.add(
          "%s. Of ten dogs like this one, %s."
              .formatted(
                  rhythm,
                  OutlookWords.finish(
                      ahead.rhythm(), ahead.horizon(), ahead.programme().quantiles())));
    }
    if (told.own().rhythm().isEmpty()) {
      reasons.add("The dog trained too seldom lately to have a rhythm of its own.");
    }
    if (told.ownShare() < LITTLE) {
      reasons.add(
          "Its own reps say little yet of how quickly it learns: most of that is taken from %s."
              .formatted(
                  told.clubDogs() == 0
                      ? "dogs as they usually are"
                      : "the other dogs of the club"));
    }
    return reasons;
  }

  private static String number(double value) {
    return value == Math.rint(value)
        ? Long.toString((long) value)
        : Double.toString(Math.rint(value * 10) / 10);
  }

  private static String sessions(double aWeek) {
    return aWeek == 1 ? "1 session" : number(aWeek) + " sessions";
  }

  private static ObjectNode basis(Outlook.Told told) {
    Normal quickness = Objects.requireNonNull(told.traits().get(Trait.QUICKNESS));
    double spread = LIMITS * quickness.deviation();
    return new Writing()
        .put("reps", told.reps())
        .put("clubDogs", told.clubDogs())
        .put(
            "quickness",
            new Writing()
                .put("value", Thousandths.of(Trait.QUICKNESS.factorOf(quickness.mean())))
                .put("lower", Thousandths.of(Trait.QUICKNESS.factorOf(quickness.mean() - spread)))
                .put("upper", Thousandths.of(Trait.QUICKNESS.factorOf(quickness.mean() + spread)))
                .done())
        .put("ownShare", Thousandths.of(told.ownShare()))
        .done();
  }

  private static ObjectNode own(OwnRhythm own) {
    return new Writing()
        .put("sessions", own.sessions())
        .put("weeks", Thousandths.of(own.weeks()))
        .put(
            "sessionsPerWeek",
            own.rhythm().map(each -> Thousandths.of(each.sessionsPerWeek())).orElse(null))
        .put("repsPerSession", own.repsPerSession())
        .done();
  }

  /** What a rhythm is. */
  static Writing rhythm(RhythmAhead ahead) {
    return new Writing()
        .put("own", ahead.isOwn())
        .put("sessionsPerWeek", Thousandths.of(ahead.rhythm().sessionsPerWeek()))
        .put("repsPerSession", ahead.rhythm().repsPerSession());
  }

  private static ObjectNode rhythm(RhythmAhead ahead, LocalDate from) {
    return rhythm(ahead)
        .put("runs", ahead.programme().sessions().size())
        .put("horizonDays", ahead.horizon().toDays())
        .putObjects(
            "stages",
            ahead.stages(),
            stage -> put(DrillShape.of(stage.stage()), ahead, stage.reaching(), from))
        .put("programme", put(new Writing(), ahead, ahead.programme(), from))
        .done();
  }

  private static ObjectNode put(
      Writing shape, RhythmAhead ahead, Reaching reaching, LocalDate from) {
    if (reaching.isReached()) {
      return shape.put("state", "done").done();
    }
    Quantiles quantiles = reaching.quantiles();
    return shape
        .put("state", "ahead")
        .put("sessions", each(quantiles, session -> (double) session))
        .put("weeks", each(quantiles, session -> Thousandths.of(ahead.rhythm().weeks(session))))
        .put("days", days(quantiles, ahead, from))
        .put("unfinished", Thousandths.of(reaching.unfinished()))
        .done();
  }

  private static ObjectNode each(Quantiles quantiles, IntFunction<Double> of) {
    return new Writing()
        .put("early", of(quantiles.early(), of))
        .put("middle", of(quantiles.middle(), of))
        .put("late", of(quantiles.late(), of))
        .done();
  }

  private static <T> @Nullable T of(OptionalInt session, IntFunction<T> of) {
    return session.isEmpty() ? null : of.apply(session.getAsInt());
  }

  private static ObjectNode days(Quantiles quantiles, RhythmAhead ahead, LocalDate from) {
    IntFunction<LocalDate> day = session -> ahead.dayOf(session, from);
    return new Writing()
        .putPrinted("early", of(quantiles.early(), day))
        .putPrinted("middle", of(quantiles.middle(), day))
        .putPrinted("late", of(quantiles.late(), day))
        .done();
  }
}
