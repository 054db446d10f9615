package dev.poleward.domain.report;

import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.programme.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * How many dogs are on one stage.
 *
 * @param programme as the first of them has it
 * @param stage empty for those that are through
 * @param dogs ids, ascending, never empty
 */
public record StageCount(Programme programme, Optional<Stage> stage, List<String> dogs) {

  /** Keeps the dogs from changing. */
  public StageCount {
    dogs = List.copyOf(dogs);
  }

  /**
   * Counts dogs by stage: programme by programme, the stages as they can be gone through, those
   * that are through last.
   *
   * @param dogs ascending by id
   */
  static List<StageCount> of(List<DogGlance> dogs) {
    Map<String, List<DogGlance>> byProgramme = new TreeMap<>();
    dogs.forEach(
        dog -> byProgramme.computeIfAbsent(dog.programme().id(), _ -> new ArrayList<>()).add(dog));
    List<StageCount> counts = new ArrayList<>();
    byProgramme.values().forEach(of -> addStages(counts, of));
    return counts;
  }

  /**
   * Versions of a programme are counted together; of each stage the place in the latest is taken.
   */
  private static void addStages(List<StageCount> counts, List<DogGlance> dogs) {
    Programme latest =
        dogs.stream()
            .map(DogGlance::programme)
            .reduce((one, other) -> other.version() > one.version() ? other : one)
            .orElseThrow();
    Map<Integer, Map<String, List<DogGlance>>> byPlace = new TreeMap<>();
    for (DogGlance dog : dogs) {
      String stage = dog.stage().map(Stage::id).orElse("");
      byPlace
          .computeIfAbsent(place(latest, dog.stage()), _ -> new TreeMap<>())
          .computeIfAbsent(stage, _ -> new ArrayList<>())
          .add(dog);
    }
    byPlace.values().stream()
        .flatMap(each -> each.values().stream())
        .forEach(
            of ->
                counts.add(
                    new StageCount(
                        of.getFirst().programme(),
                        of.getFirst().stage(),
                        of.stream().map(DogGlance::dog).toList())));
  }

  private static int place(Programme programme, Optional<Stage> stage) {
    if (stage.isEmpty()) {
      return Integer.MAX_VALUE;
    }
    List<Stage> ordered = programme.inOrder();
    for (int i = 0; i < ordered.size(); i++) {
      if (ordered.get(i).id().equals(stage.get().id())) {
        return i;
      }
    }
    return Integer.MAX_VALUE - 1;
  }
}
