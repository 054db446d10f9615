package dev.poleward.service.render;

/** Draws pictures of angle mastery. */
public final class MasteryPictures {

  /** Which picture. */
  public enum Kind {
    /** Share against the size of the angle. */
    CURVE,
    /** The same on a clock face, seen from above. */
    CLOCK
  }

  private MasteryPictures() {}

  /** A picture before it is painted. */
  public static Picture draw(DogCurve of, Kind kind, int widthPixels) {
    return switch (kind) {
      case CURVE -> CurvePicture.of(of, widthPixels, Studio.lettering());
      case CLOCK -> ClockPicture.of(of, widthPixels, Studio.lettering());
    };
  }

  /** The curve without head and legend, for a page that has them. */
  public static Picture strip(DogCurve of, int widthPixels) {
    return CurvePicture.strip(of, widthPixels, Studio.lettering());
  }

  static Picture onPaper(
      MasteryWords words, Sheet sheet, double width, double height, double scale) {
    return Picture.onPaper(words.title(), words.inWords(), sheet, width, height, scale);
  }
}
