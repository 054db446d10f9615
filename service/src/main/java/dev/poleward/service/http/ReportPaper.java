package dev.poleward.service.http;

import dev.poleward.domain.care.CareNote;
import dev.poleward.domain.care.Severity;
import dev.poleward.domain.event.ClassEvent.ClassFormed;
import dev.poleward.domain.mastery.Estimate;
import dev.poleward.domain.report.Attendance;
import dev.poleward.domain.report.ClassPage;
import dev.poleward.domain.report.ClassReport;
import dev.poleward.domain.report.ClassSession;
import dev.poleward.domain.report.DogPage;
import dev.poleward.domain.report.EquipmentUse;
import dev.poleward.domain.report.Presence;
import dev.poleward.domain.report.RepTally;
import dev.poleward.domain.report.StuckOn;
import dev.poleward.service.page.Block;
import dev.poleward.service.page.Block.Column;
import dev.poleward.service.page.Leaf;
import dev.poleward.service.page.Notices;
import dev.poleward.service.page.Sheaf;
import dev.poleward.service.render.Counted;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A class report on paper: the page of the class, then one for each dog. */
final class ReportPaper {

  /** Most sessions that a page has room for; those that came last are shown. */
  private static final int ROWS_MAX = 60;

  private static final int STUCK_MAX = 8;
  private static final int SETUPS_MAX = 5;

  private final ClassReport report;
  private final Map<String, String> names;

  /** What care says of every dog: told once. */
  private final Set<CareNote> general;

  private ReportPaper(ClassReport report) {
    this.report = report;
    this.names =
        report.dogs().stream()
            .collect(Collectors.toMap(DogPage::dog, page -> page.known().callName()));
    this.general = report.page().isEmpty() ? Set.of() : general(report.dogs());
  }

  private static Set<CareNote> general(List<DogPage> dogs) {
    Set<CareNote> general = new LinkedHashSet<>();
    if (dogs.size() > 1) {
      dogs.getFirst().care().notes().stream()
          .filter(note -> note.severity() == Severity.NOTE)
          .forEach(general::add);
      dogs.forEach(dog -> general.retainAll(dog.care().notes()));
    }
    return general;
  }

  static Sheaf of(ClassReport report) {
    return new ReportPaper(report).sheaf();
  }

  private Sheaf sheaf() {
    ClassFormed formed = report.formed().standing().event();
    String days = report.span().from() + " to " + report.span().to();
    List<Leaf> leaves = new ArrayList<>();
    report
        .page()
        .ifPresent(page -> leaves.add(new Leaf(formed.name(), ofClass(formed, page, days))));
    report
        .dogs()
        .forEach(dog -> leaves.add(DogPaper.of(dog, formed.name(), report.span(), general)));
    if (leaves.isEmpty()) {
      leaves.add(
          new Leaf(
              formed.name(),
              List.of(new Block.Paragraph("Nothing is shown for these days: " + days + "."))));
    }
    if (report.omitted() > 0) {
      leaves.add(
          new Leaf(
              "Not shown",
              List.of(
                  new Block.Paragraph(Counted.of(report.omitted(), "more dog") + " not shown."))));
    }
    return new Sheaf(formed.name() + ", " + days, report.span().to(), leaves);
  }

