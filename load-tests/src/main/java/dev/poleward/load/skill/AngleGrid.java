package dev.poleward.load.skill;

import java.util.stream.IntStream;

/** Which sizes of angle a dog is tried at, each as often as another. */
public enum AngleGrid {
  /** Straight on and three more. */
  EVERY_30_TO_90(30, 90),
  /** The half hours of a quarter of the clock. */
  EVERY_15_TO_90(15, 90),
  /** The half hours all the way round. */
  EVERY_15_TO_165(15, 165),
  /** Poles that are turned a little more each time. */
  EVERY_5_TO_90(5, 90);

  private final double[] sizes;

  AngleGrid(int step, int last) {
    sizes = IntStream.rangeClosed(0, last / step).mapToDouble(i -> i * step).toArray();
  }

  /** How many angles there are. */
  public int angles() {
    return sizes.length;
  }

  /** The size at an index from 0, in degrees. */
  public double size(int index) {
    return sizes[index];
  }

  /** The largest size. */
  public double greatest() {
    return sizes[sizes.length - 1];
  }
}
