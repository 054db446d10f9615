package dev.poleward.domain.running;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.layout.Setup;
import dev.poleward.domain.running.RunningOrder.OfPoleSet;
import dev.poleward.domain.running.RunningOrder.Standing;
import dev.poleward.domain.running.RunningOrder.Turn;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Running orders of up to eight setups, compared with the best of all there are: {@code
 * -Dclasses=10000} tries many, {@code -DclassSeed=77 -Dclasses=1} one.
 */
class RunningOrdersAgainstEveryOrderTest {

  private static final int CLASSES = Integer.getInteger("classes", 400);
  private static final long FIRST = Long.getLong("classSeed", 1);

  @Test
  void noOrderIsBetter() {
    int cutShort = 0;
    int waiting = 0;
    int largest = 0;
    for (long seed = FIRST; seed < FIRST + CLASSES; seed++) {
      GeneratedClass given = GeneratedClass.of(seed);
      EveryOrder.Best best = EveryOrder.of(given.question(), given.carrying());
      RunningOrder order = RunningOrders.of(given.question(), given.carrying());
      List<EveryOrder.Out> outs = outs(given.question(), order);

      String of = "class " + seed + ": " + given.question();
      assertThat(outs.size()).as("turns of " + of).isEqualTo(best.turns());
      assertThat(order.carried().amount()).as("metres of " + of).isEqualTo(best.metres());
      assertThat(order.waited().amount()).as("waits of " + of).isEqualTo(best.waits());
      assertThat(order.ends()).as("end of " + of).isEqualTo(best.ends());
      assertThat(named(given.question(), outs)).as("ties of " + of).isEqualTo(best.named());
      assertThat(order.isBest()).as("proof of " + of).isTrue();
      cutShort += order.leftOut().isEmpty() ? 0 : 1;
      waiting += best.waits() > 0 ? 1 : 0;
      largest +=
          given.question().wanted().stream().map(Wanted::setup).distinct().count() == 8 ? 1 : 0;
    }
    // The classes are worth nothing if they are all of one kind.
    assertThat(List.of(cutShort, waiting, largest)).allMatch(count -> count > CLASSES / 20);
  }

  private static List<EveryOrder.Out> outs(RunningQuestion question, RunningOrder order) {
    List<Setup> setups = question.wanted().stream().map(Wanted::setup).distinct().toList();
    List<EveryOrder.Out> outs = new ArrayList<>();
    for (int poleSet = 0; poleSet < order.poleSets().size(); poleSet++) {
      OfPoleSet of = order.poleSets().get(poleSet);
      for (Standing standing : of.standings()) {
        for (Turn turn : standing.turns()) {
          outs.add(
              new EveryOrder.Out(
                  poleSet,
                  setups.indexOf(standing.setup()),
                  question.dogs().indexOf(turn.dog()),
                  0,
                  turn.starts()));
        }
      }
    }
    outs.sort(
        Comparator.comparingInt(EveryOrder.Out::starts).thenComparingInt(EveryOrder.Out::poleSet));
    return outs;
  }

  private static List<String> named(RunningQuestion question, List<EveryOrder.Out> outs) {
    List<Setup> setups = question.wanted().stream().map(Wanted::setup).distinct().toList();
    return outs.stream()
        .map(
            out ->
                "%d: %s over %d poles on %d"
                    .formatted(
                        out.starts(),
                        question.dogs().get(out.dog()),
                        setups.get(out.setup()).poles(),
                        out.poleSet()))
        .toList();
  }
}
