package dev.poleward.domain.programme;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What is to be learned, as trainers wrote it. Always in order: whoever reads a document gets this
 * or its faults.
 *
 * @param id with the version it names one document
 * @param version from 1
 * @param cleanTarget share of clean reps that a session aims at, above 0 and below 1
 * @param cleanFloor share below which no session is to fall, below {@code cleanTarget}
 * @param stages in the document's order, never empty
 */
public record Programme(
    String id,
    int version,
    String name,
    @Nullable String description,
    double cleanTarget,
    double cleanFloor,
    List<Stage> stages) {

  /** Where a document does not say [C]. */
  public static final double CLEAN_TARGET_USUAL = 0.9;

  /** Where a document does not say [C]. */
  public static final double CLEAN_FLOOR_USUAL = 0.8;

  /** Drills of a whole programme; a document with more is refused. */
  public static final int DRILLS_MAX = 5_000;

  /** Keeps the stages from changing. */
  public Programme {
    stages = List.copyOf(stages);
  }

  /** The stage of that id. */
  public Optional<Stage> stage(String stage) {
    return stages.stream().filter(each -> each.id().equals(stage)).findFirst();
  }

  /**
   * The stages so that each comes after its prerequisites, and otherwise as the document lists
   * them.
   */
  public List<Stage> inOrder() {
    List<Stage> ordered = new ArrayList<>();
    List<Stage> left = new ArrayList<>(stages);
    Set<String> passed = new HashSet<>();
    while (!left.isEmpty()) {
      Stage next =
          left.stream()
              .filter(stage -> passed.containsAll(stage.prerequisites()))
              .findFirst()
              .orElseThrow(() -> new IllegalStateException("stages in a circle: " + id));
      left.remove(next);
      passed.add(next.id());
      ordered.add(next);
    }
    return ordered;
  }

  /** All drills, stage by stage. */
  public List<DrillOfStage> drills() {
    return stages.stream()
        .flatMap(stage -> stage.drills().stream().map(each -> new DrillOfStage(stage.id(), each)))
        .toList();
  }
}
