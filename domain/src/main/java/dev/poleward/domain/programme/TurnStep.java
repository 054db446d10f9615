package dev.poleward.domain.programme;

import dev.poleward.domain.layout.PoleLine;

/** How far the line of poles is turned from one rung to the next. */
public sealed interface TurnStep {

  /**
   * A step said in degrees.
   *
   * @param degrees 0.5 to 90
   */
  record Degrees(double degrees) implements TurnStep {}

  /**
   * A step said as trainers think of it: by how much the last pole moves.
   *
   * @param metres 0.01 to 5
   */
  record Chord(double metres) implements TurnStep {}

  /** Degrees of one step on that line of poles; half a circle when the chord is longer than any. */
  default double degreesOn(PoleLine line) {
    return switch (this) {
      case Degrees step -> step.degrees();
      case Chord step -> line.turnOfChord(Math.min(step.metres(), line.longestChord()));
    };
  }
}
