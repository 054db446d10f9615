package dev.poleward.service.render;

import dev.poleward.domain.judgement.StageRewards;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * How a dog's rewards fade: of each stage the rewards of a clean rep month by month with the steps
 * of the ladder, the share of clean reps beside them, and what is to be done.
 */
public final class FadePicture {

  /** From here on the plots stand side by side. */
  private static final int BESIDE_MIN = 720;

  /** From here on a picture grows as a whole. */
  private static final int LAID_OUT_MAX = 960;

  private static final double BETWEEN = 24;

  private FadePicture() {}

  /** The picture, {@code widthPixels} wide. */
  public static Picture of(DogRewards of, int widthPixels) {
    double width = Math.min(widthPixels, LAID_OUT_MAX);
    boolean beside = width >= BESIDE_MIN;
    double margin = beside ? 24 : 12;
    Stretch across = new Stretch(margin, width - 2 * margin);
    FadeWords words = new FadeWords(of);
    Sheet sheet = new Sheet(Studio.lettering());
    double y = DogHead.draw(sheet, of.dog(), words.about(), words.aged(), across, margin) + 6;
    y = Legend.draw(sheet, legend(words), across.left(), y, across.width()) + 8;
    if (of.stages().isEmpty()) {
      y = sheet.paragraph(FadeWords.NOTHING, margin, y, across.width(), Type.SAYING, Ink.BLACK);
    }
    for (StageRewards stage : of.stages()) {
      FadePanel panel = new FadePanel(sheet, of, words, stage);
      y = panel.drawHead(across, y + 8);
      y = (beside ? beside(panel, across, y) : below(panel, across, y)) + 14;
    }
    return Picture.onPaper(
        words.title(), words.inWords(), sheet, width, y + margin, widthPixels / width);
  }

  private static double beside(FadePanel panel, Stretch across, double top) {
    Stretch half = new Stretch(across.left(), (across.width() - BETWEEN) / 2);
    Stretch other = new Stretch(half.right() + BETWEEN, half.width());
    return Math.max(panel.drawRewards(half, top), panel.drawClean(other, top));
  }

  private static double below(FadePanel panel, Stretch across, double top) {
    return panel.drawClean(across, panel.drawRewards(across, top) + 14);
  }

  private static List<Legend.Entry> legend(FadeWords words) {
    return List.of(
        new Legend.Entry((sheet, x, y) -> bar(sheet, RewardLook.FOOD, x, y), "food"),
        new Legend.Entry((sheet, x, y) -> bar(sheet, RewardLook.TOY, x, y), "toys"),
        new Legend.Entry(
            (sheet, x, y) -> sheet.line(x - 20, y, x + 20, y, Ink.BLACK, Pen.LEVEL),
            "step of the ladder; aim " + words.aim()),
        new Legend.Entry(
            (sheet, x, y) -> sheet.line(x - 20, y, x + 20, y, Ink.BLACK, Pen.DOTTED),
            "floor " + words.floor()),
        new Legend.Entry(
            (sheet, x, y) -> ObservedMark.draw(sheet, SideStyle.STRAIGHT, x, y - 10, y, y + 10, 9),
            "share seen, with 95% interval"));
  }

  private static void bar(Sheet sheet, RewardLook look, double x, double y) {
    look.draw(sheet, new Rectangle2D.Double(x - 14, y - 8, 28, 16));
  }
}
