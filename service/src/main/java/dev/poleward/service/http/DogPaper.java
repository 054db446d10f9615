package dev.poleward.service.http;

import dev.poleward.domain.care.CareNote;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.judgement.FaultGroup;
import dev.poleward.domain.judgement.FaultsOfLine;
import dev.poleward.domain.judgement.NextRung;
import dev.poleward.domain.judgement.PoolStanding;
import dev.poleward.domain.judgement.StageStanding;
import dev.poleward.domain.mastery.SideMastery;
import dev.poleward.domain.mastery.Threshold;
import dev.poleward.domain.outlook.Homework;
import dev.poleward.domain.outlook.Season;
import dev.poleward.domain.programme.RungPool;
import dev.poleward.domain.record.DaySpan;
import dev.poleward.domain.report.AtHome;
import dev.poleward.domain.report.DogPage;
import dev.poleward.domain.report.StandingAt;
import dev.poleward.service.codec.Writing;
import dev.poleward.service.page.Block;
import dev.poleward.service.page.Block.Column;
import dev.poleward.service.page.Leaf;
import dev.poleward.service.page.Notices;
import dev.poleward.service.render.Counted;
import dev.poleward.service.render.DogCurve;
import dev.poleward.service.render.FadeAdviceWords;
import dev.poleward.service.render.MasteryPictures;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A dog's page of a class report on paper. */
final class DogPaper {

  private static final int PICTURE_WIDTH = 680;
  private static final int LISTED_MAX = 8;

  private final DogPage page;
  private final DaySpan span;
  private final Set<CareNote> general;
  private final List<Block> blocks = new ArrayList<>();

  private DogPaper(DogPage page, DaySpan span, Set<CareNote> general) {
    this.page = page;
    this.span = span;
    this.general = general;
  }

  /**
   * The page of a dog.
   *
   * @param general notes that the page of the class has for all dogs
   */
  static Leaf of(DogPage page, String group, DaySpan span, Set<CareNote> general) {
    DogPaper paper = new DogPaper(page, span, general);
    paper.write(group);
    return new Leaf(page.known().callName(), paper.blocks);
  }

  private void write(String group) {
    blocks.add(new Block.Aside("%s, %s to %s".formatted(group, span.from(), span.to())));
    blocks.add(new Block.Facts(facts()));
    page.care().notes().stream()
        .filter(note -> !general.contains(note))
        .forEach(note -> blocks.add(Notices.of(note)));
    writeAtHome();
    writeSides();
    writeRungs();
    writeFaults();
    writeTrials();
    bullets("Not known", page.notKnown().stream().map(ReportWords::ofDog).toList());
  }

  private List<Block.Fact> facts() {
    Season.Amount amount = page.season().total();
    List<Block.Fact> facts = new ArrayList<>();
    facts.add(new Block.Fact("Programme", page.end().standing().programme().name()));
    facts.add(new Block.Fact("Stage before", stage(page.begin())));
    facts.add(new Block.Fact("Stage now", stage(page.end())));
    facts.add(
        new Block.Fact(
            "Trained",
            Counted.of(amount.sessions(), "session") + " on " + Counted.of(amount.days(), "day")));
    facts.add(new Block.Fact("Reps", ReportPaper.tally(page.reps())));
    page.load()
        .mostGaps()
        .ifPresent(
            most ->
                facts.add(
                    new Block.Fact(
                        "Most gaps in a session",
                        "%d of %d, on %s"
                            .formatted(
                                most.load().gaps(), most.limits().gapsPerSession(), most.day()))));
    page.load()
        .heaviestWeek()
        .ifPresent(
            most ->
                facts.add(
                    new Block.Fact(
                        "Most gaps in seven days",
                        "%d of %d, up to %s"
                            .formatted(
                                most.load().gaps(), most.limits().gapsPerWeek(), most.last()))));
    page.rewards()
        .ifPresent(
            rewards ->
                facts.add(
                    new Block.Fact(
                        "Rewards",
                        FadeAdviceWords.of(rewards.fade(), page.end().standing().programme()))));
    return facts;
  }

  /** The stage and how far the dog is in it. */
  static String stage(StandingAt at) {
    return at.standing().current().map(DogPaper::stage).orElse("through the programme");
  }

  private static String stage(StageStanding stage) {
    return "%s, %d of %d rungs moved on from"
        .formatted(
            Objects.requireNonNullElse(stage.stage().name(), stage.stage().id()),
            stage.behind(),
            stage.pools().size());
  }

  private void writeAtHome() {
    blocks.add(new Block.Heading("At home"));
    blocks.add(new Block.Paragraph(ReportWords.atHome(page.atHome())));
    switch (page.atHome()) {
      case AtHome.Rest _ -> {}
      case AtHome.Homeworks(List<Homework> open) -> list(open, DogPaper::homework);
      case AtHome.Proposed it ->
          list(
              Stream.concat(it.refresh().stream(), it.next().stream()).toList(),
              (NextRung next) -> place(next.standing().pool()));
    }
  }

  private static String homework(Homework homework) {
    return "Until %s: %s, %d of %s done."
        .formatted(
            homework.set().event().due(),
            Counted.of(homework.drills().size(), "drill"),
            homework.drills().stream().mapToInt(Homework.Done::reps).sum(),
            Counted.of(homework.drills().stream().mapToInt(Homework.Done::wanted).sum(), "rep"));
  }

