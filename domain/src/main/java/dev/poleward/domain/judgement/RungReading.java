package dev.poleward.domain.judgement;

import dev.poleward.domain.programme.Handling;
import dev.poleward.domain.programme.MovingOnRule;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reads the reps of a rung one after the other. For one thread. */
final class RungReading {

  private final List<Handling> listed;
  private final MovingOnRule rule;
  private final MovingOnTest test;

  /** Empty where what was shown once stays shown. */
  private final Optional<SlipWatch> watch;

  /** Reps since the first, or since a slip was found. */
  private final List<HandledRep> reps = new ArrayList<>();

  private final Set<Handling> cleanOnce = new HashSet<>();

  private int read;
  private int missesInARow;
  private Evidence evidence;

  private boolean solid;

  /** While solid and watched, how far the watch has risen; else null. */
  private @Nullable CusumScore score;

  /** Index of the rep at which the watch left 0 for the last time. */
  private int since;

  private @Nullable Slip slip;

  RungReading(List<Handling> listed, MovingOnRule rule, Optional<SlipWatch> watch) {
    this.listed = listed;
    this.rule = rule;
    this.test = MovingOnTest.of(rule);
    this.watch = watch;
    this.evidence = test.begun();
  }

  void read(HandledRep rep) {
    if (listed.contains(rep.handling())) {
      reps.add(rep);
      if (rep.clean()) {
        cleanOnce.add(rep.handling());
      }
      boolean steppedBack = stepsBack();
      missesInARow = rep.clean() ? 0 : missesInARow + 1;
      if (!solid) {
        // Whoever steps back comes again later, and is tested anew.
        learn((steppedBack ? test.begun() : evidence).with(rep.clean()));
      } else if (score != null && watch.isPresent()) {
        look(score, watch.get().seen(score, rep.clean()));
      }
    }
    read++;
  }

  boolean isSolid() {
    return solid;
  }

  /** Takes it for moved on from, whatever was read. */
  void alreadySolid() {
    solid = true;
    slip = null;
    score = watch.map(SlipWatch::begun).orElse(null);
    cleanOnce.addAll(listed);
  }

  private void learn(Evidence seen) {
    evidence = seen;
    if (seen.decision() == Decision.MOVE_ON && missing().isEmpty()) {
      alreadySolid();
    }
  }

  private void look(CusumScore before, CusumScore seen) {
    since = before.sum() == 0 ? read : since;
    score = seen;
    if (seen.sounds()) {
      slip = new Slip(since, read);
      solid = false;
      score = null;
      evidence = test.begun();
      reps.clear();
    }
  }

  private boolean stepsBack() {
    return missesInARow >= rule.stepBackAfter();
  }

  private List<Handling> missing() {
    return listed.stream().filter(handling -> !cleanOnce.contains(handling)).toList();
  }

  RungJudgement judgement() {
    return new RungJudgement(
        standing(),
        verdict(),
        solid ? 0 : cleanRepsToDecide(),
        missing(),
        Misfit.among(listed, reps, rule.wrongMisfit()),
        slip);
  }

  private RungStanding standing() {
    if (solid) {
      return RungStanding.SOLID;
    }
    if (slip != null) {
      return RungStanding.SLIPPING;
    }
    return reps.isEmpty() ? RungStanding.UNTOUCHED : RungStanding.LEARNING;
  }

  private Verdict verdict() {
    if (solid) {
      return new Verdict.MoveOn(evidence);
    }
    if (stepsBack()) {
      return new Verdict.StepBack(evidence, missesInARow);
    }
    return evidence.decision() == Decision.HOLD
        ? new Verdict.Hold(evidence)
        : new Verdict.Undecided(evidence);
  }

  private int cleanRepsToDecide() {
    Evidence next = stepsBack() ? test.begun() : evidence;
    return Math.max(next.cleanRepsToDecide(), missing().size());
  }
}
