package dev.poleward.service.render;

import dev.poleward.service.render.Mark.Hold;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** What a picture is drawn on, mark after mark. x runs to the right, y down. For one thread. */
final class Sheet {

  private final Lettering lettering;
  private final List<Mark> marks = new ArrayList<>();

  Sheet(Lettering lettering) {
    this.lettering = lettering;
  }

  Lettering lettering() {
    return lettering;
  }

  List<Mark> marks() {
    return List.copyOf(marks);
  }

  /** Puts what was drawn elsewhere on top. */
  void add(Mark mark) {
    marks.add(mark);
  }

  void fill(Shape shape, Ink ink) {
    marks.add(new Mark.Filled(shape, ink));
  }

  void fillBox(double x, double y, double width, double height, Ink ink) {
    fill(new Rectangle2D.Double(x, y, width, height), ink);
  }

  void draw(Shape shape, Ink ink, Pen pen) {
    marks.add(new Mark.Drawn(shape, ink, pen));
  }

  void line(double x1, double y1, double x2, double y2, Ink ink, Pen pen) {
    draw(new Line2D.Double(x1, y1, x2, y2), ink, pen);
  }

  void words(String text, double x, double y, Hold hold, Type type, Ink ink) {
    marks.add(words(text, lettering.plain(text), x, y, hold, type, ink));
  }

  /** Text for which there may be no letters, and what stands there then. */
  void words(String text, String plain, double x, double y, Type type, Ink ink) {
    marks.add(words(text, plain, x, y, Hold.LEFT, type, ink));
  }

  private Mark.Words words(
      String text, String plain, double x, double y, Hold hold, Type type, Ink ink) {
    return new Mark.Words(text, plain, x, y, hold, type, ink, lettering.width(text, type));
  }

  /** Text, where no other of these has taken the room. Whether it was written. */
  boolean wordsIfFree(
      List<Rectangle2D> taken, String text, double x, double y, Hold hold, Type type, Ink ink) {
    Mark.Words words = words(text, text, x, y, hold, type, ink);
    Rectangle2D around = Room.around(words);
    double apart = type.ascent() / 3;
    Rectangle2D box =
        new Rectangle2D.Double(
            around.getX() - apart,
            around.getY(),
            around.getWidth() + 2 * apart,
            around.getHeight());
    if (taken.stream().anyMatch(box::intersects)) {
      return false;
    }
    taken.add(box);
    marks.add(words);
    return true;
  }

  /**
   * A name that somebody gave, cut off after {@code most} lines.
   *
   * @param plain what stands in its place, once, where there are no letters for it
   * @return where it ends
   */
  double name(String name, String plain, Stretch across, double top, Type type, int most) {
    double y = top;
    String instead = plain;
    for (String line : Lines.cut(lettering, name, across.width(), type, most)) {
      words(line, instead, across.left(), y + type.ascent(), type, Ink.BLACK);
      y += type.leading();
      instead = "";
    }
    return y;
  }

  /**
   * A paragraph that begins below {@code top}.
   *
   * @return where it ends
   */
  double paragraph(String text, double x, double top, double width, Type type, Ink ink) {
    double y = top;
    for (String line : Lines.cut(lettering, text, width, type, Integer.MAX_VALUE)) {
      words(line, x, y + type.ascent(), Hold.LEFT, type, ink);
      y += type.leading();
    }
    return y;
  }
}
