package dev.poleward.domain.running;

import dev.poleward.domain.running.FairTurns.FairTurn;
import dev.poleward.domain.running.RunningOrder.LeftOut;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Makes running orders. As many turns are run as there is time for, who has had fewer first; of
 * these least is carried, then least is waited, then it ends soonest. Draws nothing but from a
 * fixed seed: the same question has the same answer. For one thread.
 */
public final class RunningOrders {

  private static final int LOOKS_MAX = 20_000;
  private static final int LOOKS_MIN = 400;

  /** After so many looks at numbers of turns that are too many, each gets few, and some none. */
  private static final int LOOKS_IN_ALL_MAX = 45_000;

  private static final int SHAKES_MAX = 60;
  private static final int SHAKES_MIN = 4;
  private static final int LEAPS = 12;

  /** In so many steps pole sets are given less to do where dogs would not be through in time. */
  private static final int SHARES = 4;

  private final RunningQuestion question;
  private final FairTurns fair;
  private final Lessons lessons;
  private int looks;
  private int tries;

  /** Whether all numbers of turns that were passed by are known to be too many. */
  private boolean isMost = true;

  private RunningOrders(RunningQuestion question, Carrying carrying) {
    this.question = question;
    this.fair = new FairTurns(question, Lessons.rested(question));
    this.lessons =
        new Lessons(
            question, fair.setups(), Distances.of(fair.setups(), question.poleSets(), carrying));
  }

  /** The order of a class. */
  public static RunningOrder of(RunningQuestion question, Carrying carrying) {
    return new RunningOrders(question, carrying).made();
  }

  private RunningOrder made() {
    int count = mostTurns();
    while (count > 0) {
      Optional<RunningOrder> order = made(count);
      if (order.isPresent()) {
        return order.get();
      }
      int leap = looks < LOOKS_IN_ALL_MAX ? 1 : Math.max(1, count / LEAPS);
      isMost &= leap == 1;
      count -= leap;
    }
    return WrittenOrder.ofNothing(question, leftOut(0), isMost);
  }

  /** No more can be begun and ended in time, whatever they are. */
  private int mostTurns() {
    int lanes = Math.min(question.poleSets().size(), question.instructors());
    int each = question.seconds() / question.pace().turn();
    return Math.min(fair.turns().size(), lanes * each);
  }

  /** Empty when no order was found in which the first so many turns are through in time. */
  private Optional<RunningOrder> made(int count) {
    List<FairTurn> turns = fair.turns().subList(0, count);
    int shares = question.poleSets().size() == 1 ? 1 : SHARES;
    for (int share = shares; share > 0; share--) {
      Optional<RunningOrder> order = made(turns, question.seconds() * share / shares);
      if (order.isPresent()) {
        return order;
      }
    }
    return Optional.empty();
  }

  /** The same, where no pole set may be busy for longer than that. */
  private Optional<RunningOrder> made(List<FairTurn> turns, int busyMax) {
    Lessons.Chosen chosen = lessons.of(turns, busyMax);
    Optional<? extends Tours> tours = tours(chosen.lesson());
    if (tours.isEmpty()) {
      return Optional.empty();
    }
    TurnSearch.Outcome outcome =
        TurnSearch.of(
            chosen.lesson(),
            tours.get(),
            Math.max(LOOKS_MIN, Math.min(LOOKS_MAX, LOOKS_IN_ALL_MAX - looks)));
    looks += outcome.looks();
    return switch (outcome) {
      case TurnSearch.Outcome.Found found ->
          Optional.of(
              new WrittenOrder(question, chosen, turns)
                  .of(tours.get(), found, leftOut(turns.size()), isMost));
      case TurnSearch.Outcome.Late _ -> {
        isMost &= tours.get() instanceof ExactTours;
        yield Optional.empty();
      }
      case TurnSearch.Outcome.GivenUp _ -> {
        isMost = false;
        yield Optional.empty();
      }
    };
  }

  private Optional<? extends Tours> tours(Lesson lesson) {
    if (lesson.leastBusy() > lesson.poleSets() * lesson.busyMax) {
      return Optional.empty();
    }
    if (lesson.setups() <= ExactTours.SETUPS_MAX) {
      return ExactTours.of(lesson);
    }
    Optional<FoundTour> found = TourSearch.of(lesson, Math.max(SHAKES_MIN, SHAKES_MAX >> tries++));
    isMost &= found.isPresent();
    return found;
  }

  private List<LeftOut> leftOut(int count) {
    List<LeftOut> leftOut = new ArrayList<>();
    for (FairTurn turn : fair.turns().subList(count, fair.turns().size())) {
      leftOut.add(
          new LeftOut(
              question.dogs().get(turn.dog()),
              fair.setups().get(turn.setup()),
              LeftOut.Reason.TIME_IS_UP));
    }
    leftOut.addAll(fair.tooLong());
    return leftOut;
  }
}
