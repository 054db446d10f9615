package dev.poleward.domain.judgement;

import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.DrillMatch;
import dev.poleward.domain.programme.DrillOfStage;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.programme.Stage;
import dev.poleward.domain.programme.StageKind;
import dev.poleward.domain.record.PlacedRep;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Reads a dog's reps one after the other, ascending by (time, id), and tells at any time where it
 * stands. For one thread.
 */
public final class StandingReading {

  private final Syllabus syllabus;
  private final List<PoolReading> pools = new ArrayList<>();

  /** Ids of stages before the one where the dog was said to start. */
  private final Set<String> passedOver;

  private final List<TimedReturn> returns = new ArrayList<>();

  private StandingReading(Programme programme, @Nullable String startStage) {
    this.syllabus = Syllabus.of(programme);
    this.passedOver = passedOver(programme, startStage);
    syllabus.places().forEach(place -> pools.add(new PoolReading(place)));
  }

  /**
   * Before the first rep.
   *
   * @param startStage where the dog was said to start; null for the beginning
   */
  public static StandingReading begun(Programme programme, @Nullable String startStage) {
    return new StandingReading(programme, startStage);
  }

  /**
   * Goes on under another programme, or another version: what was learned stays learned. A rung
   * that the new one judges exactly as the old one goes on where it was. Any other is taken for
   * moved on from when all its drills were, whatever the rules of then; else its evidence begins
   * anew.
   */
  public StandingReading under(Programme other, @Nullable String startStage) {
    StandingReading next = new StandingReading(other, startStage);
    Map<Drill, PoolReading> solid = solidDrills();
    boolean sameProgramme = programme().id().equals(other.id());
    next.pools.replaceAll(
        begun -> {
          Optional<PoolReading> goingOn =
              sameProgramme
                  ? pools.stream().filter(begun::isJudgedLike).findFirst()
                  : Optional.empty();
          if (goingOn.isEmpty()) {
            begun.alreadyRan(pools);
            takeOver(begun, solid);
          }
          return goingOn.orElse(begun);
        });
    next.returns.addAll(returns);
    return next;
  }

  private Map<Drill, PoolReading> solidDrills() {
    Map<Drill, PoolReading> solid = new HashMap<>();
    for (PoolReading pool : pools) {
      if (pool.isSolid()) {
        pool.pool().drills().forEach(drill -> solid.putIfAbsent(drill, pool));
      }
    }
    return solid;
  }

  private static void takeOver(PoolReading begun, Map<Drill, PoolReading> solid) {
    Instant since = null;
    Instant last = null;
    for (Drill drill : begun.pool().drills()) {
      PoolReading before = solid.get(drill);
      if (before == null || before.movedOn() == null) {
        return;
      }
      since = later(since, before.movedOn());
      last = later(last, before.practised());
    }
    if (since != null) {
      begun.alreadySolid(since, last);
    }
  }

  private static @Nullable Instant later(@Nullable Instant one, @Nullable Instant other) {
    if (one == null || other == null) {
      return one == null ? other : one;
    }
    return one.isAfter(other) ? one : other;
  }

  private static Set<String> passedOver(Programme programme, @Nullable String startStage) {
    Set<String> before = new HashSet<>();
    if (startStage != null && programme.stage(startStage).isPresent()) {
      for (Stage stage : programme.inOrder()) {
        if (stage.id().equals(startStage)) {
          break;
        }
        before.add(stage.id());
      }
    }
    return before;
  }

  /** The programme that is followed. */
  public Programme programme() {
    return syllabus.programme();
  }

  /** Where a rep belongs. */
  public DrillMatch match(PlacedRep rep) {
    return syllabus.matching().match(rep);
  }

  /** Reads a rep. */
  public StandingReading read(PlacedRep rep) {
    return read(match(rep), rep.outcome() == Outcome.CLEAN, rep.moment().time());
  }

  /** Reads a rep whose drills are known. */
  public StandingReading read(DrillMatch match, boolean clean, Instant time) {
    switch (match) {
      case DrillMatch.Counts(List<DrillOfStage> drills) -> drills.forEach(d -> ran(d, clean, time));
      case DrillMatch.Helped(List<DrillOfStage> drills) ->
          drills.forEach(each -> pools.get(place(each)).helped(each.drill(), time));
      case DrillMatch.Voided _, DrillMatch.NoDrill _ -> {
        // Nothing that a programme could say anything of.
      }
    }
    return this;
  }

  private void ran(DrillOfStage drill, boolean clean, Instant time) {
    int place = place(drill);
    PoolReading pool = pools.get(place);
    double away = pool.daysAway(time);
    if (pool.isSolid() && away >= Returns.DAYS_AWAY_MIN) {
      returns.add(new TimedReturn(time, new Return(away, clean, 1)));
    }
    pool.ran(drill.drill(), clean, time);
    syllabus.keptBy(place).forEach(each -> pools.get(each).practised(time));
  }

  private int place(DrillOfStage drill) {
    Integer place = syllabus.of(drill);
    if (place == null) {
      throw new IllegalArgumentException("not a drill of this programme: " + drill);
    }
    return place;
  }

  /** The verdict on what a drill belongs to, as cheaply as can be. */
  public RungJudgement judgement(DrillOfStage drill) {
    return pools.get(place(drill)).judgement();
  }

  /** First reps of what was solid after days without it, as they came. */
  public List<TimedReturn> returns() {
    return List.copyOf(returns);
  }

  /**
   * Where the dog stands.
   *
   * @param agedTo until when days without practice are counted
   * @param club how its club forgets, as {@link ExpectedRetention} tells it
   */
  public DogStanding standing(Instant agedTo, ClubRetention club) {
    Forgetting forgetting = Forgetting.of(returns, club, programme().cleanFloor());
    double dueAfter = forgetting.dueAfterDays();
    Set<String> done = done();
    List<StageStanding> stages = new ArrayList<>();
    for (Stage stage : programme().inOrder()) {
      List<String> waitsFor =
          stage.prerequisites().stream().filter(each -> !done.contains(each)).toList();
      boolean over = isPassedOver(stage);
      stages.add(
          new StageStanding(
              stage,
              state(stage, done, waitsFor),
              waitsFor,
              poolsOf(stage).stream().map(p -> p.standing(over, dueAfter, agedTo)).toList()));
    }
    return new DogStanding(programme(), stages, forgetting, agedTo);
  }

  /** When each slip began that still stands, in the programme's order. */
  public List<Instant> slips() {
    return programme().inOrder().stream()
        .flatMap(stage -> poolsOf(stage).stream())
        .map(PoolReading::slippedSince)
        .filter(Objects::nonNull)
        .toList();
  }

  private static StageState state(Stage stage, Set<String> done, List<String> waitsFor) {
    if (done.contains(stage.id())) {
      return StageState.DONE;
    }
    return waitsFor.isEmpty() ? StageState.OPEN : StageState.LOCKED;
  }

  private Set<String> done() {
    Set<String> done = new HashSet<>();
    for (Stage stage : programme().stages()) {
      if (isPassedOver(stage) || poolsOf(stage).stream().allMatch(PoolReading::isBehind)) {
        done.add(stage.id());
      }
    }
    return done;
  }

  /** A probe is not learned on the way, so that nobody is said to have left it behind. */
  private boolean isPassedOver(Stage stage) {
    return passedOver.contains(stage.id()) && stage.terms().kind() == StageKind.REGULAR;
  }

  private List<PoolReading> poolsOf(Stage stage) {
    return syllabus.ofStage(stage).stream().map(pools::get).toList();
  }
}