  private List<Block> ofClass(ClassFormed formed, ClassPage page, String days) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Facts(facts(formed, page, days)));
    general.forEach(note -> blocks.add(Notices.of(note)));
    if (!page.sessions().isEmpty()) {
      blocks.add(new Block.Heading("Who was there"));
      blocks.add(sessions(page));
      blocks.add(
          new Block.Aside(
              "A dog that ran was there, whatever was noted. Unknown: nobody noted it, and it has"
                  + " no reps."));
    }
    if (!report.dogs().isEmpty()) {
      blocks.add(dogs());
    }
    stuck(blocks, page);
    equipment(blocks, page);
    if (!page.notKnown().isEmpty()) {
      blocks.add(new Block.Heading("Not known"));
      blocks.add(new Block.Bullets(page.notKnown().stream().map(ReportWords::ofClass).toList()));
    }
    return blocks;
  }

  private List<Block.Fact> facts(ClassFormed formed, ClassPage page, String days) {
    List<Block.Fact> facts = new ArrayList<>();
    facts.add(new Block.Fact("Days", days));
    addIfSaid(facts, "Instructor", formed.instructor());
    addIfSaid(facts, "When", formed.schedule());
    facts.add(new Block.Fact("Dogs", String.valueOf(report.dogs().size() + report.omitted())));
    facts.add(new Block.Fact("Sessions", String.valueOf(page.sessions().size())));
    facts.add(new Block.Fact("Reps in them", tally(page.reps())));
    facts.add(new Block.Fact("Reps of its dogs, wherever", tally(page.membersReps())));
    return facts;
  }

  private static void addIfSaid(List<Block.Fact> facts, String name, @Nullable String value) {
    if (value != null) {
      facts.add(new Block.Fact(name, value));
    }
  }

  /** {@code 40, 83% clean (68% to 92%)}. */
  static String tally(RepTally tally) {
    Estimate share = tally.cleanShare();
    return share == null
        ? String.valueOf(tally.all())
        : "%d, %s clean (%s to %s)"
            .formatted(
                tally.all(),
                percent(share.value()),
                percent(share.lower()),
                percent(share.upper()));
  }

  static String percent(double share) {
    return String.format(Locale.ROOT, "%.0f%%", 100 * share);
  }

  private static Block.Table sessions(ClassPage page) {
    List<ClassSession> all = page.sessions();
    List<ClassSession> shown = all.subList(Math.max(0, all.size() - ROWS_MAX), all.size());
    return new Block.Table(
        shown.size() == all.size() ? "Sessions" : "The last %d sessions".formatted(shown.size()),
        List.of(
            Column.text("Day"),
            Column.number("There"),
            Column.number("Away"),
            Column.number("Unknown"),
            Column.number("Guests"),
            Column.number("Reps"),
            Column.number("Clean"),
            Column.number("Changes")),
        shown.stream()
            .map(
                session -> {
                  RepTally reps = RepTally.of(session.reps());
                  Estimate share = reps.cleanShare();
                  return List.of(
                      session.day().toString(),
                      String.valueOf(session.count(Presence.PRESENT)),
                      String.valueOf(session.count(Presence.ABSENT)),
                      String.valueOf(session.count(Presence.UNKNOWN)),
                      String.valueOf(session.visitors().size()),
                      String.valueOf(reps.all()),
                      share == null ? "" : percent(share.value()),
                      String.valueOf(session.changes()));
                })
            .toList());
  }

  private Block.Table dogs() {
    return new Block.Table(
        "Dogs",
        List.of(
            Column.text("Dog"),
            Column.text("Stage"),
            Column.number("There"),
            Column.number("Away"),
            Column.number("Unknown"),
            Column.number("Reps"),
            Column.number("Clean"),
            Column.number("Moved on"),
            Column.number("Slips"),
            Column.number("Due")),
        report.dogs().stream()
            .map(
                dog -> {
                  Estimate share = dog.reps().cleanShare();
                  return List.of(
                      dog.known().callName(),
                      DogPaper.stage(dog.end()),
                      times(dog, Presence.PRESENT),
                      times(dog, Presence.ABSENT),
                      times(dog, Presence.UNKNOWN),
                      String.valueOf(dog.reps().all()),
                      share == null ? "" : percent(share.value()),
                      String.valueOf(dog.season().movedOn().size()),
                      String.valueOf(dog.slipping().size()),
                      String.valueOf(dog.due().size()));
                })
            .toList());
  }

  private static String times(DogPage dog, Presence presence) {
    return String.valueOf(
        dog.attended().stream()
            .map(each -> each.attendance())
            .map(Attendance::presence)
            .filter(presence::equals)
            .count());
  }

  private void stuck(List<Block> blocks, ClassPage page) {
    if (page.stuckOn().isEmpty()) {
      return;
    }
    blocks.add(new Block.Heading("What dogs are stuck on"));
    blocks.add(
        new Block.Bullets(
            page.stuckOn().stream()
                .limit(STUCK_MAX)
                .map(on -> ReportWords.stuckOn(on) + " " + dogs(on) + ".")
                .toList()));
    more(blocks, page.stuckOn().size() - STUCK_MAX, "rungs");
  }

  private String dogs(StuckOn on) {
    return on.stuck().stream()
        .map(dog -> names.getOrDefault(dog, dog))
        .collect(Collectors.joining(", "));
  }

  private static void equipment(List<Block> blocks, ClassPage page) {
    EquipmentUse use = page.equipment();
    if (use.setups().isEmpty()) {
      return;
    }
    blocks.add(new Block.Heading("Equipment"));
    blocks.add(
        new Block.Table(
            "%d times something was set up, %d of them in the place of something else; %s in all"
                .formatted(use.setUp(), use.changes(), minutes(use.stood())),
            List.of(
                Column.text("What stood"),
                Column.number("Sessions"),
                Column.number("How long"),
                Column.number("Reps")),
            use.setups().stream()
                .limit(SETUPS_MAX)
                .map(
                    each ->
                        List.of(
                            TrainersWords.setup(each.setup()),
                            String.valueOf(each.sessions()),
                            minutes(each.stood()),
                            String.valueOf(each.reps())))
                .toList()));
    more(blocks, use.setups().size() - SETUPS_MAX, "setups");
  }

  private static String minutes(Duration stood) {
    long minutes = Math.round(stood.toSeconds() / 60.0);
    return minutes < 60 ? minutes + " min" : "%d h %02d min".formatted(minutes / 60, minutes % 60);
  }

  static void more(List<Block> blocks, int more, String of) {
    if (more > 0) {
      blocks.add(new Block.Aside("And %d more %s.".formatted(more, of)));
    }
  }
}
