package dev.poleward.domain.report;

import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.judgement.PoolStanding;
import dev.poleward.domain.programme.Rung;
import dev.poleward.domain.programme.RungPool;
import dev.poleward.domain.programme.Stage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A rung that dogs of a class are stuck on.
 *
 * @param programme id of the programme that it belongs to
 * @param stage as the first of these dogs has it
 * @param stuck ids of the dogs that are stuck on it, ascending, never empty
 * @param worked how many dogs worked on it within the span, those that moved on from it too
 */
public record StuckOn(
    String programme, Stage stage, RungPool pool, List<String> stuck, int worked) {

  /** Keeps the dogs from changing. */
  public StuckOn {
    stuck = List.copyOf(stuck);
  }

  private record Place(String programme, String stage, Rung rung, @Nullable BackChainStep step) {}

  /** One dog's work on a rung. */
  private record Of(String dog, WorkedRung rung) {}

  /**
   * Those that most dogs are stuck on first; of as many, in the order in which the pages have them.
   */
  static List<StuckOn> among(List<DogPage> pages) {
    Map<Place, List<Of>> work = new LinkedHashMap<>();
    for (DogPage page : pages) {
      for (WorkedRung rung : page.worked()) {
        PoolStanding pool = rung.standing();
        work.computeIfAbsent(
                new Place(
                    page.end().standing().programme().id(),
                    pool.stage().id(),
                    pool.pool().rung(),
                    pool.pool().step()),
                _ -> new ArrayList<>())
            .add(new Of(page.dog(), rung));
      }
    }
    List<StuckOn> all = new ArrayList<>();
    work.forEach(
        (place, of) -> {
          List<String> stuck =
              of.stream().filter(each -> each.rung().isStuck()).map(Of::dog).toList();
          if (!stuck.isEmpty()) {
            PoolStanding any = of.getFirst().rung().standing();
            all.add(new StuckOn(place.programme(), any.stage(), any.pool(), stuck, of.size()));
          }
        });
    all.sort(Comparator.comparingInt((StuckOn each) -> -each.stuck().size()));
    return all;
  }
}
