package dev.poleward.domain.judgement;

import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.DrillOfStage;
import dev.poleward.domain.programme.RungPool;
import dev.poleward.domain.programme.Stage;
import dev.poleward.domain.programme.StageKind;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads the reps of what one verdict is about, as they come. For one thread. */
final class PoolReading {

  private static final double SECONDS_A_DAY = 86_400;
  private static final DrillTally NEVER_RUN = new DrillTally();

  private final Stage stage;
  private final RungPool pool;
  private final RungReading rung;
  private final Map<Drill, DrillTally> tallies = new HashMap<>();

  /** When each rep that the rung has read was run: a slip is told by its number. */
  private final List<Instant> times = new ArrayList<>();

  private @Nullable Instant movedOn;
  private @Nullable Instant practised;

  /** What the reps so far say; null when there was one since. */
  private @Nullable RungJudgement judged;

  PoolReading(Syllabus.Place place) {
    this.stage = place.stage();
    this.pool = place.pool();
    this.rung = new RungReading(place.handlings(), stage.terms().rule(), place.watch());
  }

  Stage stage() {
    return stage;
  }

  RungPool pool() {
    return pool;
  }

  boolean isSolid() {
    return rung.isSolid();
  }

  boolean isBehind() {
    return movedOn != null;
  }

  @Nullable Instant practised() {
    return practised;
  }

  /** Whether what this has read would be read alike for another pool. */
  boolean isJudgedLike(PoolReading other) {
    return pool.equals(other.pool)
        && stage.id().equals(other.stage.id())
        && stage.terms().equals(other.stage.terms());
  }

  /** Takes for moved on from what an earlier programme has moved on from. */
  void alreadySolid(Instant since, @Nullable Instant last) {
    rung.alreadySolid();
    movedOn = since;
    practised = last;
    judged = null;
  }

  /**
   * Takes over what was counted of its drills under what was followed before: they were run, though
   * they are no evidence here. A drill of the same stage goes before that of another.
   */
  void alreadyRan(List<PoolReading> before) {
    for (Drill drill : pool.drills()) {
      PoolReading from = null;
      for (PoolReading each : before) {
        if (each.tallies.containsKey(drill)
            && (from == null || each.stage.id().equals(stage.id()))) {
          from = each;
        }
      }
      if (from != null) {
        tallies.put(drill, from.tally(drill).copy());
      }
    }
  }

  @Nullable Instant movedOn() {
    return movedOn;
  }

  void ran(Drill drill, boolean clean, Instant time) {
    tally(drill).ran(clean, time);
    rung.read(new HandledRep(drill.handling(), clean));
    times.add(time);
    judged = null;
    if (movedOn == null && rung.isSolid()) {
      movedOn = time;
    }
  }

  void helped(Drill drill, Instant time) {
    tally(drill).helped(time);
  }

  private DrillTally tally(Drill drill) {
    return tallies.computeIfAbsent(drill, _ -> new DrillTally());
  }

  /** It, or something that asks for more of the same, was run. */
  void practised(Instant time) {
    practised = time;
  }

  /** Days without practice until then; at least 0, and 0 when it was never practised. */
  double daysAway(Instant until) {
    return practised == null
        ? 0
        : Math.max(0, Duration.between(practised, until).toSeconds() / SECONDS_A_DAY);
  }

  RungJudgement judgement() {
    RungJudgement known = judged;
    if (known == null) {
      known = rung.judgement();
      if (stage.terms().kind() == StageKind.PROBE) {
        known = known.withoutSteppingBack();
      }
      judged = known;
    }
    return known;
  }

  PoolStanding standing(boolean passedOver, double dueAfterDays, Instant agedTo) {
    RungJudgement judgement = judgement();
    Instant dueOn = dueOn(dueAfterDays);
    DrillState state = state(judgement.standing(), dueOn, agedTo);
    List<DrillStanding> drills =
        pool.drills().stream().map(drill -> standing(drill, state)).toList();
    return new PoolStanding(
        stage,
        pool,
        state,
        judgement,
        drills,
        passedOver && movedOn == null,
        movedOn,
        practised,
        dueOn,
        slippedSince());
  }

  /** When the slip began that still stands; null without one. */
  @Nullable Instant slippedSince() {
    Slip slip = judgement().slip();
    return slip == null ? null : times.get(slip.since());
  }

  private DrillStanding standing(Drill drill, DrillState state) {
    DrillTally tally = tallies.getOrDefault(drill, NEVER_RUN);
    return tally.standing(new DrillOfStage(stage.id(), drill), state);
  }

  /** Probes were a look ahead: nobody has to keep them up. */
  private @Nullable Instant dueOn(double dueAfterDays) {
    return practised == null || !rung.isSolid() || stage.terms().kind() == StageKind.PROBE
        ? null
        : practised.plusSeconds(Math.round(dueAfterDays * SECONDS_A_DAY));
  }

  private DrillState state(RungStanding standing, @Nullable Instant dueOn, Instant agedTo) {
    return switch (standing) {
      case UNTOUCHED ->
          tallies.values().stream().anyMatch(DrillTally::hasReps)
              ? DrillState.LEARNING
              : DrillState.UNTOUCHED;
      case LEARNING -> DrillState.LEARNING;
      case SLIPPING -> DrillState.SLIPPING;
      case SOLID -> dueOn != null && dueOn.isBefore(agedTo) ? DrillState.DUE : DrillState.SOLID;
    };
  }
}
