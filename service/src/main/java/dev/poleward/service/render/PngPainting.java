package dev.poleward.service.render;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.Map;
import java.util.TreeMap;

/**
 * A picture as PNG, with two pixels for each of CSS, so that it stays sharp on a phone. Title and
 * description are in its text chunks.
 */
final class PngPainting {

  private static final double PIXELS_TO_CSS_PIXEL = 2;

  /** A pixel of CSS is a 96th of an inch. */
  private static final double CSS_PIXELS_PER_METRE = 96 / 0.0254;

  private PngPainting() {}

  static byte[] of(Picture picture, Lettering lettering) {
    double scale = picture.scale() * PIXELS_TO_CSS_PIXEL;
    BufferedImage image =
        new BufferedImage(
            (int) Math.round(picture.width() * scale),
            (int) Math.round(picture.height() * scale),
            BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    try {
      graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      graphics.setRenderingHint(
          RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
      graphics.scale(scale, scale);
      new MarkPainting(lettering, graphics).paint(picture);
    } finally {
      graphics.dispose();
    }
    return PngFile.of(
        FewColours.of(image),
        Math.round(CSS_PIXELS_PER_METRE * PIXELS_TO_CSS_PIXEL),
        new TreeMap<>(Map.of("Title", picture.title(), "Description", picture.inWords())));
  }
}
