package dev.poleward.domain.programme;

import dev.poleward.domain.layout.ClockPosition;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.EntrySide;
import dev.poleward.domain.layout.PoleLine;
import dev.poleward.domain.programme.Entries.Clocks;
import dev.poleward.domain.programme.Entries.Turned;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads from where the dog enters in a stage. */
final class EntriesReading {

  private static final int CLOCKS_MAX = 23;

  private EntriesReading() {}

  /**
   * Reads the entries of a stage.
   *
   * @param line the poles that stand, where the stage says them
   */
  static @Nullable Entries read(Part stage, @Nullable PoleLine line) {
    Part part = stage.part("entries");
    if (part == null) {
      return null;
    }
    List<ClockPosition> clocks =
        part.texts(
            "clocks",
            CLOCKS_MAX,
            ClockPosition::read,
            "must be a clock position, whole or half hours, and not 6:00");
    Part rungs = part.part("rungs");
    Turned turned = rungs == null ? null : turned(rungs, line);
    if (part.has("clocks") == part.has("rungs")) {
      part.fault("must have clocks or rungs, one of the two");
      return null;
    }
    return turned == null && !clocks.isEmpty() ? new Clocks(clocks) : turned;
  }

  private static @Nullable Turned turned(Part rungs, @Nullable PoleLine line) {
    rungs.require("end");
    Double start = angle(rungs, "start");
    Double end = angle(rungs, "end");
    Double degrees = rungs.number("stepDegrees", d -> d >= 0.5 && d <= 90, "from 0.5 to 90");
    Double chord = rungs.number("stepChord", m -> m >= 0.01 && m <= 5, "from 0.01 to 5");
    EntrySide sides = rungs.choice("sides", EntrySide.class);
    boolean either = rungs.has("stepDegrees") != rungs.has("stepChord");
    if (!either && rungs.has("stepDegrees")) {
      rungs.fault("stepChord", "must not be given beside stepDegrees");
    } else if (!either) {
      rungs.fault("stepDegrees", "is required, or stepChord in its place");
    }
    double from = start == null ? 0 : start;
    if (end != null && end < from) {
      rungs.fault("end", "must not be below start");
      return null;
    }
    TurnStep step = step(degrees, chord);
    if (end == null || step == null || line == null || !either) {
      return null;
    }
    Turned turned = new Turned(from, end, step, sides == null ? EntrySide.BOTH : sides);
    return isWithin(rungs, turned, line) ? turned : null;
  }

  private static @Nullable Double angle(Part rungs, String name) {
    return rungs.number(name, d -> d >= 0 && EntryAngle.isAllowed(d), "from 0 to below 180");
  }

  private static @Nullable TurnStep step(@Nullable Double degrees, @Nullable Double chord) {
    if (degrees != null) {
      return new TurnStep.Degrees(degrees);
    }
    return chord == null ? null : new TurnStep.Chord(chord);
  }

  private static boolean isWithin(Part rungs, Turned turned, PoleLine line) {
    String member =
        switch (turned.step()) {
          case TurnStep.Degrees _ -> "stepDegrees";
          case TurnStep.Chord _ -> "stepChord";
        };
    if (turned.step() instanceof TurnStep.Chord(double chord)
        && turned.end() > turned.start()
        && chord > line.longestChord()) {
      rungs.fault(member, "is more than the last pole can move: the rungs lead nowhere");
      return false;
    }
    if (turned.rungsPerSide(line) > Entries.RUNGS_PER_SIDE_MAX) {
      rungs.fault(
          member,
          "is so short that a side has more than %d rungs".formatted(Entries.RUNGS_PER_SIDE_MAX));
      return false;
    }
    return true;
  }
}
