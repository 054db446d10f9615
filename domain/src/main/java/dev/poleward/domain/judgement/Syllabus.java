package dev.poleward.domain.judgement;

import dev.poleward.domain.programme.DefaultProgramme;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.DrillMatching;
import dev.poleward.domain.programme.DrillOfStage;
import dev.poleward.domain.programme.Handling;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.programme.RungPool;
import dev.poleward.domain.programme.Stage;
import dev.poleward.domain.programme.StageKind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A programme made ready for reading many dogs' reps. Immutable; safe for use by many threads. */
final class Syllabus {

  /**
   * What one verdict is about.
   *
   * @param watch what looks after it once it is solid; empty for probes: a failed probe costs
   *     nothing, and what a probe has shown stays shown
   */
  record Place(Stage stage, RungPool pool, List<Handling> handlings, Optional<SlipWatch> watch) {}

  /** Nearly every dog follows it at first; a constant like the programme itself. */
  private static final Syllabus OF_DEFAULT = new Syllabus(DefaultProgramme.programme());

  private final Programme programme;
  private final DrillMatching matching;
  private final List<Place> places = new ArrayList<>();
  private final Map<String, List<Integer>> ofStages = new HashMap<>();
  private final Map<DrillOfStage, Integer> ofDrills = new HashMap<>();

  /** What is kept fresh by a rep there, itself included. */
  private final List<List<Integer>> kept = new ArrayList<>();

  private Syllabus(Programme programme) {
    this.programme = programme;
    this.matching = DrillMatching.of(programme);
    for (Stage stage : programme.stages()) {
      Optional<SlipWatch> watch =
          stage.terms().kind() == StageKind.PROBE
              ? Optional.empty()
              : Optional.of(SlipWatch.after(stage.terms().rule()));
      List<Integer> ofStage = new ArrayList<>();
      for (RungPool pool : stage.pools()) {
        int place = places.size();
        ofStage.add(place);
        for (Drill drill : pool.drills()) {
          ofDrills.put(new DrillOfStage(stage.id(), drill), place);
        }
        places.add(new Place(stage, pool, RungJudgement.handlingsOf(pool), watch));
      }
      ofStages.put(stage.id(), ofStage);
    }
    places.forEach(place -> kept.add(keptBy(place)));
  }

  static Syllabus of(Programme programme) {
    return programme.equals(OF_DEFAULT.programme) ? OF_DEFAULT : new Syllabus(programme);
  }

  private List<Integer> keptBy(Place by) {
    List<Integer> all = new ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      Place place = places.get(i);
      if (PoolKeeping.keeps(by.stage(), by.pool(), place.stage(), place.pool())) {
        all.add(i);
      }
    }
    return all;
  }

  Programme programme() {
    return programme;
  }

  DrillMatching matching() {
    return matching;
  }

  List<Place> places() {
    return places;
  }

  List<Integer> ofStage(Stage stage) {
    return ofStages.getOrDefault(stage.id(), List.of());
  }

  @Nullable Integer of(DrillOfStage drill) {
    return ofDrills.get(drill);
  }

  List<Integer> keptBy(int place) {
    return kept.get(place);
  }
}
