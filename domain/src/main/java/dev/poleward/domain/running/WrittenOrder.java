package dev.poleward.domain.running;

import dev.poleward.domain.running.FairTurns.FairTurn;
import dev.poleward.domain.running.Floor.Step;
import dev.poleward.domain.running.RunningOrder.LeftOut;
import dev.poleward.domain.running.RunningOrder.Naive;
import dev.poleward.domain.running.RunningOrder.OfPoleSet;
import dev.poleward.domain.running.RunningOrder.Reached;
import dev.poleward.domain.running.RunningOrder.Standing;
import dev.poleward.domain.running.RunningOrder.Turn;
import java.util.ArrayList;
import java.util.List;

/** Writes out in names what was found in numbers. */
final class WrittenOrder {

  private final RunningQuestion question;
  private final Lessons.Chosen chosen;
  private final List<FairTurn> turns;

  /**
   * @param turns that are run
   */
  WrittenOrder(RunningQuestion question, Lessons.Chosen chosen, List<FairTurn> turns) {
    this.question = question;
    this.chosen = chosen;
    this.turns = turns;
  }

  /** Where nothing can be run. */
  static RunningOrder ofNothing(RunningQuestion question, List<LeftOut> leftOut, boolean isMost) {
    return new RunningOrder(
        question.poleSets().stream()
            .map(poleSet -> new OfPoleSet(poleSet.name(), List.of(), 0))
            .toList(),
        leftOut,
        isMost,
        new Reached(0, 0),
        new Reached(0, 0),
        0,
        new Naive(0, 0, 0));
  }

  RunningOrder of(
      Tours tours, TurnSearch.Outcome.Found found, List<LeftOut> leftOut, boolean isMost) {
    List<OfPoleSet> poleSets = new ArrayList<>();
    for (int poleSet = 0; poleSet < question.poleSets().size(); poleSet++) {
      int number = poleSet;
      poleSets.add(
          ofPoleSet(
              poleSet, found.steps().stream().filter(step -> step.poleSet() == number).toList()));
    }
    return new RunningOrder(
        poleSets,
        leftOut,
        isMost,
        new Reached(Distances.metres(tours.millimetres()), Distances.metres(tours.atLeast())),
        new Reached(found.worth().waits(), found.waitsAtLeast()),
        found.worth().end(),
        NaiveOrder.of(chosen.lesson(), setupsOfDogs()));
  }

  private OfPoleSet ofPoleSet(int poleSet, List<Step> steps) {
    List<Standing> standings = new ArrayList<>();
    int last = Lesson.NONE;
    for (int begin = 0; begin < steps.size(); ) {
      Step first = steps.get(begin);
      List<Turn> out = new ArrayList<>();
      int end = begin;
      for (; end < steps.size() && steps.get(end).setup() == first.setup(); end++) {
        Step step = steps.get(end);
        out.add(
            new Turn(
                question.dogs().get(step.dog()),
                step.starts(),
                step.starts() + question.pace().turn()));
      }
      standings.add(
          new Standing(
              chosen.setups().get(first.setup()),
              Distances.metres(chosen.lesson().distances.from(poleSet, last, first.setup())),
              first.starts() - first.waits(),
              out));
      last = first.setup();
      begin = end;
    }
    return new OfPoleSet(
        question.poleSets().get(poleSet).name(),
        standings,
        standings.isEmpty() ? 0 : standings.getLast().turns().getLast().ends());
  }

  /** Of the turns that are run, by dog, in the order in which the question wants them. */
  private List<List<Integer>> setupsOfDogs() {
    List<List<Integer>> setups = new ArrayList<>();
    question.dogs().forEach(_ -> setups.add(new ArrayList<>()));
    List<Integer> used = turns.stream().map(FairTurn::setup).distinct().sorted().toList();
    for (FairTurn turn : turns) {
      setups.get(turn.dog()).add(used.indexOf(turn.setup()));
    }
    return setups;
  }
}
