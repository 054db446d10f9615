package dev.poleward.service.render;

import dev.poleward.domain.layout.BoundedPath;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.layout.FeetAndInches;
import dev.poleward.domain.layout.Layout;
import dev.poleward.domain.layout.LayoutAdvice;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.layout.Pegs;
import dev.poleward.domain.layout.Piece;
import dev.poleward.domain.layout.Pose;
import dev.poleward.domain.layout.Setup;
import dev.poleward.domain.layout.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What a picture of a layout says in words. */
final class LayoutWords {

  /** Keeps a line from ending between a number and its unit. */
  private static final char GLUE = '\u00A0';

  private LayoutWords() {}

  /** The entry side; straight on where no direction is said. */
  static EntrySide side(Layout layout) {
    Setup setup = layout.question().setup();
    return setup.approach() == null ? EntrySide.BOTH : setup.approach().entry().side();
  }

  /** What it is of. */
  static String title(Layout layout) {
    Setup setup = layout.question().setup();
    return format("%d poles, %s apart", setup.poles(), metres(setup.spacing()));
  }

  /** Where the dog comes from. */
  static String comesFrom(Layout layout) {
    Setup setup = layout.question().setup();
    Pose start = layout.pieces().start();
    if (start == null || setup.approach() == null) {
      return "The rep says where the dog starts.";
    }
    double size = setup.approach().entry().size();
    String what =
        switch (setup.leadIn()) {
          case NONE -> "The dog is put at ";
          case JUMP -> "Jump at ";
          case TUNNEL -> "Tunnel at ";
        };
    return what
        + setup.approach().entry().clock().map(at -> at + ", ").orElse("")
        + format(
            "%s from pole 1 (%s): %s%s.%s",
            metres(start.spot().distanceTo(Spot.POLE_1)),
            FeetAndInches.ofMetres(start.spot().distanceTo(Spot.POLE_1)),
            size == 0 ? "" : degrees(size) + "° ",
            side(side(layout)),
            turned(setup));
  }

  private static String turned(Setup setup) {
    Double facing = setup.jumpFacing();
    return setup.leadIn() != LeadIn.JUMP || facing == null || facing == 0
        ? ""
        : format(
            " The jump is turned by %s° %s from facing pole 1.",
            degrees(Math.abs(facing)), facing > 0 ? "clockwise" : "counter-clockwise");
  }

  private static String side(EntrySide side) {
    return switch (side) {
      case POLE -> "on entry side pole: the dog meets pole 1 first and goes round it";
      case GAP -> "on entry side gap: the dog meets the gap first";
      case BOTH -> "straight on";
    };
  }

  /** How much the entry asks of the dog. */
  static String way(Layout layout) {
    BoundedPath path = layout.path();
    return path == null
        ? "No way into the gap is drawn."
        : format(
            "Shortest way into the gap at a turning radius of %s: %s, turning by %.0f°.",
            metres(path.radius()), metres(path.length()), path.turn());
  }

  /** How far apart the pegs stand, and how they lie. */
  static String pegs(Layout layout) {
    Pegs pegs = layout.pegs();
    return format(
        "Pegs A and B: %s apart (%s). Pole 1 lies %s from A and %s from B; sides are seen from A to"
            + " B.",
        tape(pegs.apart()),
        FeetAndInches.ofMetres(pegs.apart()),
        tape(pegs.tapesTo(Spot.POLE_1).fromA()),
        tape(pegs.tapesTo(Spot.POLE_1).fromB()));
  }

  /** Everything, for whoever does not see the picture. */
  static String inWords(Layout layout) {
    List<String> said = new ArrayList<>();
    said.add("Seen from above, 12 at the top, the poles running towards 6.");
    Double towards = layout.question().polesRunTowards();
    if (towards != null) {
      said.add(format("The poles run %s° clockwise from north.", degrees(towards)));
    }
    said.add(comesFrom(layout));
    said.add(way(layout));
    said.add(pegs(layout));
    for (Piece piece : layout.pieces().all()) {
      Pegs.Tapes tapes = layout.pegs().tapesTo(piece.spot());
      said.add(
          format(
              "%s: %.3f m from A, %.3f m from B, %s.",
              LayoutAdvice.name(piece), tapes.fromA(), tapes.fromB(), side(tapes)));
    }
    warnings(layout).forEach(said::add);
    return String.join(" ", said);
  }

  /** A piece as it is called in a table. */
  static String shortName(Piece piece) {
    return switch (piece.kind()) {
      case POLE -> LayoutAdvice.name(piece);
      case WING -> piece.name().equals("jump-left") ? "left wing" : "right wing";
      case TUNNEL -> "tunnel";
      case START -> "start";
    };
  }

  /** What should be looked at. */
  static List<String> warnings(Layout layout) {
    return layout.warnings().stream().map(LayoutAdvice::of).map(LayoutAdvice::text).toList();
  }

  /** On which side of the line of the pegs. */
  static String side(Pegs.Tapes tapes) {
    return switch (tapes.side()) {
      case LEFT -> "left";
      case RIGHT -> "right";
    };
  }

  /** To the millimetre: what is laid out from it is to lie within 5 mm. */
  private static String tape(double metres) {
    return format("%.3f", metres) + GLUE + "m";
  }

  static String metres(double metres) {
    return format("%.2f", metres) + GLUE + "m";
  }

  private static String degrees(double degrees) {
    double rounded = Math.rint(degrees * 10) / 10;
    return rounded == Math.rint(rounded) ? Long.toString((long) rounded) : format("%.1f", rounded);
  }

  private static String format(String text, Object... about) {
    return String.format(Locale.ROOT, text, about);
  }
}
