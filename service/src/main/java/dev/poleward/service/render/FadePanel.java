package dev.poleward.service.render;

import dev.poleward.domain.judgement.CleanMonth;
import dev.poleward.domain.judgement.RewardMonth;
import dev.poleward.domain.judgement.StageRewards;
import dev.poleward.domain.mastery.Confidence;
import dev.poleward.domain.mastery.Estimate;
import dev.poleward.domain.programme.RewardStep;
import dev.poleward.service.render.Mark.Hold;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** One stage of the picture of fading rewards. For one thread. */
final class FadePanel {

  private static final int NAME_LINES_MAX = 2;
  private static final double STEP_LABELS = 52;
  private static final double BAR_SHARE = 0.62;
  private static final double BAR_MAX = 34;
  private static final double BELOW_HEAD = 10;
  private static final double BETWEEN_ROWS = 4;

  private final Sheet sheet;
  private final DogRewards of;
  private final FadeWords words;
  private final StageRewards rewards;
  private final FadeMonths months;

  FadePanel(Sheet sheet, DogRewards of, FadeWords words, StageRewards rewards) {
    this.sheet = sheet;
    this.of = of;
    this.words = words;
    this.rewards = rewards;
    this.months = FadeMonths.of(rewards, of.zone());
  }

  /** What is said of the stage; gives where it ends. */
  double drawHead(Stretch across, double top) {
    double y =
        sheet.name(
            FadeWords.name(rewards.stage()),
            rewards.stage().id(),
            across,
            top,
            Type.HEADING,
            NAME_LINES_MAX);
    y = said(FadeWords.stands(rewards), across, y, Type.TEXT, Ink.BLACK);
    y = said(words.advice(rewards), across, y + 2, Type.SAYING, Ink.BLACK);
    y = said(FadeWords.goOn(rewards), across, y, Type.TEXT, Ink.BLACK);
    if (months.isCut()) {
      y = said(FadeWords.cut(), across, y, Type.NOTE, Ink.QUIET);
    }
    return y + BELOW_HEAD;
  }

  private double said(String text, Stretch across, double top, Type type, Ink ink) {
    return sheet.paragraph(text, across.left(), top, across.width(), type, ink);
  }

  /** Rewards month by month with the steps of the ladder; gives where they end. */
  double drawRewards(Stretch across, double top) {
    double y = said("Rewards of a clean rep", across, top, Type.NUMBER, Ink.BLACK) + 4;
    ValuePlot plot = new ValuePlot(sheet, ValueAxis.countUpTo(greatest()), across, STEP_LABELS, y);
    MonthAxis axis = new MonthAxis(months.first(), months.months(), plot.across());
    plot.drawGrid();
    drawLadder(plot);
    months.rewards().forEach(month -> drawBar(plot, axis, month));
    plot.drawAxes();
    double line = axis.draw(sheet, plot.bottom()) + BETWEEN_ROWS + Type.SMALL.ascent();
    drawRow(
        plot,
        "rewards",
        line,
        months.rewards().stream()
            .map(month -> new Cell(axis.x(month.month()), MasteryWords.number(each(month))))
            .toList());
    return line + Type.SMALL.descent();
  }

  private static double each(RewardMonth month) {
    return (double) (month.food() + month.toys()) / month.reps();
  }

  private double greatest() {
    double seen = months.rewards().stream().mapToDouble(FadePanel::each).max().orElse(0);
    double asked =
        rewards.stage().terms().rewardLadder().steps().stream()
            .mapToInt(RewardStep::rewardsEach)
            .max()
            .orElse(0);
    return Math.max(1, Math.max(seen, asked));
  }

  private static void drawBarPart(
      Sheet sheet, ValuePlot plot, RewardLook look, double x, double wide, double from, double to) {
    if (to > from) {
      look.draw(
          sheet, new Rectangle2D.Double(x - wide / 2, plot.y(to), wide, plot.y(from) - plot.y(to)));
    }
  }

