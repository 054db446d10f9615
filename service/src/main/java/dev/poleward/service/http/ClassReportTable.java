package dev.poleward.service.http;

import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.judgement.StageRewards;
import dev.poleward.domain.judgement.StageStanding;
import dev.poleward.domain.mastery.Estimate;
import dev.poleward.domain.mastery.MasteryCurve;
import dev.poleward.domain.mastery.SideComparison;
import dev.poleward.domain.outlook.Season;
import dev.poleward.domain.report.AtHome;
import dev.poleward.domain.report.ClassReport;
import dev.poleward.domain.report.DogPage;
import dev.poleward.domain.report.Presence;
import dev.poleward.domain.report.StandingAt;
import dev.poleward.service.codec.Writing;
import dev.poleward.service.http.MasteryShape.ThresholdShape;
import dev.poleward.service.render.CsvTable;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The report of a class as a table (RFC 4180): a row for each dog. */
final class ClassReportTable {

  private static final List<Outcome> FAULTS =
      List.of(
          Outcome.MISSED_ENTRY,
          Outcome.SKIPPED_POLE,
          Outcome.POPPED_OUT,
          Outcome.NO_ATTEMPT,
          Outcome.BACK_WEAVE);

  private static final Map<String, Function<DogPage, @Nullable Object>> COLUMNS = columns();

  private static final CsvTable TABLE =
      new CsvTable(
          Stream.concat(Stream.of("class", "from", "to"), COLUMNS.keySet().stream()).toList());

  private ClassReportTable() {}

  static String of(ClassReport report) {
    return TABLE.of(
        report.dogs().stream()
            .map(page -> (CsvTable.Row) column -> cell(report, page, column))
            .toList());
  }

  private static @Nullable Object cell(ClassReport report, DogPage page, String column) {
    return switch (column) {
      case "class" -> report.formed().standing().event().group();
      case "from" -> report.span().from();
      case "to" -> report.span().to();
      default -> Objects.requireNonNull(COLUMNS.get(column), column).apply(page);
    };
  }

  private static Map<String, Function<DogPage, @Nullable Object>> columns() {
    Map<String, Function<DogPage, @Nullable Object>> all = new LinkedHashMap<>();
    all.put("dog", DogPage::dog);
    all.put("callName", page -> page.known().callName());
    all.put("guest", DogPage::isGuest);
    all.put("present", page -> times(page, Presence.PRESENT));
    all.put("absent", page -> times(page, Presence.ABSENT));
    all.put("unknown", page -> times(page, Presence.UNKNOWN));
    addReps(all);
    addStanding(all);
    for (String side : List.of("pole", "gap")) {
      addThreshold(all, side, "Before", Season::before);
      addThreshold(all, side, "After", Season::after);
    }
    all.put("lagging", page -> lagging(page.sides()));
    addLoad(all);
    all.put("rewardStep", page -> page.rewards().map(StageRewards::step).orElse(null));
    all.put(
        "rewardAdvice",
        page -> page.rewards().map(r -> Writing.wireName(r.fade().advice())).orElse(null));
    all.put("trials", page -> page.season().total().trials());
    all.put("cleanTrials", page -> page.season().total().cleanTrials());
    all.put("atHome", page -> atHome(page.atHome()));
    all.put(
        "notKnown",
        page ->
            page.notKnown().stream()
                .map(each -> Writing.wireName(each.matter()))
                .collect(Collectors.joining(" ")));
    return all;
  }

  private static void addReps(Map<String, Function<DogPage, @Nullable Object>> all) {
    all.put("sessions", page -> page.season().total().sessions());
    all.put("days", page -> page.season().total().days());
    all.put("reps", page -> page.reps().reps());
    all.put("clean", page -> page.reps().clean());
    all.put("helped", page -> page.reps().helped());
    all.put("voided", page -> page.reps().voided());
    all.put("cleanShare", page -> of(page.reps().cleanShare(), Estimate::value));
    all.put("cleanLower", page -> of(page.reps().cleanShare(), Estimate::lower));
    all.put("cleanUpper", page -> of(page.reps().cleanShare(), Estimate::upper));
    for (Outcome fault : FAULTS) {
      all.put(columnOf(fault), page -> page.faults().all().faults().getOrDefault(fault, 0));
    }
  }

