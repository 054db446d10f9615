package dev.poleward.domain.layout;

/** What should be looked at before a dog runs over a layout. */
public sealed interface LayoutWarning {

  /** It needs more ground than there is. */
  record DoesNotFitTheGround(GroundFit fit, double length, double width) implements LayoutWarning {}

  /** Nobody said how far the lead-in stands from pole 1. */
  record LeadInDistanceAssumed(double metres) implements LayoutWarning {}

  /** The lead-in stands nearer to pole 1 than is customary. */
  record LeadInNear(double metres) implements LayoutWarning {}

  /** The lead-in stands farther from pole 1 than is customary. */
  record LeadInFar(double metres) implements LayoutWarning {}

  /** A short run into a sharp entry, which a fast dog can only make by braking hard. */
  record ShortRunIntoSharpEntry(double metres, double angle) implements LayoutWarning {}

  /** A piece stands too near to where the dog runs. */
  record PieceInDogsLine(Piece piece, double metres, double clearance) implements LayoutWarning {}

  /** No way of that radius leads into the gap without leading through the poles. */
  record TurnTooTight(double radius) implements LayoutWarning {}

  /** The spacing is not that of the rule body. */
  record SpacingOutsideRules(RuleBody body, double spacing) implements LayoutWarning {}

  /** Two tapes run so nearly along one line that a small error of theirs moves the piece far. */
  record TapesNearlyInLine(Piece piece, double crossingDegrees) implements LayoutWarning {}

  /** A tape is longer than most are. */
  record LongTape(double metres) implements LayoutWarning {}
}
