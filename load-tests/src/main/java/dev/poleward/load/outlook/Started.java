package dev.poleward.load.outlook;

import dev.poleward.domain.learner.Population;
import dev.poleward.domain.learner.SimulatedDog;
import dev.poleward.domain.outlook.Curriculum;
import dev.poleward.domain.outlook.Panel;
import dev.poleward.domain.outlook.RecordedDog;
import dev.poleward.domain.outlook.Schooling;
import dev.poleward.domain.outlook.StartingStage;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.programme.Stage;
import dev.poleward.domain.record.PlacedRep;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.SplittableRandom;

/**
 * How well the stage is found where a dog that nobody knows stands: it was taught elsewhere up to
 * some stage, and runs what is asked for. For one thread.
 */
public final class Started {

  private int dogs;
  private int right;
  private int near;
  private int tooFar;
  private int clear;
  private int undecided;
  private double reps;
  private final int repsMax;

  private Started(int repsMax) {
    this.repsMax = repsMax;
  }

  /**
   * So many dogs, each taught up to the beginning of one of the stages.
   *
   * @param repsMax that a dog runs of what is asked for
   */
  public static Started of(Programme programme, int dogs, int repsMax, long seed) {
    Started started = new Started(repsMax);
    Panel panel = Panel.of(programme);
    List<Stage> stages = Curriculum.of(programme).stages();
    for (int dog = 0; dog < dogs; dog++) {
      started.add(programme, panel, stages, dog % stages.size(), seed + dog);
    }
    return started;
  }

  private void add(Programme programme, Panel panel, List<Stage> stages, int truth, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    SimulatedDog dog = new SimulatedDog(Population.CLUB.draw(random));
    Schooling schooling = new Schooling("dog", dog, programme, random);
    Instant time = Kennel.BEGIN;
    for (int rep = 0; schooling.notebook().stage() < truth; rep++) {
      if (rep == 4_000) {
        return;
      }
      time = time.plus(rep % Kennel.REPS == 0 ? Kennel.APART : Duration.ofMinutes(1));
      schooling.session(time, 1);
    }
    Instant arrives = time.plus(Duration.ofDays(7));
    RecordedDog stranger = new RecordedDog("dog", dog, random);
    List<PlacedRep> run = stranger.reps();
    StartingStage found = StartingStage.of(panel, run, _ -> true);
    while (!found.next().isEmpty() && run.size() < repsMax) {
      Drill drill = found.next().getFirst().drill();
      Instant at = arrives.plusSeconds(120L * run.size());
      stranger.run(drill, at, "session", Schooling.PAID);
      found = StartingStage.of(panel, run, _ -> true);
    }
    dogs++;
    reps += run.size();
    Stage proposed = found.proposed();
    if (proposed == null) {
      undecided++;
      return;
    }
    int place = stages.indexOf(proposed);
    right += place == truth ? 1 : 0;
    near += Math.abs(place - truth) <= 1 ? 1 : 0;
    tooFar += place > truth ? 1 : 0;
    clear += found.clear() ? 1 : 0;
  }

  /** Dogs that came as far as they were to. */
  public int dogs() {
    return dogs;
  }

  /** Share for which the very stage was proposed. */
  public double right() {
    return (double) right / dogs;
  }

  /** Share for which it, or one next to it, was proposed. */
  public double near() {
    return (double) near / dogs;
  }

  /** Share for which a stage was proposed that comes later. */
  public double tooFar() {
    return (double) tooFar / dogs;
  }

  /** Share for which nothing was proposed. */
  public double undecided() {
    return (double) undecided / dogs;
  }

  /** Share that was clear by then. */
  public double clear() {
    return (double) clear / dogs;
  }

  /** Reps that were asked for, on average. */
  public double reps() {
    return reps / dogs;
  }
}
