package dev.poleward.service.render;

import dev.poleward.domain.judgement.PoolStanding;
import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/**
 * How a rung stands, as a mark: what is in the shape tells it, not the colour. What needs more
 * attention comes first.
 */
enum RungMark {
  /** Crossed out. */
  SLIPPING("slipping"),
  /** A ring: something is missing in the middle. */
  DUE("due"),
  /** Half full. */
  LEARNING("learning"),
  /** A small empty shape. */
  UNTOUCHED("untouched"),
  /** An empty shape of full size. */
  PASSED_OVER("passed over"),
  /** Full. */
  SOLID("solid");

  /** Of a mark. */
  static final double RADIUS = 6.5;

  private static final double SMALL = 3.5;
  private static final double FROM_MARK = 4.5;

  private final String named;

  RungMark(String named) {
    this.named = named;
  }

  static RungMark of(PoolStanding pool) {
    return switch (pool.state()) {
      case UNTOUCHED -> pool.passedOver() ? PASSED_OVER : UNTOUCHED;
      case LEARNING -> LEARNING;
      case SOLID -> SOLID;
      case SLIPPING -> SLIPPING;
      case DUE -> DUE;
    };
  }

  /** In words. */
  String named() {
    return named;
  }

  void draw(Sheet sheet, SideStyle style, double x, double y) {
    Shape whole = style.marker(x, y, RADIUS);
    switch (this) {
      case UNTOUCHED -> outlined(sheet, style.marker(x, y, SMALL), style);
      case PASSED_OVER -> outlined(sheet, whole, style);
      case LEARNING -> {
        outlined(sheet, whole, style);
        Area half = new Area(whole);
        half.intersect(new Area(new Rectangle2D.Double(x - 12, y, 24, 12)));
        sheet.fill(half, style.ink());
      }
      case SOLID -> sheet.fill(whole, style.ink());
      case DUE -> {
        sheet.fill(style.marker(x, y, RADIUS + 0.75), style.ink());
        sheet.fill(style.marker(x, y, RADIUS / 2.2), Ink.PAPER);
      }
      case SLIPPING -> {
        outlined(sheet, whole, style);
        double reach = RADIUS + 1;
        sheet.line(x - reach, y - reach, x + reach, y + reach, Ink.BLACK, Pen.WHISKER);
        sheet.line(x - reach, y + reach, x + reach, y - reach, Ink.BLACK, Pen.WHISKER);
      }
    }
  }

  private static void outlined(Sheet sheet, Shape shape, SideStyle style) {
    sheet.fill(shape, Ink.PAPER);
    sheet.draw(shape, style.ink(), Pen.WHISKER);
  }

  /** The bar under what was moved on from. */
  static void underline(Sheet sheet, double x, double y) {
    double below = y + RADIUS + FROM_MARK;
    sheet.line(x - RADIUS, below, x + RADIUS, below, Ink.BLACK, Pen.THRESHOLD);
  }

  /** The pointer above what is next. */
  static void pointer(Sheet sheet, double x, double y) {
    double tip = y - RADIUS - 2.5;
    Path2D pointer = new Path2D.Double();
    pointer.moveTo(x, tip);
    pointer.lineTo(x - 5, tip - 7);
    pointer.lineTo(x + 5, tip - 7);
    pointer.closePath();
    sheet.fill(pointer, Ink.BLACK);
  }
}
