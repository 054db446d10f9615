package dev.poleward.service.render;

import dev.poleward.domain.layout.BoundedPath;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.layout.Heading;
import dev.poleward.domain.layout.Layout;
import dev.poleward.domain.layout.Piece;
import dev.poleward.domain.layout.Pose;
import dev.poleward.domain.layout.Spot;
import dev.poleward.service.render.Mark.Hold;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The marks of a layout from above: what guides the eye first, then the tapes, the pieces and the
 * dog's way, and names where there is room. For one thread.
 */
final class GroundMarks {

  private static final double POLE_RADIUS = 5;
  private static final double FIRST_POLE_RADIUS = 7;
  private static final double TUNNEL_WIDTH_METRES = 0.6;
  private static final double TUNNEL_LENGTH_METRES = 1.5;
  private static final double NAME_AWAY = 13;
  private static final double ARROW = 11;

  private final Sheet sheet;
  private final Layout layout;
  private final GroundPlan plan;
  private final SideStyle style;
  private final List<Rectangle2D> taken = new ArrayList<>();

  GroundMarks(Sheet sheet, Layout layout, GroundPlan plan) {
    this.sheet = sheet;
    this.layout = layout;
    this.plan = plan;
    this.style = SideStyle.of(LayoutWords.side(layout));
  }

  void draw() {
    drawDial();
    drawTapes();
    drawPoles();
    if (layout.path() != null) {
      drawPath(layout.path());
    }
    drawLeadIn();
    drawPegs();
    drawHours();
  }

  private Dial dial() {
    Point2D middle = plan.at(Spot.POLE_1);
    return new Dial(middle.getX(), middle.getY());
  }

  private double dialRadius() {
    return GroundPlan.dialRadius(layout) * plan.scale();
  }

  private void drawDial() {
    sheet.draw(dial().circle(dialRadius()), Ink.GRID, Pen.GUIDE);
    for (int degrees = 0; degrees < 360; degrees += 15) {
      Point2D from = dial().at(degrees, dialRadius() - (degrees % 30 == 0 ? 7 : 4));
      Point2D to = dial().at(degrees, dialRadius());
      line(from, to, Ink.FAINT, Pen.GUIDE);
    }
  }

  /** Last, so that a number gives way to whatever stands there. */
  private void drawHours() {
    for (int hour = 1; hour <= 12; hour++) {
      Point2D at = dial().at(hour * 30, dialRadius() + NAME_AWAY);
      name(Integer.toString(hour), at, Type.SMALL, Ink.QUIET);
    }
  }

  private void drawTapes() {
    for (Piece piece : layout.pieces().all()) {
      if (piece.kind() != Piece.Kind.POLE || isAnEnd(piece)) {
        line(plan.at(layout.pegs().a()), plan.at(piece.spot()), Ink.FAINT, Pen.DOTTED_GUIDE);
        line(plan.at(layout.pegs().b()), plan.at(piece.spot()), Ink.FAINT, Pen.DOTTED_GUIDE);
      }
    }
    line(plan.at(layout.pegs().a()), plan.at(layout.pegs().b()), Ink.FAINT, Pen.GUIDE);
  }

  /** Tapes to every pole would be a thicket; those to the first and the last show how it goes. */
  private boolean isAnEnd(Piece pole) {
    return pole.spot().equals(Spot.POLE_1)
        || pole.spot().y() >= layout.pieces().line().length() - 1e-9;
  }

  private void drawPath(BoundedPath path) {
    sheet.draw(plan.line(path), style.ink(), style.curve());
    Pose end = path.end();
    arrow(plan.at(end.spot()), end.heading());
  }

  /** A filled head whose tip is at a place. */
  private void arrow(Point2D tip, Heading heading) {
    Path2D head = new Path2D.Double();
    head.moveTo(tip.getX(), tip.getY());
    for (int sense : new int[] {-1, 1}) {
      double turn = Math.toRadians(heading.degrees() + 180 + sense * 25);
      // On the sheet, x to the dog's right lies to the left.
      head.lineTo(tip.getX() - ARROW * Math.sin(turn), tip.getY() + ARROW * Math.cos(turn));
    }
    head.closePath();
    sheet.fill(head, style.ink());
  }

  private void drawLeadIn() {
    List<Piece> leadIn = layout.pieces().leadIn();
    Pose start = layout.pieces().start();
    if (start == null || leadIn.isEmpty()) {
      return;
    }
    switch (leadIn.getFirst().kind()) {
      case WING -> {
        Point2D left = plan.at(leadIn.get(0).spot());
        Point2D right = plan.at(leadIn.get(1).spot());
        line(left, right, Ink.BLACK, Pen.THRESHOLD);
        for (Point2D wing : List.of(left, right)) {
          sheet.fill(box(wing, 5), Ink.BLACK);
          taken.add(box(wing, 7));
        }
      }
      case TUNNEL -> drawTunnel(start);
      case START -> {
        Point2D at = plan.at(start.spot());
        sheet.fill(circle(at, 6), Ink.PAPER);
        sheet.draw(circle(at, 6), Ink.BLACK, Pen.WHISKER);
        taken.add(box(at, 8));
      }
      case POLE -> throw new IllegalStateException("a pole is no lead-in");
    }
  }

