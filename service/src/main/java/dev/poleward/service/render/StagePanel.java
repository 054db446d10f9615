package dev.poleward.service.render;

import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.judgement.PoolStanding;
import dev.poleward.domain.judgement.StageStanding;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.service.render.Mark.Hold;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** One stage of the way: what it is in words, and its rungs by the size of the angle. */
final class StagePanel {

  /** Marks lie no closer; one stands for all angles that would. */
  static final double SLOT = 15;

  private static final int NAME_LINES_MAX = 3;
  private static final double ROW = 36;
  private static final double STEP_LINE = 20;
  private static final double LABELS = 94;
  private static final double INSET = 9;
  private static final double TICK_LABEL_WIDTH = 44;

  private final Sheet sheet;
  private final WayWords words;
  private final StageStanding stage;
  private final double greatest;
  private boolean pooled;

  /**
   * Of a stage.
   *
   * @param greatest size of the angle at the end of the axis, degrees
   */
  StagePanel(Sheet sheet, WayWords words, StageStanding stage, double greatest) {
    this.sheet = sheet;
    this.words = words;
    this.stage = stage;
    this.greatest = greatest;
  }

  /** Whether a mark stands for several angles. */
  boolean isPooled() {
    return pooled;
  }

  /** Writes the name and how the stage stands; gives where that ends. */
  double drawWords(Stretch across, double top) {
    double y =
        sheet.name(
            WayWords.name(stage.stage()),
            stage.stage().id(),
            across,
            top,
            Type.SAYING,
            NAME_LINES_MAX);
    for (String line :
        Lines.cut(
            sheet.lettering(), words.state(stage), across.width(), Type.NOTE, 2 * NAME_LINES_MAX)) {
      sheet.words(line, across.left(), y + Type.NOTE.ascent(), Hold.LEFT, Type.NOTE, Ink.QUIET);
      y += Type.NOTE.leading();
    }
    return y;
  }

  /** Draws the rungs; gives where they end. */
  double drawRungs(Stretch across, double top) {
    List<RungRow> rows = RungRow.of(stage);
    double y = top;
    for (BackChainStep step : steps(rows)) {
      if (step != null) {
        sheet.words(
            WayWords.step(step),
            across.left(),
            y + Type.SMALL.ascent() + 3,
            Hold.LEFT,
            Type.SMALL,
            Ink.BLACK);
        y += STEP_LINE;
      }
      y =
          drawRows(
              rows.stream().filter(row -> Objects.equals(row.step(), step)).toList(), across, y);
    }
    boolean turned = rows.stream().anyMatch(row -> row.side() != EntrySide.BOTH);
    return turned ? drawAngles(across.without(LABELS), y) : y;
  }

  private static List<@Nullable BackChainStep> steps(List<RungRow> rows) {
    List<@Nullable BackChainStep> steps = new ArrayList<>();
    for (RungRow row : rows) {
      if (!steps.contains(row.step())) {
        steps.add(row.step());
      }
    }
    return steps;
  }

  /** Those of one step: straight on lies between the sides, as it belongs to both. */
  private double drawRows(List<RungRow> rows, Stretch across, double top) {
    List<RungRow> sides = rows.stream().filter(row -> row.side() != EntrySide.BOTH).toList();
    List<RungRow> labelled = sides.isEmpty() ? rows : sides;
    double end = top;
    for (RungRow row : labelled) {
      drawLabel(row.side(), across, end + ROW / 2 + 2);
      drawGuide(across.without(LABELS), end + ROW / 2 + 2);
      end += ROW;
    }
    double line = top + ROW / 2 + 2;
    for (RungRow row : labelled) {
      drawMarks(row, across.without(LABELS), line);
      line += ROW;
    }
    if (!sides.isEmpty()) {
      double between = (top + end) / 2 + 2;
      rows.stream()
          .filter(row -> row.side() == EntrySide.BOTH)
          .forEach(row -> drawMarks(row, across.without(LABELS), between));
    }
    return end;
  }

  private void drawLabel(EntrySide side, Stretch across, double y) {
    SideStyle style = SideStyle.of(side);
    sheet.fill(style.marker(across.left() + 6, y, 4.5), style.ink());
    sheet.words(
        WayWords.name(side),
        across.left() + 16,
        y + Type.SMALL.ascent() / 2,
        Hold.LEFT,
        Type.SMALL,
        style.ink());
  }

  private void drawGuide(Stretch plot, double y) {
    sheet.line(plot.left(), y, plot.right(), y, Ink.GRID, Pen.GUIDE);
  }

  private void drawMarks(RungRow row, Stretch plot, double y) {
    SideStyle style = SideStyle.of(row.side());
    int from = 0;
    List<PoolStanding> pools = row.pools();
    for (int next = 1; next <= pools.size(); next++) {
      double x = x(pools.get(from), plot);
      if (next == pools.size() || x(pools.get(next), plot) - x >= SLOT) {
        List<PoolStanding> slot = pools.subList(from, next);
        drawSlot(slot, style, x, y);
        pooled |= slot.size() > 1;
        from = next;
      }
    }
  }

  /** What needs most attention shows; it is moved on from when all of it is. */
  private void drawSlot(List<PoolStanding> slot, SideStyle style, double x, double y) {
    slot.stream()
        .map(RungMark::of)
        .sorted()
        .findFirst()
        .ifPresent(mark -> mark.draw(sheet, style, x, y));
    if (slot.stream().allMatch(pool -> pool.movedOn() != null)) {
      RungMark.underline(sheet, x, y);
    }
    if (slot.stream().anyMatch(words::isNext)) {
      RungMark.pointer(sheet, x, y);
    }
  }

  private double x(PoolStanding pool, Stretch plot) {
    return x(pool.pool().rung().size(), plot);
  }

  private double x(double degrees, Stretch plot) {
    return plot.left() + INSET + degrees / greatest * (plot.width() - 2 * INSET);
  }

  private double drawAngles(Stretch plot, double top) {
    double perStep = x(30, plot) - x(0, plot);
    int step = perStep >= TICK_LABEL_WIDTH ? 30 : 60;
    double line = top + 8 + Type.SMALL.ascent();
    for (int degrees = 0; degrees <= greatest; degrees += step) {
      double x = x(degrees, plot);
      sheet.line(x, top + 1, x, top + 6, Ink.BLACK, Pen.AXIS);
      sheet.words(degrees + "°", x, line, Hold.MIDDLE, Type.SMALL, Ink.BLACK);
    }
    return line + Type.SMALL.descent();
  }
}
