package dev.poleward.service.render;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.util.List;
import java.util.Optional;

/** Paints marks on whatever Java can draw on. For one thread and one picture. */
final class MarkPainting {

  private final Lettering lettering;
  private final Graphics2D graphics;

  MarkPainting(Lettering lettering, Graphics2D graphics) {
    this.lettering = lettering;
    this.graphics = graphics;
  }

  void paint(Picture picture) {
    picture.marks().forEach(this::paint);
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
