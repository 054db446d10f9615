package dev.poleward.service.demo;

import dev.poleward.domain.event.DogSide;
import dev.poleward.domain.event.Help;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.learner.RungByRung;
import dev.poleward.domain.learner.Task;
import java.util.Iterator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How far one dog has come on its way, by its own results, and what it runs next. The last step is
 * run again and again. For one thread.
 */
final class Course {

  private record Handling(Manoeuvre manoeuvre, @Nullable DogSide side) {}

  private static final List<Handling> FIRST =
      List.of(
          new Handling(Manoeuvre.ALONGSIDE, DogSide.LEFT),
          new Handling(Manoeuvre.ALONGSIDE, DogSide.RIGHT));

  private static final List<Handling> BARE =
      List.of(
          new Handling(Manoeuvre.SEND, null),
          new Handling(Manoeuvre.RECALL, null),
          new Handling(Manoeuvre.ALONGSIDE, DogSide.LEFT),
          new Handling(Manoeuvre.ALONGSIDE, DogSide.RIGHT));

  private static final List<Handling> BEHIND_SOMETHING =
      List.of(
          new Handling(Manoeuvre.ALONGSIDE, DogSide.RIGHT),
          new Handling(Manoeuvre.SEND, DogSide.LEFT),
          new Handling(Manoeuvre.LATERAL_DISTANCE, DogSide.LEFT),
          new Handling(Manoeuvre.REAR_CROSS, DogSide.LEFT),
          new Handling(Manoeuvre.ALONGSIDE, DogSide.LEFT),
          new Handling(Manoeuvre.RECALL, null),
          new Handling(Manoeuvre.LATERAL_DISTANCE, DogSide.RIGHT),
          new Handling(Manoeuvre.REAR_CROSS, DogSide.RIGHT));

  /** So many reps at a rung are handled plainly and paid well. */
  private static final int NEW_REPS = 4;

  private static final int EASIER_BY = 2;

  /** How much farther a look ahead goes, and how far at most, in degrees. */
  private static final double AHEAD_BY_CLOCK = 30;

  private static final double AHEAD_TURNED = 28.68;
  private static final double AHEAD_MAX = 120;

  private final Iterator<Step> further;
  private Step step;
  private RungByRung ladder;

  /** Counted on each entry side, or each handling would be run on one of them alone. */
  private final int[] handled = new int[2];

  private int easyReps;
  private int atRung;

  Course(List<Step> way) {
    this.further = way.iterator();
    this.step = further.next();
    this.ladder = new RungByRung(step.sizes(), step.repsASide());
  }

  Step step() {
    return step;
  }

  /** What the dog works on. */
  Task next() {
    Handling handling = handling();
    return task(step, ladder.next()).handled(handling.manoeuvre(), handling.side());
  }

  /** Something that it can do already, for the first rep and the last. */
  Task easy() {
    double size = step.sizes().get(Math.max(0, ladder.rung() - EASIER_BY));
    // The side of what comes next, so that nothing has to be moved across.
    double side = ladder.next().degrees() < 0 ? -1 : 1;
    Handling handling = FIRST.get(easyReps++ % FIRST.size());
    return task(step, new EntryAngle(side * size)).handled(handling.manoeuvre(), handling.side());
  }

  /** A look ahead: farther than what it works on. Failing it costs nothing. */
  Task ahead() {
    double degrees = ladder.next().degrees();
    double by = step.turned() ? AHEAD_TURNED : AHEAD_BY_CLOCK;
    double size = Math.min(AHEAD_MAX, Math.abs(degrees) + by);
    // To the hundredth, as it is read off the ground.
    double read = Math.rint(size * 100) / 100;
    return task(step, new EntryAngle(degrees < 0 ? -read : read));
  }

  static Task probe() {
    return task(Step.PROBE, EntryAngle.STRAIGHT);
  }

  private static Task task(Step step, EntryAngle angle) {
    return new Task(
        angle,
        step.poles(),
        step.leadIn(),
        step.backChainStep(),
        Manoeuvre.ALONGSIDE,
        DogSide.LEFT,
        Help.NONE);
  }

  private Handling handling() {
    List<Handling> listed =
        switch (step.leadIn()) {
          case NONE -> BARE;
          case JUMP, TUNNEL -> BEHIND_SOMETHING;
        };
    int turn = handled[side()];
    return isNew() ? FIRST.get(turn % FIRST.size()) : listed.get(turn % listed.size());
  }

  private int side() {
    return ladder.next().degrees() < 0 ? 1 : 0;
  }

  /** Whether the dog has hardly seen this rung yet. */
  boolean isNew() {
    return atRung < NEW_REPS;
  }

  /** How what {@link #next} said went. */
  void ran(boolean entryMade) {
    int before = ladder.rung();
    handled[side()]++;
    ladder.ran(entryMade);
    atRung = ladder.rung() == before ? atRung + 1 : 0;
    if (ladder.done()) {
      step = further.hasNext() ? further.next() : step;
      ladder = new RungByRung(step.sizes(), step.repsASide());
    }
  }
}
