package dev.poleward.domain.layout;

import java.util.Locale;

/**
 * A warning as it is told.
 *
 * @param id what kind of warning it is, for programs
 * @param text for people: what it is and what to do
 */
public record LayoutAdvice(String id, String text) {

  /** Puts a warning into words. */
  public static LayoutAdvice of(LayoutWarning warning) {
    return switch (warning) {
      case LayoutWarning.DoesNotFitTheGround(GroundFit fit, double length, double width) ->
          told(
              "does-not-fit-the-ground",
              "It needs %.1f m by %.1f m with the room around it, and there are %.1f m by %.1f m."
                  + " Bring the lead-in nearer, take fewer poles, or turn the line.",
              fit.lengthNeeded(),
              fit.widthNeeded(),
              length,
              width);
      case LayoutWarning.LeadInDistanceAssumed(double metres) ->
          told(
              "lead-in-distance-assumed",
              "Nobody said how far the lead-in stands from pole 1: drawn at %.1f m.",
              metres);
      case LayoutWarning.LeadInNear(double metres) ->
          told(
              "lead-in-near",
              "The lead-in stands %.2f m from pole 1; customary are %.1f to %.0f m. A fast"
                  + " dog may have to brake hard.",
              metres,
              LayoutWarnings.LEAD_IN_NEAREST,
              LayoutWarnings.LEAD_IN_FARTHEST);
      case LayoutWarning.LeadInFar(double metres) ->
          told(
              "lead-in-far",
              "The lead-in stands %.2f m from pole 1; customary are %.1f to %.0f m.",
              metres,
              LayoutWarnings.LEAD_IN_NEAREST,
              LayoutWarnings.LEAD_IN_FARTHEST);
      case LayoutWarning.ShortRunIntoSharpEntry(double metres, double angle) ->
          told(
              "short-run-into-sharp-entry",
              "%.2f m are a short run into an entry of %.0f degrees: the dog has to brake and bend"
                  + " at once. Give big and fast dogs more room, %.0f m and over.",
              metres,
              angle,
              LayoutWarnings.RUN_INTO_SHARP);
      case LayoutWarning.PieceInDogsLine(Piece piece, double metres, double clearance) ->
          told(
              "piece-in-dogs-line",
              "%s stands %.2f m from where the dog runs; keep %.2f m free.",
              capital(name(piece)),
              metres,
              clearance);
      case LayoutWarning.TurnTooTight(double radius) ->
          told(
              "turn-too-tight",
              "A dog that turns in a radius of %.1f m finds no way into the gap from here but"
                  + " through the poles, round their far end or all round. Bring it from farther off, or from less of an"
                  + " angle.",
              radius);
      case LayoutWarning.SpacingOutsideRules(RuleBody body, double spacing) ->
          told(
              "spacing-outside-rules",
              "The poles stand %.3f m apart; %s asks for %.3f m, as far as is known here. The rule"
                  + " book decides.",
              spacing,
              body.name(),
              body.spacing());
      case LayoutWarning.TapesNearlyInLine(Piece piece, double degrees) ->
          told(
              "tapes-nearly-in-line",
              "At %s the two tapes cross at %.0f degrees only: a small error moves it far. Put the"
                  + " pegs elsewhere.",
              name(piece),
              degrees);
      case LayoutWarning.LongTape(double metres) ->
          told("long-tape", "One tape is %.1f m long; most end at 30 m.", metres);
    };
  }

  /** A piece as people call it. */
  public static String name(Piece piece) {
    return switch (piece.kind()) {
      case POLE -> "pole " + piece.name().substring("pole-".length());
      case WING ->
          piece.name().equals("jump-left") ? "the jump's left wing" : "the jump's right wing";
      case TUNNEL -> "the tunnel's exit";
      case START -> "the dog's start";
    };
  }

  /** A move as people say it. */
  public static String text(Move move) {
    return switch (move) {
      case Move.Carry(Piece from, Piece _, double metres) when metres == 0 ->
          capital(name(from)) + " stays.";
      case Move.Carry(Piece from, Piece to, double metres) ->
          from.name().equals(to.name())
              ? format("%s moves by %.2f m.", capital(name(from)), metres)
              : format("%s becomes %s, %.2f m away.", capital(name(from)), name(to), metres);
      case Move.Bring(Piece to) -> "Bring " + name(to) + ".";
      case Move.TakeAway(Piece from) -> "Take " + name(from) + " away.";
    };
  }

  private static LayoutAdvice told(String id, String text, Object... about) {
    return new LayoutAdvice(id, format(text, about));
  }

  private static String format(String text, Object... about) {
    return String.format(Locale.ROOT, text, about);
  }

  private static String capital(String text) {
    return Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }
}
