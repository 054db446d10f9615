package dev.poleward.domain.layout;

import java.util.ArrayList;
import java.util.List;

/**
 * How a line of poles is turned about pole 1 in even steps, to either side in turns.
 *
 * @param degreesEach how far it turns from rung to rung on one side
 * @param rungs the rungs of one side, ascending; the other side has the same
 */
public record TurningTable(double degreesEach, List<TurnedRung> rungs) {

  /** Most rungs of a side. */
  public static final int RUNGS_MAX = 180;

  /** What is left at the end and is not worth a rung, degrees. */
  private static final double NO_STEP = 1e-9;

  /**
   * One angle, on either side.
   *
   * @param degrees how far the line has turned from straight on
   * @param lastPoleMoves metres from where the last pole stood one rung before on the same side
   * @param swing metres from where it stands on one side to where it stands on the other
   */
  public record TurnedRung(double degrees, double lastPoleMoves, double swing) {}

  /** Keeps the rungs from changing. */
  public TurningTable {
    rungs = List.copyOf(rungs);
  }

  /**
   * The table for a line.
   *
   * @param degreesEach above 0, and such that there are at most {@link #RUNGS_MAX} rungs
   * @param to where it ends, above 0 and below 180 degrees
   */
  public static TurningTable of(PoleLine line, double degreesEach, double to) {
    int whole = (int) Math.floor(to / degreesEach + NO_STEP);
    boolean ends = to - whole * degreesEach > NO_STEP;
    int count = whole + (ends ? 1 : 0);
    if (!(degreesEach > 0) || count < 1 || count > RUNGS_MAX) {
      throw new IllegalArgumentException(
          "no table in steps of " + degreesEach + " to " + to + " degrees");
    }
    List<TurnedRung> rungs = new ArrayList<>();
    double before = 0;
    for (int rung = 1; rung <= count; rung++) {
      double degrees = rung == count ? to : rung * degreesEach;
      rungs.add(
          new TurnedRung(
              degrees, line.chordOfTurn(degrees - before), line.chordOfTurn(2 * degrees)));
      before = degrees;
    }
    return new TurningTable(degreesEach, rungs);
  }

  /** Setups when both sides take turns. */
  public int setups() {
    return 2 * rungs.size();
  }

  /** Degrees of the last step, which may be a shorter one. */
  public double lastStep() {
    int last = rungs.size() - 1;
    return rungs.get(last).degrees() - (last == 0 ? 0 : rungs.get(last - 1).degrees());
  }

  /** Metres that the last pole is carried in all, from straight on to the last setup. */
  public double carried(PoleLine line) {
    double carried = 0;
    double before = 0;
    for (TurnedRung rung : rungs) {
      carried += line.chordOfTurn(before + rung.degrees()) + rung.swing();
      before = rung.degrees();
    }
    return carried;
  }
}
