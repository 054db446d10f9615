package dev.poleward.service.render;

import dev.poleward.domain.judgement.StageStanding;
import java.awt.geom.Rectangle2D;

/**
 * A dog's way through its programme: the stages from top to bottom in their order, in each its
 * rungs by the size of the entry angle, the sides apart.
 */
public final class WayPicture {

  /** From here on the rungs stand beside the words. */
  private static final int BESIDE_MIN = 720;

  /** From here on a picture grows as a whole. */
  private static final int LAID_OUT_MAX = 960;

  private static final double WORDS_SHARE = 0.36;
  private static final double PATH = 26;
  private static final double BETWEEN = 20;
  private static final double PAD = 9;

  /** The axis ends at a multiple of it. */
  private static final double AXIS_STEP_DEGREES = 30;

  private static final double AXIS_MIN_DEGREES = 90;

  private static final String POOLED =
      "Where angles lie closer together than marks can, one mark stands for them: the one that"
          + " needs most.";

  private final DogWay of;
  private final WayWords words;
  private final Sheet path = new Sheet(Studio.lettering());
  private final Sheet sheet = new Sheet(Studio.lettering());
  private final double width;
  private final double margin;
  private final boolean beside;

  private WayPicture(DogWay of, double width) {
    this.of = of;
    this.words = new WayWords(of);
    this.width = width;
    this.beside = width >= BESIDE_MIN;
    this.margin = beside ? 24 : 12;
  }

  /** The picture, {@code widthPixels} wide. */
  public static Picture of(DogWay of, int widthPixels) {
    double width = Math.min(widthPixels, LAID_OUT_MAX);
    WayPicture picture = new WayPicture(of, width);
    double end = picture.draw();
    picture.sheet.marks().forEach(picture.path::add);
    return Picture.onPaper(
        picture.words.title(),
        picture.words.inWords(),
        picture.path,
        width,
        end,
        widthPixels / width);
  }

  private double draw() {
    Stretch across = new Stretch(margin, width - 2 * margin);
    double y = DogHead.draw(sheet, of.dog(), words.about(), words.aged(), across, margin) + 8;
    y = sheet.paragraph(words.now(), across.left(), y, across.width(), Type.HEADING, Ink.BLACK) + 4;
    y = sheet.paragraph("Next", across.left(), y, across.width(), Type.SAYING, Ink.BLACK);
    for (String next : words.next()) {
      y = sheet.paragraph(next, across.left(), y, across.width(), Type.TEXT, Ink.BLACK) + 2;
    }
    y = Legend.draw(sheet, WayLegend.entries(), across.left(), y + 8, across.width()) + 10;
    return drawStages(across, y) + margin;
  }

  private double drawStages(Stretch across, double top) {
    double greatest = axisEnd();
    double y = top;
    double before = Double.NaN;
    boolean pooled = false;
    for (StageStanding stage : of.standing().stages()) {
      StagePanel panel = new StagePanel(sheet, words, stage, greatest);
      double node = y + PAD + Type.SAYING.ascent() / 2 + 1;
      double x = across.left() + WayNode.RADIUS + 1;
      if (!Double.isNaN(before)) {
        path.line(x, before, x, node, Ink.FAINT, Pen.WHISKER);
      }
      words.node(stage).draw(sheet, x, node);
      double end = drawStage(panel, across.without(PATH), y + PAD) + PAD;
      if (words.isNow(stage)) {
        path.draw(
            new Rectangle2D.Double(across.left() + PATH - 6, y, across.width() - PATH + 6, end - y),
            Ink.BLACK,
            Pen.AXIS);
      }
      pooled |= panel.isPooled();
      before = node;
      y = end + 6;
    }
    return pooled
        ? sheet.paragraph(POOLED, across.left(), y, across.width(), Type.NOTE, Ink.QUIET)
        : y;
  }

  private double drawStage(StagePanel panel, Stretch across, double top) {
    Stretch inside = new Stretch(across.left(), across.width() - 6);
    if (!beside) {
      return panel.drawRungs(inside, panel.drawWords(inside, top) + 4);
    }
    double left = inside.width() * WORDS_SHARE;
    double said = panel.drawWords(new Stretch(inside.left(), left), top);
    return Math.max(said, panel.drawRungs(inside.without(left + BETWEEN), top));
  }

  /** The same for all stages, so that they can be compared. */
  private double axisEnd() {
    double greatest =
        of.standing().pools().stream()
            .mapToDouble(pool -> pool.pool().rung().size())
            .max()
            .orElse(0);
    return Math.max(AXIS_MIN_DEGREES, Math.ceil(greatest / AXIS_STEP_DEGREES) * AXIS_STEP_DEGREES);
  }
}
