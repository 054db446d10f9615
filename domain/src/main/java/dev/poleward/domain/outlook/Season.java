package dev.poleward.domain.outlook;

import dev.poleward.domain.event.AimEvent.TrialRun;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.mastery.LimitMethod;
import dev.poleward.domain.mastery.MasteryCurve;
import dev.poleward.domain.mastery.MasteryQuestion;
import dev.poleward.domain.mastery.SideMastery;
import dev.poleward.domain.mastery.Success;
import dev.poleward.domain.mastery.Threshold;
import dev.poleward.domain.programme.RungPool;
import dev.poleward.domain.programme.Stage;
import dev.poleward.domain.record.DaySpan;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.PlacedRep;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * A dog's year in review, or any other span of days.
 *
 * @param total of all months
 * @param months with anything in them, ascending
 * @param stages that were done within it, in that order
 * @param movedOn rungs that were moved on from within it, in that order
 * @param before the curve as it was before the first day
 * @param after the curve as it was after the last
 * @param longestBreak between two days of training within it; null with fewer than two
 */
public record Season(
    DaySpan span,
    Amount total,
    List<Month> months,
    List<StageDone> stages,
    List<RungDone> movedOn,
    MasteryCurve before,
    MasteryCurve after,
    @Nullable Break longestBreak) {

  private static final MasteryQuestion QUESTION =
      new MasteryQuestion(
          null,
          MasteryQuestion.DEFAULT_LEVEL,
          MasteryQuestion.DEFAULT_HALF_LIFE_DAYS,
          LimitMethod.PROFILE,
          Success.ENTRY,
          null,
          null,
          null,
          null);

  /** Keeps the lists from changing. */
  public Season {
    months = List.copyOf(months);
    stages = List.copyOf(stages);
    movedOn = List.copyOf(movedOn);
  }

  /**
   * How much there was.
   *
   * @param sessions in which the dog ran
   * @param days on which it ran
   * @param reps without void ones
   * @param clean how many of them had no fault
   * @param gaps between poles that were run, void reps included: the legs do not ask whose fault
   * @param trials runs in competition without void ones
   * @param cleanTrials how many of them had no fault
   */
  public record Amount(
      int sessions, int days, int reps, int clean, int gaps, int trials, int cleanTrials) {}

  /** One month of it, as far as it lies within. */
  public record Month(YearMonth month, Amount amount) {}

  /** A stage that was done. */
  public record StageDone(Stage stage, LocalDate day) {}

  /** A rung that was moved on from. */
  public record RungDone(Stage stage, RungPool pool, LocalDate day) {}

  /** The threshold of one side before the first day and after the last. */
  public record SideChange(EntrySide side, Threshold before, Threshold after) {}

  /** Days without training between two days with it. */
  public record Break(LocalDate after, LocalDate until) {

    /** Days in between. */
    public int days() {
      return (int) ChronoUnit.DAYS.between(after, until) - 1;
    }
  }

  /**
   * A dog's season.
   *
   * @param reps of the dog, ascending by (time, id)
   * @param trials of the dog, ascending by (time, id)
   * @param standing where the dog stands in the programme of that time
   */
  public static Season of(
      List<PlacedRep> reps, List<Fact<TrialRun>> trials, DogStanding standing, DaySpan span) {
    List<PlacedRep> run = reps.stream().filter(rep -> span.has(rep.moment().time())).toList();
    List<Fact<TrialRun>> tried = trials.stream().filter(t -> span.has(t.time())).toList();
    Milestones milestones = Milestones.of(standing, span);
    return new Season(
        span,
        amount(run, tried, span),
        months(run, tried, span),
        milestones.stages(),
        milestones.rungs(),
        curve(reps, span.begin()),
        curve(reps, span.end()),
        longestBreak(run, span));
  }

  private static Amount amount(List<PlacedRep> run, List<Fact<TrialRun>> tried, DaySpan span) {
    Set<String> sessions = new HashSet<>();
    Set<LocalDate> days = new HashSet<>();
    int reps = 0;
    int clean = 0;
    int gaps = 0;
    for (PlacedRep rep : run) {
      sessions.add(rep.session());
      days.add(span.day(rep.moment().time()));
      reps += rep.outcome() == Outcome.VOID ? 0 : 1;
      clean += rep.outcome() == Outcome.CLEAN ? 1 : 0;
      gaps += rep.setup() == null ? 0 : rep.setup().poles() - 1;
    }
    int trials = 0;
    int cleanTrials = 0;
    for (Fact<TrialRun> trial : tried) {
      trials += trial.event().outcome() == Outcome.VOID ? 0 : 1;
      cleanTrials += trial.event().outcome() == Outcome.CLEAN ? 1 : 0;
    }
    return new Amount(sessions.size(), days.size(), reps, clean, gaps, trials, cleanTrials);
  }

  private static List<Month> months(List<PlacedRep> run, List<Fact<TrialRun>> tried, DaySpan span) {
    TreeMap<YearMonth, List<PlacedRep>> reps = new TreeMap<>();
    TreeMap<YearMonth, List<Fact<TrialRun>>> trials = new TreeMap<>();
    for (PlacedRep rep : run) {
      YearMonth month = YearMonth.from(span.day(rep.moment().time()));
      reps.computeIfAbsent(month, _ -> new ArrayList<>()).add(rep);
    }
    for (Fact<TrialRun> trial : tried) {
      YearMonth month = YearMonth.from(span.day(trial.time()));
      trials.computeIfAbsent(month, _ -> new ArrayList<>()).add(trial);
    }
    Set<YearMonth> all = new TreeSet<>(reps.keySet());
    all.addAll(trials.keySet());
    return all.stream()
        .map(
            month ->
                new Month(
                    month,
                    amount(
                        reps.getOrDefault(month, List.of()),
                        trials.getOrDefault(month, List.of()),
                        span)))
        .toList();
  }

  /** {@link EntrySide#POLE}, then {@link EntrySide#GAP}. */
  public List<SideChange> sides() {
    List<SideChange> sides = new ArrayList<>();
    for (int i = 0; i < before.sides().size(); i++) {
      SideMastery was = before.sides().get(i);
      sides.add(new SideChange(was.side(), was.threshold(), after.sides().get(i).threshold()));
    }
    return sides;
  }

  private static MasteryCurve curve(List<PlacedRep> reps, Instant until) {
    List<PlacedRep> earlier =
        reps.stream().filter(rep -> rep.moment().time().isBefore(until)).toList();
    return MasteryCurve.of(earlier, QUESTION, until);
  }

  private static @Nullable Break longestBreak(List<PlacedRep> run, DaySpan span) {
    Break longest = null;
    LocalDate last = null;
    for (PlacedRep rep : run) {
      LocalDate day = span.day(rep.moment().time());
      if (last != null && day.isAfter(last)) {
        Break each = new Break(last, day);
        longest = longest == null || each.days() > longest.days() ? each : longest;
      }
      last = day;
    }
    return longest;
  }
}