  /** {@code missedEntry}. */
  private static String columnOf(Outcome fault) {
    StringBuilder name = new StringBuilder();
    for (String word : Writing.wireName(fault).split("-", -1)) {
      name.append(
          name.isEmpty() ? word : Character.toUpperCase(word.charAt(0)) + word.substring(1));
    }
    return name.toString();
  }

  private static void addStanding(Map<String, Function<DogPage, @Nullable Object>> all) {
    all.put("programmeBegin", page -> page.begin().standing().programme().id());
    all.put("stageBegin", page -> stage(page.begin()));
    all.put("programmeEnd", page -> page.end().standing().programme().id());
    all.put("stageEnd", page -> stage(page.end()));
    all.put("finished", page -> page.end().standing().finished());
    all.put("stagesDone", page -> page.season().stages().size());
    all.put("rungsMovedOn", page -> page.season().movedOn().size());
    all.put("rungsStuck", page -> page.stuck().size());
    all.put("rungsSlipping", page -> page.slipping().size());
    all.put("rungsDue", page -> page.due().size());
  }

  private static void addThreshold(
      Map<String, Function<DogPage, @Nullable Object>> all,
      String side,
      String when,
      Function<Season, MasteryCurve> curve) {
    Function<DogPage, ThresholdShape> threshold =
        page ->
            curve.apply(page.season()).sides().stream()
                .filter(each -> Writing.wireName(each.side()).equals(side))
                .map(each -> ThresholdShape.of(each.threshold()))
                .findFirst()
                .orElseThrow();
    all.put(side + "Status" + when, page -> threshold.apply(page).status());
    all.put(side + "Angle" + when, page -> threshold.apply(page).angle());
    all.put(side + "Lower" + when, page -> threshold.apply(page).lower());
    all.put(side + "Upper" + when, page -> threshold.apply(page).upper());
  }

  private static void addLoad(Map<String, Function<DogPage, @Nullable Object>> all) {
    all.put("gaps", page -> page.season().total().gaps());
    all.put("mostGaps", page -> page.load().mostGaps().map(s -> s.load().gaps()).orElse(null));
    all.put(
        "gapsLimit",
        page -> page.load().mostGaps().map(s -> s.limits().gapsPerSession()).orElse(null));
    all.put("mostSharpBends", page -> page.load().mostSharpBends());
    all.put(
        "mostGapsInWeek",
        page -> page.load().heaviestWeek().map(w -> w.load().gaps()).orElse(null));
    all.put(
        "gapsLimitOfWeek",
        page -> page.load().heaviestWeek().map(w -> w.limits().gapsPerWeek()).orElse(null));
    all.put("sessionsOver", page -> page.load().sessionsOver());
    all.put("weeksOver", page -> page.load().weeksOver());
    all.put("mayTrain", page -> page.care().mayTrain());
    all.put("angleWork", page -> page.care().angleWork());
  }

  private static long times(DogPage page, Presence presence) {
    return page.attended().stream()
        .filter(each -> each.attendance().presence() == presence)
        .count();
  }

  private static @Nullable String stage(StandingAt at) {
    return at.standing().current().map(StageStanding::stage).map(s -> s.id()).orElse(null);
  }

  private static @Nullable Double of(@Nullable Estimate share, Function<Estimate, Double> which) {
    return share == null ? null : which.apply(share);
  }

  private static String lagging(SideComparison sides) {
    return switch (sides) {
      case SideComparison.Lags it -> Writing.wireName(it.side());
      case SideComparison.Alike _ -> "alike";
      case SideComparison.CannotTell _ -> "cannot-tell";
    };
  }

  private static String atHome(AtHome atHome) {
    return switch (atHome) {
      case AtHome.Rest _ -> "rest";
      case AtHome.Homeworks _ -> "homework";
      case AtHome.Proposed _ -> "proposed";
    };
  }
}