  private void drawBar(ValuePlot plot, MonthAxis axis, RewardMonth month) {
    double x = axis.x(month.month());
    double wide = Math.min(BAR_MAX, BAR_SHARE * axis.slot());
    double food = (double) month.food() / month.reps();
    drawBarPart(sheet, plot, RewardLook.FOOD, x, wide, 0, food);
    drawBarPart(sheet, plot, RewardLook.TOY, x, wide, food, each(month));
  }

  /** The steps, with the one that the dog stands on bold. */
  private void drawLadder(ValuePlot plot) {
    List<RewardStep> steps = rewards.stage().terms().rewardLadder().steps();
    List<Rectangle2D> taken = new ArrayList<>();
    drawStep(plot, taken, rewards.step(), Type.NUMBER);
    for (int index = 0; index < steps.size(); index++) {
      if (index != rewards.step()) {
        drawStep(plot, taken, index, Type.SMALL);
      }
    }
  }

  private void drawStep(ValuePlot plot, List<Rectangle2D> taken, int index, Type type) {
    RewardStep step = rewards.stage().terms().rewardLadder().steps().get(index);
    double y = plot.y(step.rewardsEach());
    double right = plot.across().right();
    sheet.line(plot.across().left(), y, right, y, Ink.BLACK, Pen.LEVEL);
    sheet.wordsIfFree(
        taken, "step " + (index + 1), right + 6, y + type.ascent() / 2, Hold.LEFT, type, Ink.BLACK);
  }

  /** The share of clean reps month by month; gives where it ends. */
  double drawClean(Stretch across, double top) {
    double y = said("Share of clean reps", across, top, Type.NUMBER, Ink.BLACK) + 4;
    ValuePlot plot = new ValuePlot(sheet, ValueAxis.PERCENT, across, STEP_LABELS, y);
    MonthAxis axis = new MonthAxis(months.first(), months.months(), plot.across());
    plot.drawGrid();
    drawLevel(plot, of.programme().cleanTarget(), "aim", Pen.LEVEL);
    drawLevel(plot, of.programme().cleanFloor(), "floor", Pen.DOTTED);
    for (CleanMonth month : months.clean()) {
      Estimate share = month.clean().wilson(Confidence.OF_95_PERCENT);
      ObservedMark.draw(
          sheet,
          SideStyle.STRAIGHT,
          axis.x(month.month()),
          plot.y(100 * share.lower()),
          plot.y(100 * share.value()),
          plot.y(100 * share.upper()),
          Math.min(16, axis.slot()));
    }
    plot.drawAxes();
    double line = axis.draw(sheet, plot.bottom()) + BETWEEN_ROWS + Type.SMALL.ascent();
    drawRow(
        plot,
        "reps",
        line,
        months.clean().stream()
            .map(
                month ->
                    new Cell(axis.x(month.month()), Long.toString(Math.round(month.clean().of()))))
            .toList());
    return line + Type.SMALL.descent();
  }

  private void drawLevel(ValuePlot plot, double share, String name, Pen pen) {
    double y = plot.y(100 * share);
    double right = plot.across().right();
    sheet.line(plot.across().left(), y, right, y, Ink.BLACK, pen);
    // The two lie close together: one is named above its line, the other below.
    double line = pen.equals(Pen.LEVEL) ? y : y + Type.SMALL.ascent() + 5;
    sheet.words(name, right + 6, line, Hold.LEFT, Type.SMALL, Ink.BLACK);
  }

  /** A number below a plot. */
  private record Cell(double x, String text) {}

  private void drawRow(ValuePlot plot, String name, double line, List<Cell> cells) {
    plot.nameRow(name, line);
    List<Rectangle2D> taken = new ArrayList<>();
    for (Cell cell : cells) {
      sheet.wordsIfFree(taken, cell.text(), cell.x(), line, Hold.MIDDLE, Type.SMALL, Ink.BLACK);
    }
  }
}
