package dev.poleward.service.render;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A picture as PNG, with two pixels for each of CSS, so that it stays sharp on a phone. Title and
 * description are in its text chunks. For one thread and one picture.
 */
final class PngPainting {

  private static final double PIXELS_TO_CSS_PIXEL = 2;

  /** A pixel of CSS is a 96th of an inch. */
  private static final double CSS_PIXELS_PER_METRE = 96 / 0.0254;

  private final Lettering lettering;
  private final Graphics2D graphics;

  private PngPainting(Lettering lettering, Graphics2D graphics) {
    this.lettering = lettering;
    this.graphics = graphics;
  }

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
      PngPainting painting = new PngPainting(lettering, graphics);
      picture.marks().forEach(painting::paint);
    } finally {
      graphics.dispose();
    }
    return PngFile.of(
        FewColours.of(image),
        Math.round(CSS_PIXELS_PER_METRE * PIXELS_TO_CSS_PIXEL),
        new TreeMap<>(Map.of("Title", picture.title(), "Description", picture.inWords())));
  }

  private void paint(Mark mark) {
    switch (mark) {
      case Mark.Filled filled -> {
        graphics.setColor(new Color(filled.ink().rgb()));
        graphics.fill(filled.shape());
      }
      case Mark.Drawn drawn -> {
        graphics.setColor(new Color(drawn.ink().rgb()));
        graphics.setStroke(stroke(drawn.pen()));
        graphics.draw(drawn.shape());
      }
      case Mark.Words words -> paint(words);
    }
  }

  private static BasicStroke stroke(Pen pen) {
    List<Double> dashes = pen.dashes();
    if (dashes.isEmpty()) {
      return new BasicStroke((float) pen.width(), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
    }
    float[] lengths = new float[dashes.size()];
    for (int i = 0; i < lengths.length; i++) {
      lengths[i] = dashes.get(i).floatValue();
    }
    return new BasicStroke(
        (float) pen.width(), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, lengths, 0);
  }

  private void paint(Mark.Words words) {
    Optional<Shape> outline = lettering.outline(words.text(), words.type());
    double wide = words.width();
    if (outline.isEmpty()) {
      outline = lettering.outline(words.plain(), words.type());
      wide = lettering.width(words.plain(), words.type());
    }
    if (outline.isPresent()) {
      double left =
          switch (words.hold()) {
            case LEFT -> words.x();
            case MIDDLE -> words.x() - wide / 2;
            case RIGHT -> words.x() - wide;
          };
      graphics.setColor(new Color(words.ink().rgb()));
      AffineTransform there = AffineTransform.getTranslateInstance(left, words.y());
      graphics.fill(there.createTransformedShape(outline.get()));
    }
  }
}
