package dev.poleward.service.page;

import dev.poleward.domain.layout.Layout;
import dev.poleward.domain.layout.LayoutQuestion;
import dev.poleward.domain.layout.Setup;
import dev.poleward.service.page.Block.Column;
import dev.poleward.service.render.LayoutPicture;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A plan on paper: what to do and why, what to mind, a table for when there is no phone, and how to
 * lay out each setup.
 */
public final class PlanLeaves {

  /** From here on the tape sheet stands beside the ground, in pixels of CSS. */
  private static final int PICTURE_WIDTH = 720;

  /** More columns than this do not fit on paper. */
  private static final int BOXES_MAX = 10;

  private static final String LEGEND =
      "Write into each box: C clean, M missed entry, S skipped pole, P popped out, N no attempt, B"
          + " back-weave, and the pole; V where it was not the dog's fault. After two misses"
          + " running, do the easier drill. What is written here is sent as reps afterwards, as of"
          + " the time when it happened.";

  private PlanLeaves() {}

  /** The plan by itself. */
  public static Sheaf sheaf(PlanOnPaper plan) {
    return new Sheaf(plan.dog() + ": session plan", plan.day(), of(List.of(plan)));
  }

  /** A leaf for each plan, and behind them the setups, which are numbered in common. */
  public static List<Leaf> of(List<PlanOnPaper> plans) {
    List<Setup> setups =
        plans.stream()
            .flatMap(plan -> plan.drills().stream())
            .map(PlanOnPaper.Drill::setup)
            .distinct()
            .toList();
    List<Leaf> leaves = new ArrayList<>();
    for (PlanOnPaper plan : plans) {
      leaves.add(
          new Leaf(plan.dog() + ": session of " + Days.of(plan.day()), whatToDo(plan, setups)));
    }
    if (!setups.isEmpty()) {
      leaves.add(new Leaf("How to lay it out", pictures(setups, plans)));
    }
    return leaves;
  }

  private static List<Block> pictures(List<Setup> setups, List<PlanOnPaper> plans) {
    List<Block> blocks = new ArrayList<>();
    for (int i = 0; i < setups.size(); i++) {
      blocks.add(
          new Block.Heading(
              "Setup %d, for %s".formatted(i + 1, whoseDrills(setups.get(i), plans))));
      blocks.add(
          new Block.Figure(
              LayoutPicture.of(Layout.of(LayoutQuestion.of(setups.get(i))), PICTURE_WIDTH)));
    }
    return blocks;
  }

  private static String whoseDrills(Setup setup, List<PlanOnPaper> plans) {
    List<String> whose = new ArrayList<>();
    for (PlanOnPaper plan : plans) {
      List<String> numbers = new ArrayList<>();
      for (int i = 0; i < plan.drills().size(); i++) {
        if (plan.drills().get(i).setup().equals(setup)) {
          numbers.add(String.valueOf(i + 1));
        }
      }
      if (!numbers.isEmpty()) {
        String drills = (numbers.size() == 1 ? "drill " : "drills ") + String.join(", ", numbers);
        whose.add(plans.size() == 1 ? drills : plan.dog() + ": " + drills);
      }
    }
    return String.join("; ", whose);
  }

  private static List<Block> whatToDo(PlanOnPaper plan, List<Setup> setups) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Facts(facts(plan)));
    plan.notes().forEach(note -> blocks.add(Notices.of(note)));
    if (plan.text() != null) {
      blocks.add(new Block.Paragraph(plan.text()));
    }
    if (plan.drills().isEmpty()) {
      blocks.add(new Block.Paragraph("Nothing is planned for this session."));
      return blocks;
    }
    blocks.add(table(plan, setups));
    blocks.add(new Block.Heading("Why"));
    DrillReasons.of(plan.drills()).forEach(why -> blocks.add(new Block.Paragraph(why.words())));
    blocks.add(blanks(plan));
    blocks.add(new Block.Aside(LEGEND));
    return blocks;
  }

  private static List<Block.Fact> facts(PlanOnPaper plan) {
    List<Block.Fact> facts = new ArrayList<>();
    facts.add(new Block.Fact("Programme", plan.programme()));
    if (plan.stage() != null) {
      facts.add(new Block.Fact("Stage", plan.stage()));
    }
    facts.add(new Block.Fact("In all", plan.reps() == 1 ? "1 rep" : plan.reps() + " reps"));
    facts.add(new Block.Fact("Plan", plan.plan().isEmpty() ? "not recorded" : plan.plan()));
    return facts;
  }

  private static Block.Table table(PlanOnPaper plan, List<Setup> setups) {
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < plan.drills().size(); i++) {
      PlanOnPaper.Drill drill = plan.drills().get(i);
      rows.add(
          List.of(
              String.valueOf(i + 1),
              drill.words(),
              String.valueOf(setups.indexOf(drill.setup()) + 1),
              String.valueOf(drill.reps()),
              drill.expectedClean() == null
                  ? ""
                  : String.format(Locale.ROOT, "%.0f%%", 100 * drill.expectedClean()),
              drill.reward() == null ? "" : drill.reward()));
    }
    return new Block.Table(
        "What to do",
        List.of(
            Column.number(""),
            Column.text("Drill"),
            Column.number("Setup"),
            Column.number("Reps"),
            Column.number("Clean, expected"),
            Column.text("Reward")),
        rows);
  }

  private static Block.Blanks blanks(PlanOnPaper plan) {
    int boxes =
        Math.min(
            BOXES_MAX, plan.drills().stream().mapToInt(PlanOnPaper.Drill::reps).max().orElse(1));
    List<String> heads = new ArrayList<>();
    heads.add("Drill");
    for (int box = 1; box <= boxes; box++) {
      heads.add(String.valueOf(box));
    }
    heads.add("What was noticed");
    List<String> rows = new ArrayList<>();
    for (int drill = 1; drill <= plan.drills().size(); drill++) {
      rows.add(String.valueOf(drill));
    }
    rows.add("else");
    return new Block.Blanks("How it went", heads, rows);
  }
}
