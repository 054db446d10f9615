package dev.poleward.service.render;

import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.Help;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.mastery.AnglePoint;
import dev.poleward.domain.mastery.LimitMethod;
import dev.poleward.domain.mastery.MasteryQuestion;
import dev.poleward.domain.mastery.SideMastery;
import dev.poleward.domain.mastery.Success;
import dev.poleward.domain.mastery.Threshold;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What pictures of angle mastery say in words: what they are of, thresholds, and all of it. */
final class MasteryWords {

  /** Angles of a side that are told one by one to whoever does not see the picture. */
  private static final int ANGLES_TOLD_MAX = 24;

  /** Keeps a line from ending here. */
  private static final char GLUE = '\u00A0';

  private final DogCurve of;
  private final MasteryQuestion question;

  MasteryWords(DogCurve of) {
    this.of = of;
    this.question = of.curve().question();
  }

  /** The title for whoever does not see the picture. */
  String title() {
    return of.callName() + ": " + what() + " by entry angle";
  }

  /** What is counted, of which reps. */
  String about() {
    List<String> filters = new ArrayList<>();
    filters.add(question.poles() == null ? "any number of poles" : question.poles() + " poles");
    if (question.leadIn() != null) {
      filters.add(leadIn(question.leadIn()));
    }
    if (question.manoeuvre() != null) {
      filters.add(manoeuvre(question.manoeuvre()));
    }
    if (question.dogSide() != null) {
      filters.add(dogSide(question.dogSide()));
    }
    filters.add(help(question.help()));
    String all = String.join(", ", filters);
    return capital(what()) + ": " + all + ".";
  }

  /** How old reps count. */
  String aged() {
    return question.halfLifeDays() == null
        ? "All reps count alike. Up to " + of.agedTo() + "."
        : "A rep counts half after "
            + number(question.halfLifeDays())
            + (question.halfLifeDays() == 1 ? " day" : " days")
            + ". Aged to "
            + of.agedTo()
            + ".";
  }

  private String what() {
    return switch (question.of()) {
      case ENTRY -> "entries made";
      case CLEAN -> "clean reps";
    };
  }

  /** What a success is called. */
  private String made() {
    return made(question.of());
  }

  private static String made(Success of) {
    return switch (of) {
      case ENTRY -> "made";
      case CLEAN -> "clean";
    };
  }

  /** The level, 0 to 1. */
  double levelShare() {
    return question.level();
  }

  /** The level as people say it: {@code 80%}. */
  String level() {
    return percent(question.level());
  }

  /** An entry side in words. */
  static String name(EntrySide side) {
    return switch (side) {
      case POLE -> "Pole side";
      case GAP -> "Gap side";
      case BOTH -> "Straight on";
    };
  }

  /** Where the dog comes from on an entry side. */
  static String approach(EntrySide side) {
    return switch (side) {
      case POLE -> "From 12:30 to 5:30. The dog meets pole 1 first.";
      case GAP -> "From 11:30 to 6:30. The dog meets the gap first.";
      case BOTH -> "From 12:00.";
    };
  }

  /** How many reps a side has. */
  String reps(SideMastery side) {
    if (side.reps() == 0) {
      return "No reps.";
    }
    String counted = side.made() + " of " + Counted.of(side.reps(), "rep") + " ";
    return question.halfLifeDays() == null
        ? counted + made() + "."
        : counted + made() + " (weight" + GLUE + number(side.effectiveReps()) + ").";
  }

  /** The threshold, or why there is none, in a few words. */
  String threshold(SideMastery side) {
    return switch (side.threshold()) {
      case Threshold.Estimated at ->
          level()
              + " "
              + made()
              + " at "
              + degrees(at.degrees())
              + limits(at.lower(), at.upper(), side.points().getLast().angle().size());
      case Threshold.BeyondTried beyond ->
          "The curve is above "
              + level()
              + " up to "
              + degrees(beyond.greatestTried())
              + ", the greatest angle tried"
              + limits(beyond.lower(), null, beyond.greatestTried());
      case Threshold.BelowTried below ->
          "The curve is below "
              + level()
              + " from "
              + degrees(below.leastTried())
              + " on, the least angle tried"
              + limits(null, below.upper(), side.points().getLast().angle().size());
      case Threshold.NotEnoughReps _ ->
          side.reps() == 0
              ? "Not tried yet"
              : "Not enough reps yet: it takes 5 recent ones, at two angles";
      case Threshold.NoFall _ -> "No threshold: the share does not fall with the angle";
    };
  }

