package dev.poleward.service.render;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

/**
 * Draws and paints pictures of angle mastery. The letters are read from their files for the first
 * of them. Safe for use by many threads; {@value #AT_ONCE} are painted at a time, since their
 * pixels take memory, and the others wait for {@link #WAIT_MAX} at most.
 */
public final class MasteryPictures {

  /** Longest that a painting waits for its turn. */
  static final Duration WAIT_MAX = Duration.ofSeconds(5);

  private static final int AT_ONCE = 2;

  private final Semaphore brushes = new Semaphore(AT_ONCE, true);

  /** Which picture. */
  public enum Kind {
    /** Share against the size of the angle. */
    CURVE,
    /** The same on a clock face, seen from above. */
    CLOCK
  }

  /** Made when it is first asked for. */
  private static final class Letters {
    static final Lettering OF_ALL_PICTURES = new Lettering();
  }

  /** A picture as SVG. */
  public byte[] svg(DogCurve of, Kind kind, int widthPixels) {
    return SvgPainting.of(draw(of, kind, widthPixels));
  }

  /** A picture as PNG; empty when its turn did not come in time. */
  public Optional<byte[]> png(DogCurve of, Kind kind, int widthPixels) {
    Picture picture = draw(of, kind, widthPixels);
    if (!isItsTurn()) {
      return Optional.empty();
    }
    try {
      return Optional.of(PngPainting.of(picture, Letters.OF_ALL_PICTURES));
    } finally {
      brushes.release();
    }
  }

  private boolean isItsTurn() {
    try {
      return brushes.tryAcquire(WAIT_MAX.toMillis(), TimeUnit.MILLISECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  /** A picture before it is painted. */
  static Picture draw(DogCurve of, Kind kind, int widthPixels) {
    return switch (kind) {
      case CURVE -> CurvePicture.of(of, widthPixels, Letters.OF_ALL_PICTURES);
      case CLOCK -> ClockPicture.of(of, widthPixels, Letters.OF_ALL_PICTURES);
    };
  }

  static Picture onPaper(
      MasteryWords words, Sheet sheet, double width, double height, double scale) {
    double whole = Math.ceil(height);
    Sheet paper = new Sheet(sheet.lettering());
    paper.fillBox(0, 0, width, whole, Ink.PAPER);
    List<Mark> marks = new ArrayList<>(paper.marks());
    marks.addAll(sheet.marks());
    return new Picture(words.title(), words.inWords(), width, whole, scale, marks);
  }
}
