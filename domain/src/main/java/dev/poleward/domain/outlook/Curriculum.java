package dev.poleward.domain.outlook;

import dev.poleward.domain.event.BackChainStep;
import dev.poleward.domain.event.Help;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.judgement.ProgrammeEnd;
import dev.poleward.domain.layout.LeadIn;
import dev.poleward.domain.learner.Attempt;
import dev.poleward.domain.learner.Task;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.DrillMatch;
import dev.poleward.domain.programme.DrillMatching;
import dev.poleward.domain.programme.DrillOfStage;
import dev.poleward.domain.programme.Handling;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.programme.RungPool;
import dev.poleward.domain.programme.Stage;
import dev.poleward.domain.record.Moment;
import dev.poleward.domain.record.PlacedRep;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A programme, made ready to be gone through again and again: its stages in order, the pools that a
 * dog has to pass in each, the drills of each pool as tasks, and which pools a rep of a drill
 * counts for. Probes, and stages that ask for nothing but pressure, are not on the way to the end.
 * Immutable; safe for use by many threads.
 */
public final class Curriculum {

  /**
   * A drill of a pool.
   *
   * @param handling its place among the pool's handlings
   */
  public record Place(int pool, int handling) {}

  /**
   * One of a pool's drills.
   *
   * @param countsFor every place that a rep of it is evidence at
   */
  public record Exercise(Drill drill, Task task, int handling, List<Place> countsFor) {}

  /**
   * What one verdict is about.
   *
   * @param stage its place among the stages
   * @param across the pool of the same size on the other entry side; its own place without one
   */
  public record Pool(
      int stage, RungPool pool, List<Handling> handlings, List<Exercise> drills, int across) {

    /** A bit for each handling. */
    public long allHandlings() {
      return (1L << handlings.size()) - 1;
    }
  }

  private final Programme programme;
  private final List<Stage> stages;
  private final List<Pool> pools;

  private Curriculum(Programme programme, List<Stage> stages, List<Pool> pools) {
    this.programme = programme;
    this.stages = stages;
    this.pools = pools;
  }

  /** Makes a programme ready. */
  public static Curriculum of(Programme programme) {
    return new Making(programme).curriculum();
  }

  /** What was made ready. */
  public Programme programme() {
    return programme;
  }

  /** Those on the way to the end, each after its prerequisites. */
  public List<Stage> stages() {
    return stages;
  }

  /** Of all those stages, in their order. */
  public List<Pool> pools() {
    return pools;
  }

  /** What is put to the dog when it runs a drill. */
  public static Task task(Drill drill) {
    boolean bare = drill.runUp().step() == BackChainStep.POLES_ONLY;
    return new Task(
        drill.rung().angle(),
        drill.poles(),
        bare ? LeadIn.NONE : drill.runUp().leadIn(),
        drill.runUp().step(),
        drill.handling().manoeuvre(),
        drill.handling().dogSide(),
        Help.NONE);
  }

  /** Makes one. For one thread. */
  private static final class Making {

    private static final Moment WHENEVER = new Moment(Instant.EPOCH, "rep");
    private static final Attempt CLEAN = new Attempt(Outcome.CLEAN, null, 3, null);

    private final Programme programme;
    private final DrillMatching matching;
    private final List<Stage> stages;
    private final Map<DrillOfStage, Place> places = new HashMap<>();

    Making(Programme programme) {
      this.programme = programme;
      this.matching = DrillMatching.of(programme);
      this.stages = programme.inOrder().stream().filter(ProgrammeEnd::asksFor).toList();
    }

    Curriculum curriculum() {
      List<RungPool> all = new ArrayList<>();
      List<Integer> stageOf = new ArrayList<>();
      for (int stage = 0; stage < stages.size(); stage++) {
        for (RungPool pool : stages.get(stage).pools()) {
          if (pool.drills().isEmpty()) {
            continue;
          }
          List<Handling> handlings = handlings(pool);
          for (Drill drill : pool.drills()) {
            places.put(
                new DrillOfStage(stages.get(stage).id(), drill),
                new Place(all.size(), handlings.indexOf(drill.handling())));
          }
          all.add(pool);
          stageOf.add(stage);
        }
      }
      List<Pool> pools = new ArrayList<>();
      for (int i = 0; i < all.size(); i++) {
        pools.add(pool(all, stageOf, i));
      }
      return new Curriculum(programme, stages, List.copyOf(pools));
    }

    private Pool pool(List<RungPool> all, List<Integer> stageOf, int place) {
      RungPool pool = all.get(place);
      List<Handling> handlings = handlings(pool);
      int stage = stageOf.get(place);
      return new Pool(
          stage,
          pool,
          handlings,
          pool.drills().stream().map(each -> exercise(each, handlings)).toList(),
          across(all, stageOf, place));
    }

    private static List<Handling> handlings(RungPool pool) {
      return pool.drills().stream().map(Drill::handling).distinct().toList();
    }

    private static int across(List<RungPool> all, List<Integer> stageOf, int place) {
      RungPool one = all.get(place);
      for (int other = 0; other < all.size(); other++) {
        RungPool two = all.get(other);
        if (other != place
            && stageOf.get(other).equals(stageOf.get(place))
            && two.step() == one.step()
            && two.rung().size() == one.rung().size()) {
          return other;
        }
      }
      return place;
    }

    private Exercise exercise(Drill drill, List<Handling> handlings) {
      DrillMatch match = matching.match(asRun(drill));
      List<Place> countsFor = new ArrayList<>();
      if (match instanceof DrillMatch.Counts counts) {
        for (DrillOfStage each : counts.drills()) {
          Place place = places.get(each);
          if (place != null) {
            countsFor.add(place);
          }
        }
      }
      return new Exercise(
          drill, task(drill), handlings.indexOf(drill.handling()), List.copyOf(countsFor));
    }

    private static PlacedRep asRun(Drill drill) {
      return RecordedDog.placed(drill, CLEAN, null, WHENEVER, "dog", "session");
    }
  }
}