  private void writeSides() {
    blocks.add(new Block.Heading("Entry sides"));
    List<SideMastery> before = page.season().before().sides();
    List<SideMastery> after = page.season().after().sides();
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < after.size(); i++) {
      rows.add(
          List.of(
              Writing.wireName(after.get(i).side()),
              threshold(before.get(i).threshold()),
              threshold(after.get(i).threshold()),
              String.valueOf(after.get(i).reps())));
    }
    blocks.add(
        new Block.Table(
            "The angle up to which the dog makes 80% of its entries",
            List.of(
                Column.text("Side"),
                Column.text("Before"),
                Column.text("Now"),
                Column.number("Reps")),
            rows));
    blocks.add(new Block.Paragraph(ReportWords.sides(page.sides())));
    if (after.stream().anyMatch(side -> side.reps() > 0)) {
      DogCurve curve =
          new DogCurve(page.dog(), page.known().callName(), span.to(), page.season().after());
      blocks.add(new Block.Figure(MasteryPictures.strip(curve, PICTURE_WIDTH)));
      blocks.add(
          new Block.Aside(
              "Marks: the share of entries made, with its 95% interval. Line and band: what was"
                  + " fitted to them. Diamond and thick bar: the angle at which it falls to 80%,"
                  + " with its 95% limits."));
    }
  }

  private static String threshold(Threshold threshold) {
    return switch (threshold) {
      case Threshold.Estimated at -> degrees(at.degrees()) + limits(at.lower(), at.upper());
      case Threshold.BeyondTried beyond ->
          "beyond " + degrees(beyond.greatestTried()) + ", the largest tried";
      case Threshold.BelowTried below ->
          "below " + degrees(below.leastTried()) + ", the smallest tried";
      case Threshold.NotEnoughReps _ -> "not enough reps yet";
      case Threshold.NoFall _ -> "larger angles are not made less often";
    };
  }

  private static String limits(@Nullable Double lower, @Nullable Double upper) {
    if (lower == null) {
      return upper == null ? "" : " (at most " + degrees(upper) + ")";
    }
    return upper == null
        ? " (at least " + degrees(lower) + ")"
        : " (" + degrees(lower) + " to " + degrees(upper) + ")";
  }

  private static String degrees(double degrees) {
    return String.format(Locale.ROOT, "%.0f°", degrees);
  }

  private void writeRungs() {
    titled(
        "Moved on from",
        page.season().movedOn(),
        done -> place(done.pool()) + ", on " + done.day() + ".");
    titled(
        "Slips",
        page.slipping(),
        pool -> place(pool.pool()) + ", since " + day(pool.slippedSince()) + ".");
    titled("Due for a refresher", page.due(), (PoolStanding pool) -> place(pool.pool()) + ".");
    titled(
        "Stuck on",
        page.stuck(),
        worked ->
            "%s, %s since %s. %s"
                .formatted(
                    place(worked.standing().pool()),
                    Counted.of(worked.reps(), "rep"),
                    worked.since(),
                    VerdictWords.reason(worked.standing())));
  }

  private String day(@Nullable Instant since) {
    return since == null ? "an unknown day" : span.day(since).toString();
  }

  private static String place(RungPool pool) {
    return TrainersWords.setup(pool) + ", " + TrainersWords.entry(pool.rung());
  }

  private void writeFaults() {
    FaultGroup<String> all = page.faults().all();
    if (all.faulty() == 0) {
      return;
    }
    blocks.add(new Block.Heading("Faults"));
    blocks.add(
        new Block.Paragraph(
            "%d of %s without help had a fault (%s, limits %s to %s): %s."
                .formatted(
                    all.faulty(),
                    Counted.of(all.reps(), "rep"),
                    ReportPaper.percent(all.share().value()),
                    ReportPaper.percent(all.share().lower()),
                    ReportPaper.percent(all.share().upper()),
                    all.faults().entrySet().stream()
                        .map(each -> fault(each) + " " + each.getValue())
                        .collect(Collectors.joining(", ")))));
    bullets(null, page.faults().lines().stream().flatMap(DogPaper::poles).toList());
  }

  private static String fault(Map.Entry<Outcome, Integer> each) {
    return Writing.wireName(each.getKey()).replace('-', ' ');
  }

  /** Poles at which there are more faults than an even spread would have. */
  private static Stream<String> poles(FaultsOfLine line) {
    return Stream.iterate(0, pole -> pole < line.spread().places().size(), pole -> pole + 1)
        .filter(pole -> line.spread().places().get(pole).standsOut())
        .map(
            pole ->
                "On %d poles, pole %d stands out: %s."
                    .formatted(
                        line.poles(),
                        pole + 1,
                        Counted.of(line.spread().places().get(pole).faults(), "fault")));
  }

  private void writeTrials() {
    titled(
        "Trials",
        page.trials(),
        trial ->
            "%s: %d poles, %s."
                .formatted(
                    day(trial.time()),
                    trial.event().poles(),
                    Writing.wireName(trial.event().outcome()).replace('-', ' ')));
  }

  private <T> void titled(String title, List<T> all, Function<T, String> words) {
    if (!all.isEmpty()) {
      blocks.add(new Block.Heading(title));
      list(all, words);
    }
  }

  private <T> void list(List<T> all, Function<T, String> words) {
    if (!all.isEmpty()) {
      blocks.add(new Block.Bullets(all.stream().limit(LISTED_MAX).map(words).toList()));
      ReportPaper.more(blocks, all.size() - LISTED_MAX, "of them");
    }
  }

  private void bullets(@Nullable String title, List<String> texts) {
    if (!texts.isEmpty()) {
      if (title != null) {
        blocks.add(new Block.Heading(title));
      }
      blocks.add(new Block.Bullets(texts));
    }
  }
}
