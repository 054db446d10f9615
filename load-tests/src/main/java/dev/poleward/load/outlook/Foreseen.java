package dev.poleward.load.outlook;

import dev.poleward.domain.event.AimEvent.GoalSet;
import dev.poleward.domain.outlook.Ahead;
import dev.poleward.domain.outlook.DogCase;
import dev.poleward.domain.outlook.Goal;
import dev.poleward.domain.outlook.LookingAhead;
import dev.poleward.domain.outlook.Outlook;
import dev.poleward.domain.outlook.OutlookQuestion;
import dev.poleward.domain.outlook.OutlookTerms;
import dev.poleward.domain.outlook.RhythmAhead;
import dev.poleward.domain.outlook.RhythmAhead.StageAhead;
import dev.poleward.domain.outlook.Schooling;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Moment;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/**
 * How often the limits of outlooks hold, and goals are reached as often as they were said to be: a
 * dog is looked ahead with, and then goes on itself, under a plain trainer and at its own rhythm.
 * For one thread.
 */
public final class Foreseen {

  /** Days in which goals are to be reached. */
  private static final int[] GOALS_AHEAD = {28, 56, 112, 182, 364};

  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

  private final Kennel kennel;
  private final LimitsHeld limits = new LimitsHeld();
  private final GoalsReached goals = new GoalsReached();
  private long nanos;
  private int outlooks;

  private Foreseen(Kennel kennel) {
    this.kennel = kennel;
  }

  /** Looks ahead with so many dogs after so many weeks each. */
  public static Foreseen of(Kennel kennel, Clubs clubs, int dogs, int weeks, long seed) {
    Foreseen foreseen = new Foreseen(kennel);
    for (int dog = 0; dog < dogs; dog++) {
      Schooling schooling = kennel.dog(seed + dog, weeks);
      if (!schooling.notebook().isFinished()) {
        foreseen.add(schooling, clubs, dog, seed + 500_000 + dog);
      }
    }
    return foreseen;
  }

  /** What is asked of a record that ends today. */
  static OutlookQuestion asked(Instant last) {
    LocalDate today = last.atZone(ZoneOffset.UTC).toLocalDate();
    Instant agedTo = today.plusDays(1).atStartOfDay(ZoneOffset.UTC).toInstant();
    return new OutlookQuestion(today, agedTo, null, null, OutlookTerms.USUAL);
  }

  private void add(Schooling schooling, Clubs clubs, int dog, long luck) {
    OutlookQuestion asked = asked(schooling.reps().getLast().moment().time());
    long begun = THREADS.getCurrentThreadCpuTime();
    DogCase seen = kennel.seen(schooling.reps(), "dog-" + luck);
    Outlook outlook = LookingAhead.of(seen, asked, () -> clubs.of(dog));
    nanos += THREADS.getCurrentThreadCpuTime() - begun;
    outlooks++;
    if (outlook instanceof Outlook.Told told) {
      RhythmAhead ahead = told.likeliest();
      int[] truth =
          Ahead.sessionsToStages(
              schooling.dog(),
              schooling.notebook().copy(),
              ahead.rhythm(),
              asked.agedTo(),
              ahead.horizon(),
              new SplittableRandom(luck));
      limits.nextDog();
      for (int stage = 0; stage < truth.length; stage++) {
        StageAhead end = ahead.stages().get(stage);
        if (truth[stage] > 0) {
          limits.add(end.reaching(), truth[stage]);
          goals(end.stage().id(), truth[stage], told, seen, asked);
        }
      }
    }
  }

  private void goals(
      String stage, int truth, Outlook.Told told, DogCase seen, OutlookQuestion asked) {
    List<Fact<GoalSet>> set = new ArrayList<>();
    for (int days : GOALS_AHEAD) {
      set.add(goal(stage, asked.today().plusDays(days)));
    }
    for (Goal goal : Goal.of(set, told, seen, asked)) {
      if (goal.chance() != null) {
        boolean reached =
            truth != Ahead.NEVER
                && !told.likeliest().dayOf(truth, told.from()).isAfter(goal.set().event().by());
        goals.add(goal.chance().value(), reached);
      }
    }
  }

  private static Fact<GoalSet> goal(@Nullable String stage, LocalDate by) {
    return new Fact<>(
        new Moment(Kennel.BEGIN, "goal"), Kennel.BEGIN, new GoalSet("dog", by, stage), null);
  }

  /** How the limits held. */
  public LimitsHeld limits() {
    return limits;
  }

  /** How goals were reached. */
  public GoalsReached goals() {
    return goals;
  }

  /** Milliseconds of processor time that an outlook took, on average. */
  public double millis() {
    return nanos / 1e6 / outlooks;
  }
}
