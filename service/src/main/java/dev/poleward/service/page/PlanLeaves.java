package dev.poleward.service.page;

import dev.poleward.domain.layout.Layout;
import dev.poleward.domain.layout.LayoutQuestion;
import dev.poleward.domain.layout.Setup;
import dev.poleward.service.page.Block.Column;
import dev.poleward.service.render.LayoutPicture;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A plan on paper: what to do and why, what to mind, a table for when there is no phone, and how to
 * lay out each setup.
 */
public final class PlanLeaves {

  /** As wide as a page of A4 between its margins, in pixels of CSS. */
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
    return new Sheaf(plan.dog() + ": session plan", plan.day(), of(plan));
  }

  /** The leaves of a plan, the setups behind it. */
  public static List<Leaf> of(PlanOnPaper plan) {
    Map<Setup, List<Integer>> setups = setups(plan);
    List<Leaf> leaves = new ArrayList<>();
    leaves.add(
        new Leaf(plan.dog() + ": session of " + Days.of(plan.day()), whatToDo(plan, setups)));
    if (!setups.isEmpty()) {
      leaves.add(new Leaf(plan.dog() + ": how to lay it out", pictures(setups)));
    }
    return leaves;
  }

  private static List<Block> pictures(Map<Setup, List<Integer>> setups) {
    List<Block> blocks = new ArrayList<>();
    int number = 1;
    for (Map.Entry<Setup, List<Integer>> each : setups.entrySet()) {
      blocks.add(new Block.Heading("Setup " + number++ + ", for " + drills(each.getValue())));
      blocks.add(new Block.Figure(LayoutPicture.of(laidOut(each.getKey()), PICTURE_WIDTH)));
    }
    return blocks;
  }

  private static Layout laidOut(Setup setup) {
    return Layout.of(
        new LayoutQuestion(
            setup,
            null,
            null,
            null,
            null,
            null,
            LayoutQuestion.TURNING_RADIUS_USUAL,
            LayoutQuestion.CLEARANCE_USUAL,
            LayoutQuestion.JUMP_WIDTH_USUAL,
            null,
            null));
  }

  /** The setups in the order in which they are needed, and the numbers of the drills over each. */
  private static Map<Setup, List<Integer>> setups(PlanOnPaper plan) {
    Map<Setup, List<Integer>> setups = new LinkedHashMap<>();
    for (int i = 0; i < plan.drills().size(); i++) {
      setups.computeIfAbsent(plan.drills().get(i).setup(), _ -> new ArrayList<>()).add(i + 1);
    }
    return setups;
  }

  private static String drills(List<Integer> numbers) {
    return (numbers.size() == 1 ? "drill " : "drills ")
        + String.join(", ", numbers.stream().map(String::valueOf).toList());
  }

  private static List<Block> whatToDo(PlanOnPaper plan, Map<Setup, List<Integer>> setups) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Block.Facts(
            List.of(
                new Block.Fact("Programme", plan.programme()),
                new Block.Fact("In all", plan.reps() == 1 ? "1 rep" : plan.reps() + " reps"),
                new Block.Fact("Plan", plan.plan()))));
    plan.notes().forEach(note -> blocks.add(Notices.of(note)));
    if (plan.drills().isEmpty()) {
      blocks.add(new Block.Paragraph("Nothing is planned for this session."));
      return blocks;
    }
    blocks.add(table(plan, setups));
    blocks.add(new Block.Heading("Why"));
    for (int i = 0; i < plan.drills().size(); i++) {
      blocks.add(new Block.Paragraph((i + 1) + ". " + why(plan.drills().get(i))));
    }
    blocks.add(blanks(plan));
    blocks.add(new Block.Aside(LEGEND));
    return blocks;
  }

  private static Block.Table table(PlanOnPaper plan, Map<Setup, List<Integer>> setups) {
    List<Setup> order = List.copyOf(setups.keySet());
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < plan.drills().size(); i++) {
      PlanOnPaper.Drill drill = plan.drills().get(i);
      rows.add(
          List.of(
              String.valueOf(i + 1),
              drill.words(),
              String.valueOf(order.indexOf(drill.setup()) + 1),
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

  private static String why(PlanOnPaper.Drill drill) {
    String reason = drill.reason() == null ? drill.words() + "." : drill.reason();
    return drill.easier() == null
        ? reason
        : reason + " After two misses running: " + drill.easier() + ".";
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
