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

  private static final int TRIES_AT_ONCE = 30;

  private final RunningQuestion question;
  private final FairTurns fair;
  private final Lessons lessons;

  /** How many turns fewer to try next. */
  private int fewer = 1;

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
    for (int count = mostTurns(); count > 0; count -= fewer) {
      Optional<RunningOrder> order = made(count);
      if (order.isPresent()) {
        return order.get();
      }
    }
    return WrittenOrder.ofNothing(question, leftOut(0));
  }

  private int mostTurns() {
    int lanes = Math.min(question.poleSets().size(), question.instructors());
    int each = question.seconds() / question.pace().turn();
    return Math.min(fair.turns().size(), lanes * each);
  }

  /** Empty when no order was found in which the first so many turns are through in time. */
  private Optional<RunningOrder> made(int count) {
    List<FairTurn> turns = fair.turns().subList(0, count);
    Lessons.Chosen chosen = lessons.of(turns);
    // With many setups each try takes its time, and the greatest number is no promise.
    fewer =
        chosen.lesson().setups() <= ExactTours.SETUPS_MAX ? 1 : Math.max(1, count / TRIES_AT_ONCE);
    return tours(chosen.lesson())
        .flatMap(
            tours ->
                TurnSearch.of(chosen.lesson(), tours)
                    .map(
                        found ->
                            new WrittenOrder(question, chosen, turns)
                                .of(tours, found, leftOut(count))));
  }

  private static Optional<? extends Tours> tours(Lesson lesson) {
    if (lesson.leastBusy() > lesson.poleSets() * lesson.seconds) {
      return Optional.empty();
    }
    return lesson.setups() <= ExactTours.SETUPS_MAX ? ExactTours.of(lesson) : TourSearch.of(lesson);
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
