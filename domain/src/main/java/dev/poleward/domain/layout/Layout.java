package dev.poleward.domain.layout;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A setup on the ground.
 *
 * @param question what was asked
 * @param pieces each in its place
 * @param pegs where the tapes begin
 * @param path the dog's way into the entry gap; absent where it is not said where the dog comes
 *     from, or no way leads there
 * @param turning absent where the line is not turned
 * @param fit on the ground; absent where nothing is said of it
 * @param moves absent where nothing stands
 * @param warnings what should be looked at
 */
public record Layout(
    LayoutQuestion question,
    Pieces pieces,
    Pegs pegs,
    @Nullable BoundedPath path,
    @Nullable TurningTable turning,
    @Nullable GroundFit fit,
    @Nullable Moves moves,
    List<LayoutWarning> warnings) {

  /** Metres beyond the last pole that belong to the dog [C]. */
  public static final double RUN_OUT = 2;

  /**
   * Metres behind where the dog comes from: the end of the tunnel, the last stride to a jump [C].
   */
  public static final double BEHIND_THE_START = 1.5;

  private static final double SPOTS_APART = 0.25;

  /** Keeps the warnings from changing. */
  public Layout {
    warnings = List.copyOf(warnings);
  }

  /** Lays it out. */
  public static Layout of(LayoutQuestion question) {
    Pieces pieces = pieces(question.setup(), question);
    BoundedPath path =
        pieces.start() == null
            ? null
            : DogsPath.of(pieces.line(), pieces.start(), question.turningRadius()).orElse(null);
    Pegs pegs = question.pegs() == null ? PegChoice.of(pieces, path) : question.pegs();
    LayoutQuestion.Turning turning = question.turning();
    LayoutQuestion.Ground ground = question.ground();
    GroundFit fit =
        ground == null
            ? null
            : GroundFit.of(spots(pieces, path), ground.length(), ground.width(), ground.around());
    return new Layout(
        question,
        pieces,
        pegs,
        path,
        turning == null
            ? null
            : TurningTable.of(pieces.line(), turning.degreesEach(), turning.to()),
        fit,
        moves(question, pieces),
        LayoutWarnings.of(question, pieces, pegs, path, fit));
  }

  private static Pieces pieces(Setup setup, LayoutQuestion question) {
    return Pieces.of(setup, LayoutQuestion.LEAD_IN_USUAL, question.jumpWidth());
  }

  private static @Nullable Moves moves(LayoutQuestion question, Pieces pieces) {
    if (question.standing() == null) {
      return null;
    }
    Pieces standing = pieces(question.standing(), question);
    return question.stays() == null
        ? Moves.between(standing, pieces)
        : Moves.between(standing, pieces, question.stays());
  }

  private static List<Spot> spots(Pieces pieces, @Nullable BoundedPath path) {
    List<Spot> spots = new ArrayList<>(pieces.all().stream().map(Piece::spot).toList());
    spots.add(new Spot(0, pieces.line().length() + RUN_OUT));
    if (pieces.start() != null) {
      spots.add(pieces.start().spot().ahead(pieces.start().heading(), -BEHIND_THE_START));
    }
    if (path != null) {
      spots.addAll(path.spots(SPOTS_APART));
    }
    return spots;
  }
}
