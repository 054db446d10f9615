package dev.poleward.load.outlook;

import dev.poleward.domain.learner.Population;
import dev.poleward.domain.outlook.Ahead;
import dev.poleward.domain.outlook.Curriculum;
import dev.poleward.domain.outlook.LookingAhead;
import dev.poleward.domain.outlook.Notebook;
import dev.poleward.domain.outlook.Outlook;
import dev.poleward.domain.outlook.OutlookQuestion;
import dev.poleward.domain.outlook.RhythmAhead;
import dev.poleward.load.plan.ByPlan;
import dev.poleward.load.plan.Trainee;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * How far off outlooks are for dogs that follow plans: an outlook lets a plain trainer teach, who
 * knows none. For one thread.
 */
public final class ForeseenByPlan {

  /** As plans are compared with a fixed order. */
  private static final int REPS = 16;

  private final Kennel kennel;
  private final Curriculum curriculum;
  private final LimitsHeld limits = new LimitsHeld();
  private final LimitsHeld programme = new LimitsHeld();
  private final List<Double> ofMiddle = new ArrayList<>();

  private ForeseenByPlan(Kennel kennel) {
    this.kennel = kennel;
    this.curriculum = Curriculum.of(kennel.programme());
  }

  /** Looks ahead with so many dogs after so many weeks by plan, which go on by plan. */
  public static ForeseenByPlan of(Kennel kennel, Clubs clubs, int dogs, int weeks, long seed) {
    ForeseenByPlan foreseen = new ForeseenByPlan(kennel);
    for (int dog = 0; dog < dogs; dog++) {
      foreseen.add(clubs, dog, weeks, seed + dog);
    }
    return foreseen;
  }

  private void add(Clubs clubs, int number, int weeks, long seed) {
    Trainee dog =
        new Trainee(
            Population.CLUB.draw(new SplittableRandom(seed)), kennel.programme(), seed + 500_000);
    ByPlan trainer = new ByPlan();
    for (int session = 0; session < 2 * weeks; session++) {
      train(dog, trainer);
    }
    OutlookQuestion asked = Foreseen.asked(dog.reps().getLast().moment().time());
    Outlook outlook =
        LookingAhead.of(kennel.seen(dog.reps(), "dog-" + seed), asked, () -> clubs.of(number));
    if (outlook instanceof Outlook.Told told && !told.likeliest().programme().isReached()) {
      compare(told.likeliest(), sessionsToStages(dog, trainer, told.likeliest()));
    }
  }

  private static void train(Trainee dog, ByPlan trainer) {
    dog.nextSession();
    trainer.train(dog, REPS);
  }

  private int[] sessionsToStages(Trainee dog, ByPlan trainer, RhythmAhead ahead) {
    int[] done = new int[curriculum.stages().size()];
    Arrays.fill(done, Ahead.NEVER);
    note(dog, done, 0);
    int sessionsMax = (int) (ahead.horizon().toDays() / 7.0 * ahead.rhythm().sessionsPerWeek());
    for (int session = 1; session <= sessionsMax && last(done) == Ahead.NEVER; session++) {
      train(dog, trainer);
      note(dog, done, session);
    }
    return done;
  }

  private void note(Trainee dog, int[] done, int session) {
    Notebook notebook = Notebook.of(curriculum, dog.standing());
    for (int stage = 0; stage < done.length; stage++) {
      if (done[stage] == Ahead.NEVER && notebook.isDone(stage)) {
        done[stage] = session;
      }
    }
  }

  private static int last(int[] done) {
    return Arrays.stream(done).max().orElseThrow();
  }

  private void compare(RhythmAhead ahead, int[] truth) {
    limits.nextDog();
    for (int stage = 0; stage < truth.length; stage++) {
      if (truth[stage] > 0) {
        limits.add(ahead.stages().get(stage).reaching(), truth[stage]);
      }
    }
    programme.nextDog();
    programme.add(ahead.programme(), last(truth));
    double middle = ahead.programme().quantiles().middle().orElse(Ahead.NEVER);
    ofMiddle.add(last(truth) / middle);
  }

  /** How the limits of stages held. */
  public LimitsHeld limits() {
    return limits;
  }

  /** How those of the whole programme held. */
  public LimitsHeld programme() {
    return programme;
  }

  /** The median of what it took over what was told to be the middle. */
  public double ofMiddle() {
    List<Double> sorted = ofMiddle.stream().sorted().toList();
    return sorted.get(sorted.size() / 2);
  }

  /** Share of dogs that took no longer than what was told to be the middle. */
  public double byMiddle() {
    return (double) ofMiddle.stream().filter(each -> each <= 1).count() / ofMiddle.size();
  }
}
