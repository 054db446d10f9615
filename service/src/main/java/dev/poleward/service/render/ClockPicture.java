package dev.poleward.service.render;

import dev.poleward.domain.mastery.SideMastery;

/**
 * Angle mastery on a clock face: seen from above, pole 1 in the middle, the poles running towards
 * 6, so that a trainer on the ground finds each direction where it is.
 */
final class ClockPicture {

  /** From here on the words stand beside the face. */
  private static final int BESIDE_MIN = 720;

  /** From here on a picture grows as a whole. */
  private static final int LAID_OUT_MAX = 960;

  private static final double BETWEEN = 28;
  private static final double FACE_MAX = 520;

  private ClockPicture() {}

  static Picture of(DogCurve of, int widthPixels, Lettering lettering) {
    double width = Math.min(widthPixels, LAID_OUT_MAX);
    boolean beside = width >= BESIDE_MIN;
    double margin = beside ? 24 : 12;
    double inner = width - 2 * margin;
    MasteryWords words = new MasteryWords(of);

    Sheet sheet = new Sheet(lettering);
    double top = MasteryHead.draw(sheet, of, margin, margin, inner) + 10;
    double faceSize = Math.min(FACE_MAX, beside ? inner * 0.56 : inner);
    double faceLeft = beside ? margin : margin + (inner - faceSize) / 2;
    new ClockFace(sheet, of.curve(), faceLeft + faceSize / 2, top + faceSize / 2, faceSize / 2)
        .draw();

    double end;
    if (beside) {
      double left = faceLeft + faceSize + BETWEEN;
      double said = said(sheet, words, of, left, top + 10, width - margin - left);
      double legend =
          Legend.draw(sheet, ClockLegend.entries(words), left, said + 8, width - margin - left);
      end = Math.max(top + faceSize, legend);
    } else {
      double said = said(sheet, words, of, margin, top + faceSize + 14, inner);
      end = Legend.draw(sheet, ClockLegend.entries(words), margin, said + 4, inner);
    }
    return MasteryPictures.onPaper(words, sheet, width, end + margin, widthPixels / width);
  }

  private static double said(
      Sheet sheet, MasteryWords words, DogCurve of, double left, double top, double width) {
    double y = top;
    for (SideMastery side : of.curve().sides()) {
      SideStyle.of(side.side())
          .heading(sheet, MasteryWords.name(side.side()), left, y + Type.HEADING.ascent());
      y += Type.HEADING.leading();
      y = sheet.paragraph(MasteryWords.approach(side.side()), left, y, width, Type.NOTE, Ink.QUIET);
      y = sheet.paragraph(words.threshold(side), left, y + 2, width, Type.SAYING, Ink.BLACK);
      y = sheet.paragraph(words.reps(side), left, y, width, Type.NOTE, Ink.QUIET);
      if (side.shapesDisagree()) {
        y = sheet.paragraph(MasteryWords.DISAGREE, left, y, width, Type.NOTE, Ink.BLACK);
      }
      y += 12;
    }
    return y;
  }
}
