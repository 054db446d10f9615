package dev.poleward.domain.layout;

/**
 * Something that is put in its place on the ground.
 *
 * @param kind what it is
 * @param name what it is called, such as {@code pole-3}; no two of a layout are called the same
 * @param spot where its middle stands
 */
public record Piece(Kind kind, String name, Spot spot) {

  /** What pieces there are. Pieces of one kind may take each other's places. */
  public enum Kind {
    POLE,
    /** One of the two ends of the bar. */
    WING,
    /** The middle of the end that the dog comes out of. */
    TUNNEL,
    /** Where the handler puts the dog. Nothing is carried there. */
    START
  }
}