  /** The end of a tunnel from above: two walls, open to where the dog comes out. */
  private void drawTunnel(Pose exit) {
    Path2D tunnel = new Path2D.Double();
    Spot left = exit.spot().ahead(exit.heading().left(), TUNNEL_WIDTH_METRES / 2);
    Spot right = exit.spot().ahead(exit.heading().right(), TUNNEL_WIDTH_METRES / 2);
    List<Spot> corners =
        List.of(
            left,
            left.ahead(exit.heading(), -TUNNEL_LENGTH_METRES),
            right.ahead(exit.heading(), -TUNNEL_LENGTH_METRES),
            right);
    boolean first = true;
    for (Spot corner : corners) {
      Point2D at = plan.at(corner);
      if (first) {
        tunnel.moveTo(at.getX(), at.getY());
      } else {
        tunnel.lineTo(at.getX(), at.getY());
      }
      first = false;
    }
    sheet.fill(tunnel, Ink.GRID);
    sheet.draw(tunnel, Ink.BLACK, Pen.WHISKER);
    taken.add(tunnel.getBounds2D());
  }

  private void drawPoles() {
    List<Piece> poles =
        layout.pieces().all().stream().filter(each -> each.kind() == Piece.Kind.POLE).toList();
    Point2D first = plan.at(poles.getFirst().spot());
    Point2D last = plan.at(poles.getLast().spot());
    line(first, last, Ink.FAINT, Pen.GUIDE);
    for (Piece pole : poles) {
      Point2D at = plan.at(pole.spot());
      boolean isFirst = pole.equals(poles.getFirst());
      double radius = Math.min(isFirst ? FIRST_POLE_RADIUS : POLE_RADIUS, plan.scale() * 0.25);
      sheet.fill(circle(at, radius + 1.5), Ink.PAPER);
      sheet.fill(circle(at, radius), Ink.BLACK);
      if (isFirst) {
        sheet.draw(circle(at, radius + 3), style.ink(), Pen.THIN);
      }
      taken.add(box(at, radius + 2));
    }
    namePoles(poles);
  }

  /** The first and the last are named before the others, where there is no room for all. */
  private void namePoles(List<Piece> poles) {
    // The dog crosses from its right to its left, which on the sheet is from left to right.
    double side = layout.path() != null && LayoutWords.side(layout) == EntrySide.POLE ? 1 : -1;
    poles.stream()
        .sorted(Comparator.comparing((Piece pole) -> !isAnEnd(pole)))
        .forEach(
            pole -> {
              Point2D at = plan.at(pole.spot());
              boolean first = pole.spot().equals(Spot.POLE_1);
              name(
                  pole.name().substring("pole-".length()),
                  new Point2D.Double(at.getX() + side * (NAME_AWAY + (first ? 6 : 3)), at.getY()),
                  first ? Type.SAYING : Type.NUMBER,
                  Ink.BLACK);
            });
  }

  private void drawPegs() {
    drawPeg(layout.pegs().a(), "A");
    drawPeg(layout.pegs().b(), "B");
  }

  private void drawPeg(Spot peg, String letter) {
    Point2D at = plan.at(peg);
    Path2D triangle = new Path2D.Double();
    triangle.moveTo(at.getX(), at.getY() - 7);
    triangle.lineTo(at.getX() + 7, at.getY() + 5);
    triangle.lineTo(at.getX() - 7, at.getY() + 5);
    triangle.closePath();
    sheet.fill(triangle, Ink.PAPER);
    sheet.draw(triangle, Ink.BLACK, Pen.WHISKER);
    taken.add(box(at, 8));
    for (int side : new int[] {-1, 1}) {
      if (name(
          letter, new Point2D.Double(at.getX() + side * 21, at.getY()), Type.SAYING, Ink.BLACK)) {
        return;
      }
    }
  }

  /** A name with its middle at a place, on paper of its own, where nothing else is. */
  private boolean name(String text, Point2D at, Type type, Ink ink) {
    double half = sheet.lettering().width(text, type) * Room.WIDER / 2;
    double ascent = type.ascent();
    Rectangle2D room =
        new Rectangle2D.Double(
            at.getX() - half - 2, at.getY() - ascent / 2 - 2, 2 * half + 4, ascent + 4);
    if (taken.stream().anyMatch(room::intersects)) {
      return false;
    }
    sheet.fill(room, Ink.PAPER);
    return sheet.wordsIfFree(
        taken, text, at.getX(), at.getY() + ascent / 2, Hold.MIDDLE, type, ink);
  }

  private void line(Point2D from, Point2D to, Ink ink, Pen pen) {
    sheet.line(from.getX(), from.getY(), to.getX(), to.getY(), ink, pen);
  }

  private static Ellipse2D circle(Point2D at, double radius) {
    return new Ellipse2D.Double(at.getX() - radius, at.getY() - radius, 2 * radius, 2 * radius);
  }

  private static Rectangle2D box(Point2D at, double half) {
    return new Rectangle2D.Double(at.getX() - half, at.getY() - half, 2 * half, 2 * half);
  }
}
