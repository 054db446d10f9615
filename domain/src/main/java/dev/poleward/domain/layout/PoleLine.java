package dev.poleward.domain.layout;

/**
 * A line of poles.
 *
 * @param poles how many, 2 or more
 * @param spacing metres from pole to pole, above 0
 */
public record PoleLine(int poles, double spacing) {

  /** Refuses what is no line. */
  public PoleLine {
    if (poles < 2 || !(spacing > 0)) {
      throw new IllegalArgumentException("no line of poles: " + poles + " at " + spacing);
    }
  }

  /** Metres from the first pole to the last. */
  public double length() {
    return (poles - 1) * spacing;
  }

  /** Metres that the last pole moves at most when the line turns about pole 1. */
  public double longestChord() {
    return 2 * length();
  }

  /**
   * How far the line turns about pole 1 while the last pole moves by a chord of its circle.
   *
   * @param chord metres, 0 to {@link #longestChord()}
   * @return degrees, 0 to 180
   */
  public double turnOfChord(double chord) {
    if (!(chord >= 0 && chord <= longestChord())) {
      throw new IllegalArgumentException("the last pole cannot move by " + chord + " metres");
    }
    return 2 * Math.toDegrees(Math.asin(chord / longestChord()));
  }

  /**
   * How far the last pole moves when the line turns about pole 1.
   *
   * @param degrees 0 to 360
   * @return metres, the way straight across
   */
  public double chordOfTurn(double degrees) {
    return longestChord() * Math.sin(Math.toRadians(degrees) / 2);
  }
}
