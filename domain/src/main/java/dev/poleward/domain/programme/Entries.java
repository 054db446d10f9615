package dev.poleward.domain.programme;

import dev.poleward.domain.layout.ClockPosition;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.layout.PoleLine;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** From where the dog enters in a stage. */
public sealed interface Entries {

  /** Straight on aside; a document that turns in more is refused. */
  int RUNGS_PER_SIDE_MAX = 360;

  /** Degrees; a last step shorter than this is none. */
  double SLIVER_DEGREES = 1e-6;

  /** A list of clock positions. */
  record Clocks(List<ClockPosition> positions) implements Entries {

    /** Keeps the positions from changing. */
    public Clocks {
      positions = List.copyOf(positions);
    }
  }

  /**
   * The line of poles turns about pole 1, a step at a time.
   *
   * @param start size of the first angle in degrees, 0 to below 180
   * @param end size of the last angle in degrees, {@code start} to below 180
   * @param sides to which sides; where both, in turns
   */
  record Turned(double start, double end, TurnStep step, EntrySide sides) implements Entries {

    /**
     * The sizes of the angles in degrees, ascending. The last step is cut off at {@code end}.
     *
     * @throws IllegalStateException when they are more than {@link Entries#RUNGS_PER_SIDE_MAX}
     */
    List<Double> sizes(PoleLine line) {
      double each = step.degreesOn(line);
      if (rungsPerSide(line) > RUNGS_PER_SIDE_MAX) {
        throw new IllegalStateException("too many rungs on a side: " + this);
      }
      List<Double> sizes = new ArrayList<>();
      for (int steps = 0; end - (start + steps * each) > SLIVER_DEGREES; steps++) {
        sizes.add(start + steps * each);
      }
      sizes.add(end);
      return sizes;
    }

    /** The rungs of that size: one when it is straight on. */
    private Stream<Rung> at(double size) {
      if (size == 0) {
        return Stream.of(new Rung(EntryAngle.STRAIGHT));
      }
      Rung pole = new Rung(new EntryAngle(size));
      Rung gap = new Rung(new EntryAngle(-size));
      return switch (sides) {
        case BOTH -> Stream.of(pole, gap);
        case POLE -> Stream.of(pole);
        case GAP -> Stream.of(gap);
      };
    }

    /** How many rungs a side has, straight on aside, counted without making them. */
    double rungsPerSide(PoleLine line) {
      double steps = Math.ceil((end - start - SLIVER_DEGREES) / step.degreesOn(line));
      return Math.max(0, steps) + (start > 0 ? 1 : 0);
    }
  }

  /**
   * The rungs in order: by the size of the angle, both sides of one size before the next size.
   *
   * @param line the poles that stand
   */
  default List<Rung> rungs(PoleLine line) {
    return switch (this) {
      case Clocks(List<ClockPosition> positions) ->
          positions.stream().map(ClockPosition::angle).map(Rung::new).distinct().sorted().toList();
      case Turned turned -> turned.sizes(line).stream().flatMap(turned::at).toList();
    };
  }
}
