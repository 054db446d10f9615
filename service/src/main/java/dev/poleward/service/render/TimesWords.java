package dev.poleward.service.render;

import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.pace.DayPace;
import dev.poleward.domain.pace.PaceOfKind;
import dev.poleward.domain.pace.Rhythm;
import dev.poleward.domain.pace.RunKind;
import dev.poleward.domain.timing.MedianLimits;
import dev.poleward.domain.timing.TheilSen;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What the picture of a dog's times says in words. */
final class TimesWords {

  static final String NO_RUNS = "No clean run without help has a time in these days.";
  static final String NO_GAPS = "No device told the gaps of such a run: there is no rhythm to see.";
  static final String NO_TREND = "All of these runs fell on one day: there is no trend to see.";

  /** So many other kinds are named. */
  private static final int OTHERS_MAX = 4;

  /** So many days are told to whoever does not see them. */
  private static final int DAYS_TOLD_MAX = 60;

  /** Less is told as no change. */
  private static final double SECONDS_A_WEEK_MIN = 0.0005;

  private final DogTimes of;

  TimesWords(DogTimes of) {
    this.of = of;
  }

  String title() {
    return of.dog().callName() + ": how fast and how evenly";
  }

  /** What runs are shown. */
  String about() {
    return of.mostRun()
        .map(
            pace ->
                "How fast and how evenly: "
                    + kind(pace.kind())
                    + ", "
                    + Counted.of(pace.seconds().of(), "clean run")
                    + " on "
                    + Counted.of(pace.days().size(), "day")
                    + ".")
        .orElse("How fast and how evenly.");
  }

  String aged() {
    return "Of " + of.days() + " days up to " + of.dog().agedTo() + "." + others();
  }

  private String others() {
    Optional<PaceOfKind> shown = of.mostRun();
    List<PaceOfKind> others =
        of.pace().kinds().stream().filter(pace -> shown.filter(pace::equals).isEmpty()).toList();
    if (others.isEmpty()) {
      return "";
    }
    String told =
        others.stream()
            .limit(OTHERS_MAX)
            .map(
                pace ->
                    kind(pace.kind())
                        + " "
                        + seconds(pace.seconds().median())
                        + " ("
                        + Counted.of(pace.seconds().of(), "run")
                        + ")")
            .collect(Collectors.joining("; "));
    int more = others.size() - OTHERS_MAX;
    return " Not shown: " + told + (more > 0 ? "; and " + Counted.of(more, "kind") : "") + ".";
  }

  private static String kind(RunKind kind) {
    EntrySide side = kind.entrySide();
    return kind.poles() + " poles, " + (side == null ? "angle not told" : WayWords.name(side));
  }

  /** The shortest time is the fastest run. */
  static String pace(PaceOfKind pace) {
    int gaps = pace.kind().gaps();
    MedianLimits limits = pace.seconds().limits();
    String fast = hundredths(gaps / pace.seconds().median()) + " gaps a second";
    return limits == null
        ? fast
        : fast
            + " (95% limits "
            + hundredths(gaps / limits.upper())
            + " to "
            + hundredths(gaps / limits.lower())
            + ")";
  }

  /** How long a run takes. */
  static String run(PaceOfKind pace) {
    MedianLimits limits = pace.seconds().limits();
    return "A run takes "
        + seconds(pace.seconds().median())
        + (limits == null
            ? ""
            : " (95% limits " + seconds(limits.lower()) + " to " + seconds(limits.upper()) + ")")
        + (pace.seconds().of() == 1
            ? "."
            : "; half of the runs lie within " + seconds(pace.seconds().mad()) + " of it.");
  }

  /** How evenly. */
  static String rhythm(@Nullable Rhythm rhythm) {
    if (rhythm == null) {
      return NO_GAPS;
    }
    List<Rhythm.Gap> slow = rhythm.gaps().stream().filter(Rhythm.Gap::slow).toList();
    return (slow.isEmpty() ? "No gap is surely slower than the others" : slow(slow))
        + ". From gap to gap a run varies by "
        + Math.round(100 * rhythm.spread().median())
        + "%, over "
        + Counted.of(rhythm.spread().of(), "run")
        + ".";
  }

  private static String slow(List<Rhythm.Gap> slow) {
    return "Surely slower than the others: "
        + slow.stream()
            .map(gap -> "gap " + poles(gap) + ", " + hundredths(gap.share().median()) + " times")
            .collect(Collectors.joining("; "));
  }

  /** Between which poles: {@code 1–2}. */
  static String poles(Rhythm.Gap gap) {
    return gap.gap() + "–" + (gap.gap() + 1);
  }

  /** How that changes over the days. */
  static String trend(PaceOfKind pace) {
    TheilSen trend = pace.trend();
    if (trend == null) {
      return NO_TREND;
    }
    Double lower = trend.lower();
    Double upper = trend.upper();
    String change = change(trend.slope());
    if (lower == null || upper == null) {
      return change + "; too few days to say how surely.";
    }
    if (lower > 0 || upper < 0) {
      double one = Math.abs(lower);
      double other = Math.abs(upper);
      return change
          + " (95% limits "
          + thousandths(Math.min(one, other))
          + " to "
          + thousandths(Math.max(one, other))
          + " s).";
    }
    return change
        + ", not surely: 95% limits from "
        + thousandths(-lower)
        + " s faster to "
        + thousandths(upper)
        + " s slower.";
  }

  private static String change(double secondsAWeek) {
    if (Math.abs(secondsAWeek) < SECONDS_A_WEEK_MIN) {
      return "No change from week to week";
    }
    return thousandths(Math.abs(secondsAWeek))
        + (secondsAWeek > 0 ? " s slower a week" : " s faster a week");
  }

  private static String thousandths(double seconds) {
    // Half a thousandth below nothing is nothing.
    return String.format(Locale.ROOT, "%.3f", seconds + 0.0);
  }

  /** All of the picture in sentences. */
  String inWords() {
    List<String> sentences = new ArrayList<>();
    sentences.add("Dog " + of.dog().callName() + ".");
    sentences.add(about());
    sentences.add(aged());
    of.mostRun().ifPresentOrElse(pace -> add(sentences, pace), () -> sentences.add(NO_RUNS));
    sentences.add(of.slowing());
    return String.join(" ", sentences);
  }

  private static void add(List<String> sentences, PaceOfKind pace) {
    sentences.add(pace(pace) + ".");
    sentences.add(run(pace));
    sentences.add(rhythm(pace.rhythm()));
    if (pace.rhythm() != null) {
      sentences.add(
          "Gaps: "
              + pace.rhythm().gaps().stream().map(TimesWords::gap).collect(Collectors.joining("; "))
              + ".");
    }
    sentences.add(trend(pace));
    List<DayPace> days = pace.days();
    int omitted = Math.max(0, days.size() - DAYS_TOLD_MAX);
    sentences.add(
        (omitted > 0 ? "The last " + DAYS_TOLD_MAX + " days: " : "Days: ")
            + days.subList(omitted, days.size()).stream()
                .map(day -> day.day() + " " + seconds(day.seconds()))
                .collect(Collectors.joining("; "))
            + ".");
  }

  private static String gap(Rhythm.Gap gap) {
    return poles(gap)
        + " "
        + seconds(gap.seconds().median())
        + ", half within "
        + seconds(gap.seconds().mad())
        + (gap.slow() ? ", slow" : "");
  }

  private static String seconds(double seconds) {
    return hundredths(seconds) + " s";
  }

  private static String hundredths(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }
}
