package dev.poleward.domain.layout;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Looks a layout over for what should be mended before a dog runs. */
final class LayoutWarnings {

  /** The nearest and farthest that a lead-in customarily stands from pole 1, metres [C]. */
  static final double LEAD_IN_NEAREST = 4.5;

  static final double LEAD_IN_FARTHEST = 10;

  /** Entries beyond this bend the dog sharply, degrees. */
  static final double SHARP = 60;

  /** What bodies publish at least for any entry, metres; sharp ones want more rather than less. */
  static final double RUN_INTO_SHARP = 5;

  /** Below this a tape is a line along the other, degrees. */
  private static final double CROSSING_LEAST = 10;

  /** Metres on most tapes [C]. */
  private static final double TAPE_USUAL = 30;

  /** Metres after the lead-in in which the dog is necessarily near it. */
  private static final double AT_THE_LEAD_IN = 2;

  private static final double LOOK_EVERY = 0.05;

  private final LayoutQuestion question;
  private final Pieces pieces;
  private final List<LayoutWarning> warnings = new ArrayList<>();

  private LayoutWarnings(LayoutQuestion question, Pieces pieces) {
    this.question = question;
    this.pieces = pieces;
  }

  static List<LayoutWarning> of(
      LayoutQuestion question,
      Pieces pieces,
      Pegs pegs,
      @Nullable BoundedPath path,
      @Nullable GroundFit fit) {
    LayoutWarnings looked = new LayoutWarnings(question, pieces);
    looked.lookAtGround(fit);
    looked.lookAtLeadIn();
    looked.lookAtDogsLine(path);
    looked.lookAtSpacing();
    looked.lookAtTapes(pegs);
    return looked.warnings;
  }

  private void lookAtGround(@Nullable GroundFit fit) {
    LayoutQuestion.Ground ground = question.ground();
    if (fit != null && ground != null && !fit.fits()) {
      warnings.add(new LayoutWarning.DoesNotFitTheGround(fit, ground.length(), ground.width()));
    }
  }

  private void lookAtLeadIn() {
    Pose start = pieces.start();
    Setup setup = question.setup();
    if (start == null || setup.approach() == null || setup.leadIn() == LeadIn.NONE) {
      return;
    }
    double metres = start.spot().distanceTo(Spot.POLE_1);
    double angle = setup.approach().entry().size();
    if (setup.leadInDistance() == null) {
      warnings.add(new LayoutWarning.LeadInDistanceAssumed(metres));
    } else if (metres < LEAD_IN_NEAREST) {
      warnings.add(new LayoutWarning.LeadInNear(metres));
    } else if (metres > LEAD_IN_FARTHEST) {
      warnings.add(new LayoutWarning.LeadInFar(metres));
    }
    if (angle > SHARP && metres < RUN_INTO_SHARP) {
      warnings.add(new LayoutWarning.ShortRunIntoSharpEntry(metres, angle));
    }
  }

  private void lookAtDogsLine(@Nullable BoundedPath path) {
    if (pieces.start() != null && path == null) {
      warnings.add(new LayoutWarning.TurnTooTight(question.turningRadius()));
    }
    for (Piece piece : pieces.all()) {
      double metres =
          switch (piece.kind()) {
            // The dog runs between the poles; those of the entry it is to pass closely.
            case POLE ->
                path == null || isOfTheEntry(piece) ? Double.MAX_VALUE : to(path, piece, 0);
            case WING, TUNNEL ->
                Math.min(
                    toTheWeaving(piece),
                    path == null ? Double.MAX_VALUE : to(path, piece, AT_THE_LEAD_IN));
            case START -> Double.MAX_VALUE;
          };
      double clearance =
          piece.kind() == Piece.Kind.POLE
              ? Math.min(question.clearance(), pieces.line().spacing() / 2)
              : question.clearance();
      if (metres < clearance) {
        warnings.add(new LayoutWarning.PieceInDogsLine(piece, metres, clearance));
      }
    }
  }

  private boolean isOfTheEntry(Piece pole) {
    return pole.spot().y() <= pieces.line().spacing();
  }

  /** Metres from the way into the gap, from so far along it on. */
  private static double to(BoundedPath path, Piece piece, double after) {
    double nearest = Double.MAX_VALUE;
    List<Spot> spots = path.spots(LOOK_EVERY);
    double along = 0;
    for (int i = 1; i < spots.size(); i++) {
      along += spots.get(i).distanceTo(spots.get(i - 1));
      if (along >= after) {
        nearest = Math.min(nearest, spots.get(i).distanceTo(piece.spot()));
      }
    }
    return nearest;
  }

  /** Metres from the line of poles and the run-out behind it. */
  private double toTheWeaving(Piece piece) {
    double along = Math.clamp(piece.spot().y(), 0, pieces.line().length() + Layout.RUN_OUT);
    return piece.spot().distanceTo(new Spot(0, along));
  }

  private void lookAtSpacing() {
    RuleBody rules = question.rules();
    double spacing = question.setup().spacing();
    if (rules != null && !rules.allows(spacing)) {
      warnings.add(new LayoutWarning.SpacingOutsideRules(rules, spacing));
    }
  }

  private void lookAtTapes(Pegs pegs) {
    double longest = 0;
    for (Piece piece : pieces.all()) {
      double degrees = Math.toDegrees(Math.asin(Math.min(1, pegs.crossing(piece.spot()))));
      if (degrees < CROSSING_LEAST) {
        warnings.add(new LayoutWarning.TapesNearlyInLine(piece, degrees));
      }
      Pegs.Tapes tapes = pegs.tapesTo(piece.spot());
      longest = Math.max(longest, Math.max(tapes.fromA(), tapes.fromB()));
    }
    if (longest > TAPE_USUAL) {
      warnings.add(new LayoutWarning.LongTape(longest));
    }
  }
}
