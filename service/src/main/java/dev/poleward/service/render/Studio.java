package dev.poleward.service.render;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;

/**
 * Paints pictures and prints pages. The letters are read from their files for the first of them.
 * Safe for use by many threads; {@value #AT_ONCE} are painted at a time, since their pixels take
 * memory, and the others wait for {@link #WAIT_MAX} at most.
 */
public final class Studio {

  /** Longest that a painting waits for its turn. */
  static final Duration WAIT_MAX = Duration.ofSeconds(5);

  private static final int AT_ONCE = 2;

  private final Semaphore brushes = new Semaphore(AT_ONCE, true);

  /** Made when it is first asked for. */
  private static final class Letters {
    static final Lettering OF_ALL_PICTURES = new Lettering();
  }

  /** The letters of all pictures. */
  static Lettering lettering() {
    return Letters.OF_ALL_PICTURES;
  }

  /** A picture as SVG. */
  public byte[] svg(Picture picture) {
    return SvgPainting.of(picture);
  }

  /** A picture as PNG; empty when its turn did not come in time. */
  public Optional<byte[]> png(Picture picture) {
    return inTurn(() -> PngPainting.of(picture, lettering()));
  }

  /** A print as PDF; empty when its turn did not come in time. */
  public Optional<byte[]> printed(Press.Print print) {
    return inTurn(() -> Press.of(print, lettering()));
  }

  /** Whether our letters have all that a text needs. */
  public static boolean canWrite(String text) {
    return lettering().knows(text);
  }

  /** A text for which our letters are not enough, as a picture no wider than that. */
  public static Picture painted(String text, double width) {
    return PaintedText.of(text, width, lettering());
  }

  private Optional<byte[]> inTurn(Supplier<byte[]> work) {
    if (!isItsTurn()) {
      return Optional.empty();
    }
    try {
      return Optional.of(work.get());
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
}