  /** Beyond the greatest angle tried no number is told: nothing was seen there. */
  private static String limits(@Nullable Double lower, @Nullable Double upper, double tried) {
    if (upper != null && upper > tried) {
      return lower == null
          ? ""
          : " (" + degrees(lower) + GLUE + "to" + GLUE + "beyond" + GLUE + degrees(tried) + ")";
    }
    if (lower != null && upper != null) {
      return " (" + degrees(lower) + GLUE + "to" + GLUE + degrees(upper) + ")";
    }
    if (lower != null) {
      return " (at" + GLUE + "least" + GLUE + degrees(lower) + ")";
    }
    return upper == null ? "" : " (at" + GLUE + "most" + GLUE + degrees(upper) + ")";
  }

  /** What a mark's height or a bar's length is. */
  String shareSeen() {
    return question.halfLifeDays() == null ? "share seen" : "share seen, recent reps count more";
  }

  /** A warning where the two shapes of one side disagree. */
  static final String DISAGREE =
      "Curve and steps disagree here: trust the reps more than the curve.";

  /** All of the picture in sentences. */
  String inWords() {
    List<String> sentences = new ArrayList<>();
    sentences.add("Dog " + of.callName() + ".");
    sentences.add(about());
    sentences.add(aged());
    for (SideMastery side : of.curve().sides()) {
      sentences.add(name(side.side()) + ". " + approach(side.side()));
      sentences.add(reps(side));
      sentences.add(threshold(side) + method(side.threshold()) + ".");
      if (side.shapesDisagree()) {
        sentences.add(DISAGREE);
      }
      if (!side.points().isEmpty()) {
        sentences.add(points(side.points()));
      }
    }
    return String.join(" ", sentences).replace(GLUE, ' ');
  }

  private static String method(Threshold threshold) {
    return switch (threshold) {
      case Threshold.Estimated at when at.lower() != null || at.upper() != null ->
          limitsOf(at.limits());
      case Threshold.BeyondTried beyond when beyond.lower() != null -> limitsOf(beyond.limits());
      case Threshold.BelowTried below when below.upper() != null -> limitsOf(below.limits());
      case Threshold.Estimated _,
          Threshold.BeyondTried _,
          Threshold.BelowTried _,
          Threshold.NotEnoughReps _,
          Threshold.NoFall _ ->
          "";
    };
  }

  private static String limitsOf(LimitMethod method) {
    return switch (method) {
      case PROFILE -> ", 95% limits by profile likelihood";
      case FIELLER -> ", 95% limits by Fieller's theorem";
      case DELTA -> ", 95% limits by the delta method";
    };
  }

  private String points(List<AnglePoint> points) {
    String told =
        points.stream().limit(ANGLES_TOLD_MAX).map(this::point).collect(Collectors.joining("; "));
    int more = points.size() - ANGLES_TOLD_MAX;
    return "By angle: " + told + (more > 0 ? "; and " + more + " angles more." : ".");
  }

  private String point(AnglePoint point) {
    String clock = point.angle().clock().map(each -> " (" + each + ")").orElse("");
    return degrees(point.angle().size())
        + clock
        + " "
        + point.made()
        + " of "
        + point.reps()
        + " "
        + made()
        + ", "
        + (question.halfLifeDays() == null ? "" : "weighted ")
        + whole(point.observed().value())
        + "% ("
        + whole(point.observed().lower())
        + "% to "
        + whole(point.observed().upper())
        + "%)";
  }

  private static long whole(double share) {
    return Math.round(100 * share);
  }

  private static String leadIn(LeadIn leadIn) {
    return switch (leadIn) {
      case NONE -> "without a lead-in";
      case JUMP -> "from a jump";
      case TUNNEL -> "from a tunnel";
    };
  }

  private static String manoeuvre(Manoeuvre manoeuvre) {
    return switch (manoeuvre) {
      case ALONGSIDE -> "alongside";
      case REAR_CROSS -> "rear cross";
      case FRONT_CROSS -> "front cross";
      case BLIND_CROSS -> "blind cross";
      case LATERAL_DISTANCE -> "lateral distance";
      case RECALL -> "recall";
      case SEND -> "send";
      case PRESSURE -> "pressure";
    };
  }

  private static String dogSide(DogSide side) {
    return switch (side) {
      case LEFT -> "dog on the left";
      case RIGHT -> "dog on the right";
    };
  }

  private static String help(@Nullable Help help) {
    return switch (help) {
      case null -> "without help";
      case NONE -> "without help";
      case LURE -> "with a lure";
      case GUIDE -> "with a guide";
      case CUE -> "with a cue";
    };
  }

  static String degrees(double degrees) {
    return number(degrees) + "°";
  }

  static String percent(double share) {
    return number(share * 100) + "%";
  }

  /** To a tenth, without what says nothing. */
  static String number(double value) {
    long tenths = Math.round(value * 10);
    return tenths % 10 == 0
        ? Long.toString(tenths / 10)
        : String.format(Locale.ROOT, "%.1f", tenths / 10.0);
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
