package dev.poleward.domain.layout;

/** What is done with one piece, when one setup follows another. */
public sealed interface Move {

  /** What the piece is. */
  Piece.Kind kind();

  /**
   * It is carried, or stays where it stands.
   *
   * @param from the piece whose place it leaves
   * @param to the piece that it becomes
   * @param metres how far, straight; 0 where it stays
   */
  record Carry(Piece from, Piece to, double metres) implements Move {

    @Override
    public Piece.Kind kind() {
      return from.kind();
    }
  }

  /** It comes from where the equipment is kept, which is not known. */
  record Bring(Piece to) implements Move {

    @Override
    public Piece.Kind kind() {
      return to.kind();
    }
  }

  /** It goes to where the equipment is kept. */
  record TakeAway(Piece from) implements Move {

    @Override
    public Piece.Kind kind() {
      return from.kind();
    }
  }
}
