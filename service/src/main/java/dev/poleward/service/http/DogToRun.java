package dev.poleward.service.http;

import dev.poleward.domain.care.CareNote;
import dev.poleward.domain.care.Severity;
import dev.poleward.domain.layout.Setup;
import dev.poleward.domain.running.AsItStands;
import dev.poleward.domain.running.Wanted;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A dog with what it is to run.
 *
 * @param comes seconds from the beginning, from 0
 * @param planned whether its drills are those of its next plan
 * @param notes what care has to say
 * @param next what was planned for it, whether it runs that or not
 */
record DogToRun(
    String dog,
    String callName,
    int comes,
    boolean planned,
    List<DrillToRun> drills,
    List<CareNote> notes,
    NextSession next) {

  /** Whether care is why it runs nothing. */
  boolean isStopped() {
    return drills.isEmpty() && notes.stream().anyMatch(note -> note.severity() == Severity.STOP);
  }

  /** Its turns over each setup, in the order in which it comes to them. */
  List<Wanted> wanted(int repsPerTurn) {
    Map<Setup, Integer> reps = new LinkedHashMap<>();
    drills.forEach(drill -> reps.merge(AsItStands.of(drill.setup()), drill.reps(), Integer::sum));
    List<Wanted> wanted = new ArrayList<>();
    reps.forEach(
        (setup, count) -> wanted.add(new Wanted(dog, setup, Math.ceilDiv(count, repsPerTurn))));
    return wanted;
  }

  /** What it does in one of its turns over a setup, counted from 0. */
  List<DrillPart> turn(Setup standing, int turn, int repsPerTurn) {
    List<DrillPart> parts = new ArrayList<>();
    int begin = turn * repsPerTurn;
    int end = begin + repsPerTurn;
    int before = 0;
    for (DrillToRun drill : drills) {
      if (AsItStands.of(drill.setup()).equals(standing)) {
        int reps = Math.min(end, before + drill.reps()) - Math.max(begin, before);
        if (reps > 0) {
          parts.add(new DrillPart(drill, reps));
        }
        before += drill.reps();
      }
    }
    return parts;
  }

  /** Some of the reps of a drill. */
  record DrillPart(DrillToRun drill, int reps) {}
}
