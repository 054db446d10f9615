package dev.poleward.domain.running;

import dev.poleward.domain.layout.Setup;
import dev.poleward.domain.running.RunningOrder.LeftOut;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The turns that are still to be run, in the order in which they have a right to the time: who has
 * had fewer turns comes first, then who comes first in the question.
 */
final class FairTurns {

  /**
   * A turn, by numbers.
   *
   * @param round how many turns of the dog come before it, those that it ran too
   */
  record FairTurn(int dog, int setup, int round) {}

  private final List<Setup> setups = new ArrayList<>();
  private final List<FairTurn> turns = new ArrayList<>();
  private final List<LeftOut> tooLong = new ArrayList<>();

  /**
   * @param rested from when on each dog may run, in the order of the question
   */
  FairTurns(RunningQuestion question, int[] rested) {
    Map<Setup, Integer> numbers = new HashMap<>();
    for (int dog = 0; dog < question.dogs().size(); dog++) {
      String name = question.dogs().get(dog);
      List<Setup> ran = ran(question, name);
      int round = ran.size();
      int starts = rested[dog];
      for (Wanted wanted : question.wanted()) {
        if (!wanted.dog().equals(name)) {
          continue;
        }
        Setup setup = AsItStands.of(wanted.setup());
        for (int turn = 0; turn < wanted.turns(); turn++) {
          if (ran.remove(setup)) {
            continue;
          }
          if (starts + question.pace().turn() > question.seconds()) {
            tooLong.add(new LeftOut(name, setup, LeftOut.Reason.RESTS_TOO_LONG));
            continue;
          }
          int number = numbers.computeIfAbsent(setup, _ -> numbers.size());
          if (number == setups.size()) {
            setups.add(setup);
          }
          turns.add(new FairTurn(dog, number, round++));
          starts += question.pace().turn() + question.pace().rest();
        }
      }
    }
    turns.sort(Comparator.comparingInt(FairTurn::round));
  }

  private static List<Setup> ran(RunningQuestion question, String dog) {
    List<Setup> ran = new ArrayList<>();
    for (Ran turn : question.ran()) {
      if (turn.dog().equals(dog)) {
        ran.add(AsItStands.of(turn.setup()));
      }
    }
    return ran;
  }

  /** Distinct setups as they stand, in the order in which they are first wanted. */
  List<Setup> setups() {
    return setups;
  }

  List<FairTurn> turns() {
    return turns;
  }

  /** Turns for which their dog alone has no time. */
  List<LeftOut> tooLong() {
    return tooLong;
  }
}
