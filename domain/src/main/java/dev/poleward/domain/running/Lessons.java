package dev.poleward.domain.running;

import dev.poleward.domain.layout.Setup;
import dev.poleward.domain.running.FairTurns.FairTurn;
import java.util.Arrays;
import java.util.List;

/** Makes lessons of some of the turns that are wanted. */
final class Lessons {

  /**
   * A lesson.
   *
   * @param setups its setups, by their numbers in the lesson
   */
  record Chosen(Lesson lesson, List<Setup> setups) {}

  private final RunningQuestion question;
  private final List<Setup> setups;
  private final Distances distances;

  Lessons(RunningQuestion question, List<Setup> setups, Distances distances) {
    this.question = question;
    this.setups = setups;
    this.distances = distances;
  }

  /** From when on each dog may run: when it is there, and has rested from what it ran. */
  static int[] rested(RunningQuestion question) {
    int[] rested = new int[question.dogs().size()];
    for (int dog = 0; dog < rested.length; dog++) {
      rested[dog] = Math.max(0, question.comes().getOrDefault(question.dogs().get(dog), 0));
    }
    for (Ran ran : question.ran()) {
      int dog = question.dogs().indexOf(ran.dog());
      if (dog >= 0) {
        rested[dog] = Math.max(rested[dog], ran.ended() + question.pace().rest());
      }
    }
    return rested;
  }

  /**
   * The lesson of some turns.
   *
   * @param busyMax seconds for which a pole set may be busy
   */
  Chosen of(List<FairTurn> turns, int busyMax) {
    int[] used = turns.stream().mapToInt(FairTurn::setup).distinct().sorted().toArray();
    int[][] counts = new int[used.length][question.dogs().size()];
    for (FairTurn turn : turns) {
      counts[Arrays.binarySearch(used, turn.setup())][turn.dog()]++;
    }
    List<Setup> chosen = Arrays.stream(used).mapToObj(setups::get).toList();
    Lesson lesson =
        new Lesson(
            distances.among(used),
            question.pace(),
            question.seconds(),
            busyMax,
            question.instructors(),
            counts,
            stands(chosen),
            lastDogs(),
            lastEnds(),
            rested(question),
            had(),
            apart());
    return new Chosen(lesson, chosen);
  }

  private int[] stands(List<Setup> chosen) {
    return question.poleSets().stream()
        .mapToInt(
            poleSet ->
                poleSet.stands() == null
                    ? Lesson.NONE
                    : chosen.indexOf(AsItStands.of(poleSet.stands())))
        .toArray();
  }

  private int[] lastDogs() {
    int[] last = new int[question.poleSets().size()];
    Arrays.fill(last, Lesson.NONE);
    for (int poleSet = 0; poleSet < last.length; poleSet++) {
      for (Ran ran : question.ran()) {
        if (ran.poleSet().equals(question.poleSets().get(poleSet).name())) {
          last[poleSet] = question.dogs().indexOf(ran.dog());
        }
      }
    }
    return last;
  }

  private int[] lastEnds() {
    int[] ends = new int[question.poleSets().size()];
    for (int poleSet = 0; poleSet < ends.length; poleSet++) {
      for (Ran ran : question.ran()) {
        if (ran.poleSet().equals(question.poleSets().get(poleSet).name())) {
          ends[poleSet] = ran.ended();
        }
      }
    }
    return ends;
  }

  private int[] had() {
    int[] had = new int[question.dogs().size()];
    for (Ran ran : question.ran()) {
      int dog = question.dogs().indexOf(ran.dog());
      if (dog >= 0) {
        had[dog]++;
      }
    }
    return had;
  }

  private boolean[][] apart() {
    boolean[][] apart = new boolean[question.dogs().size()][question.dogs().size()];
    for (Following following : question.apart()) {
      int after = question.dogs().indexOf(following.after());
      int dog = question.dogs().indexOf(following.dog());
      if (after >= 0 && dog >= 0) {
        apart[after][dog] = true;
      }
    }
    return apart;
  }
}
