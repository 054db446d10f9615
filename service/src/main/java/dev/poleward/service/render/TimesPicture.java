package dev.poleward.service.render;

import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.pace.PaceOfKind;
import java.util.List;
import java.util.Optional;

/**
 * How fast and how evenly a dog weaves, of the kind of run that there are most of: the time of each
 * gap, and the time of a run over the days.
 */
public final class TimesPicture {

  /** From here on the plots stand side by side. */
  private static final int BESIDE_MIN = 720;

  /** From here on a picture grows as a whole. */
  private static final int LAID_OUT_MAX = 960;

  private static final double BETWEEN = 24;

  private final DogTimes of;
  private final TimesWords words;
  private final Sheet sheet = new Sheet(Studio.lettering());
  private final Stretch across;
  private final boolean beside;

  private TimesPicture(DogTimes of, Stretch across, boolean beside) {
    this.of = of;
    this.words = new TimesWords(of);
    this.across = across;
    this.beside = beside;
  }

  /** The picture, {@code widthPixels} wide. */
  public static Picture of(DogTimes of, int widthPixels) {
    double width = Math.min(widthPixels, LAID_OUT_MAX);
    boolean beside = width >= BESIDE_MIN;
    double margin = beside ? 24 : 12;
    TimesPicture picture = new TimesPicture(of, new Stretch(margin, width - 2 * margin), beside);
    double end = picture.draw(margin) + margin;
    return Picture.onPaper(
        picture.words.title(),
        picture.words.inWords(),
        picture.sheet,
        width,
        end,
        widthPixels / width);
  }

  private double draw(double top) {
    double y = DogHead.draw(sheet, of.dog(), words.about(), words.aged(), across, top) + 8;
    Optional<PaceOfKind> most = of.mostRun();
    y = said(most.map(TimesWords::pace).orElse(TimesWords.NO_RUNS), across, y, Type.HEADING);
    if (most.isPresent()) {
      y = said(TimesWords.run(most.get()), across, y, Type.TEXT);
    }
    y = said(of.slowing(), across, y, Type.TEXT) + 12;
    return most.isPresent() ? drawPlots(most.get(), y) : y;
  }

  private double said(String text, Stretch where, double top, Type type) {
    return sheet.paragraph(text, where.left(), top, where.width(), type, Ink.BLACK);
  }

  private double drawPlots(PaceOfKind pace, double top) {
    EntrySide side = pace.kind().entrySide();
    SideStyle style = side == null ? SideStyle.STRAIGHT : SideStyle.of(side);
    double end;
    if (beside) {
      Stretch left = new Stretch(across.left(), (across.width() - BETWEEN) / 2);
      Stretch right = new Stretch(left.right() + BETWEEN, left.width());
      double head =
          Math.max(
              head(
                  new Sheet(sheet.lettering()),
                  "Gap by gap",
                  TimesWords.rhythm(pace.rhythm()),
                  left,
                  top),
              head(new Sheet(sheet.lettering()), "Day by day", TimesWords.trend(pace), right, top));
      head(sheet, "Gap by gap", TimesWords.rhythm(pace.rhythm()), left, top);
      head(sheet, "Day by day", TimesWords.trend(pace), right, top);
      end =
          Math.max(
              RhythmPlot.draw(sheet, style, pace.rhythm(), left, head),
              DaysPlot.draw(sheet, style, pace, right, head));
    } else {
      double y = head(sheet, "Gap by gap", TimesWords.rhythm(pace.rhythm()), across, top);
      y = RhythmPlot.draw(sheet, style, pace.rhythm(), across, y) + 14;
      y = head(sheet, "Day by day", TimesWords.trend(pace), across, y);
      end = DaysPlot.draw(sheet, style, pace, across, y);
    }
    return Legend.draw(sheet, legend(style), across.left(), end + 12, across.width());
  }

  private static double head(Sheet on, String name, String said, Stretch where, double top) {
    double y = on.paragraph(name, where.left(), top, where.width(), Type.SAYING, Ink.BLACK);
    return on.paragraph(said, where.left(), y, where.width(), Type.NOTE, Ink.BLACK) + 8;
  }

  private static List<Legend.Entry> legend(SideStyle style) {
    return List.of(
        new Legend.Entry(
            (sheet, x, y) -> {
              sheet.line(x, y - 10, x, y + 10, style.ink(), Pen.WHISKER);
              sheet.fill(style.marker(x, y, 6), style.ink());
            },
            "median of a gap; half of the runs lie within the line"),
        new Legend.Entry((sheet, x, y) -> RhythmPlot.slow(sheet, x, y + 5), "slow gap"),
        new Legend.Entry(
            (sheet, x, y) -> sheet.fill(style.marker(x, y, 4.5), style.ink()), "median of a day"),
        new Legend.Entry(
            (sheet, x, y) -> sheet.line(x - 20, y, x + 20, y, Ink.BLACK, Pen.LEVEL),
            "trend (Theil and Sen)"));
  }
}
