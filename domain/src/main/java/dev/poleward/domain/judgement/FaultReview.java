package dev.poleward.domain.judgement;

import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.layout.EntryAngle;
import dev.poleward.domain.layout.Setup;
import dev.poleward.domain.mastery.Confidence;
import dev.poleward.domain.record.PlacedRep;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Which faults a dog makes, at which poles, from which angles and with which handling, against an
 * even spread. Void and helped reps are left out.
 *
 * @param all every rep that counts
 * @param helped how many were left out for help
 * @param lines by number of poles, ascending; of reps whose setup is known
 * @param angles of reps whose angle is known
 */
public record FaultReview(
    FaultGroup<String> all,
    int helped,
    List<FaultsOfLine> lines,
    FaultGroups<AngleBand> angles,
    FaultGroups<Manoeuvre> manoeuvres) {

  /** Keeps the lines from changing. */
  public FaultReview {
    lines = List.copyOf(lines);
  }

  /**
   * Looks at reps from one instant on to before another.
   *
   * @param reps of one dog
   */
  public static FaultReview of(List<PlacedRep> reps, Instant from, Instant until) {
    Reading reading = new Reading();
    for (PlacedRep rep : reps) {
      Instant time = rep.moment().time();
      if (rep.outcome() != Outcome.VOID && !time.isBefore(from) && time.isBefore(until)) {
        reading.read(rep);
      }
    }
    return reading.done();
  }

  /** Reads rep after rep. */
  private static final class Reading {

    private final FaultTally all = new FaultTally();
    private final Map<Integer, Line> lines = new TreeMap<>();
    private final FaultGroups.Collecting<AngleBand> angles = new FaultGroups.Collecting<>();
    private final FaultGroups.Collecting<Manoeuvre> manoeuvres = new FaultGroups.Collecting<>();
    private int helped;

    void read(PlacedRep rep) {
      if (rep.isHelped()) {
        helped++;
        return;
      }
      all.add(rep.outcome());
      manoeuvres.add(rep.manoeuvre(), rep.outcome());
      EntryAngle angle = rep.angle();
      if (angle != null) {
        angles.add(AngleBand.of(angle), rep.outcome());
      }
      Setup setup = rep.setup();
      if (setup != null) {
        lines.computeIfAbsent(setup.poles(), Line::new).read(rep);
      }
    }

    FaultReview done() {
      return new FaultReview(
          FaultGroup.ofAll("all", all),
          helped,
          lines.values().stream().map(Line::done).toList(),
          angles.done(),
          manoeuvres.done());
    }
  }

  /** Counts along one line. */
  private static final class Line {

    private final int[] faults;
    private int reps;
    private int withoutPole;

    Line(int poles) {
      this.faults = new int[poles];
    }

    void read(PlacedRep rep) {
      reps++;
      if (rep.outcome() == Outcome.CLEAN) {
        return;
      }
      Integer pole = pole(rep);
      if (pole == null || pole > faults.length) {
        withoutPole++;
      } else {
        faults[pole - 1]++;
      }
    }

    /** An entry is missed at the first pole, whoever says so or not. */
    private static @Nullable Integer pole(PlacedRep rep) {
      Integer said = rep.details().atPole();
      return said == null && rep.outcome() == Outcome.MISSED_ENTRY ? Integer.valueOf(1) : said;
    }

    FaultsOfLine done() {
      List<Integer> places = new ArrayList<>();
      for (int each : faults) {
        places.add(each);
      }
      return new FaultsOfLine(
          faults.length, reps, withoutPole, EvenSpread.of(places, Confidence.OF_95_PERCENT));
    }
  }
}
