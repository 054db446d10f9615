package dev.poleward.domain.layout;

import java.util.ArrayList;
import java.util.List;

/**
 * A way of three parts, each an arc of one radius or straight, as the shortest ways of bounded
 * curvature are (Dubins 1957, American Journal of Mathematics 79:497-516).
 *
 * @param from where it begins
 * @param radius of the arcs, metres, above 0
 * @param word the kinds of its parts
 * @param parts metres of each part, none negative
 */
public record BoundedPath(Pose from, double radius, Word word, List<Double> parts) {

  /** The six kinds of shortest ways; left and right are the dog's. */
  public enum Word {
    LSL(Turn.LEFT, Turn.STRAIGHT, Turn.LEFT),
    LSR(Turn.LEFT, Turn.STRAIGHT, Turn.RIGHT),
    RSL(Turn.RIGHT, Turn.STRAIGHT, Turn.LEFT),
    RSR(Turn.RIGHT, Turn.STRAIGHT, Turn.RIGHT),
    RLR(Turn.RIGHT, Turn.LEFT, Turn.RIGHT),
    LRL(Turn.LEFT, Turn.RIGHT, Turn.LEFT);

    private final List<Turn> turns;

    Word(Turn first, Turn second, Turn third) {
      this.turns = List.of(first, second, third);
    }

    /** What the dog does in each part. */
    public List<Turn> turns() {
      return turns;
    }
  }

  /** What the dog does in a part. */
  public enum Turn {
    LEFT(-1),
    STRAIGHT(0),
    RIGHT(1);

    private final int sense;

    Turn(int sense) {
      this.sense = sense;
    }
  }

  /** Keeps the parts from changing. */
  public BoundedPath {
    parts = List.copyOf(parts);
  }

  /** Metres. */
  public double length() {
    return parts.stream().mapToDouble(Double::doubleValue).sum();
  }

  /** Degrees that the dog turns in all, whichever way. */
  public double turn() {
    double turn = 0;
    for (int i = 0; i < parts.size(); i++) {
      turn += Math.abs(word.turns().get(i).sense) * Math.toDegrees(parts.get(i) / radius);
    }
    return turn;
  }

  /** Where it ends. */
  public Pose end() {
    Pose at = from;
    for (int i = 0; i < parts.size(); i++) {
      at = along(at, word.turns().get(i), parts.get(i));
    }
    return at;
  }

  /**
   * Places on the way, its two ends and the ends of its parts among them.
   *
   * @param apart metres from one to the next at most, above 0
   */
  public List<Spot> spots(double apart) {
    List<Spot> spots = new ArrayList<>();
    spots.add(from.spot());
    Pose begin = from;
    for (int i = 0; i < parts.size(); i++) {
      Turn turn = word.turns().get(i);
      double part = parts.get(i);
      int steps = (int) Math.ceil(part / apart);
      for (int step = 1; step <= steps; step++) {
        spots.add(along(begin, turn, part * step / steps).spot());
      }
      begin = along(begin, turn, part);
    }
    return spots;
  }

  private Pose along(Pose begin, Turn turn, double metres) {
    if (turn == Turn.STRAIGHT) {
      return new Pose(begin.spot().ahead(begin.heading(), metres), begin.heading());
    }
    Spot centre = begin.spot().ahead(begin.heading().right(), turn.sense * radius);
    Heading heading =
        new Heading(begin.heading().degrees() + turn.sense * Math.toDegrees(metres / radius));
    return new Pose(centre.ahead(heading.right(), -turn.sense * radius), heading);
  }
}
