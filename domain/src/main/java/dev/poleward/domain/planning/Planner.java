package dev.poleward.domain.planning;

import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.NextRung;
import dev.poleward.domain.judgement.NextRungs;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.DrillOfStage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Makes a session. What slips or is due is refreshed; then two or more rungs are worked on, the
 * entry sides in turn: those that can be expected to pass are tested, every handling in turn; those
 * that are too far are come nearer to by stepping stones; now and then something is tried before
 * its turn. It begins and ends with something solid, or with what can be expected to go as well as
 * that. With nothing of all that, what is solid is kept so.
 *
 * <p>Learns nothing and draws nothing: the same question has the same answer. For one thread.
 */
public final class Planner {

  private static final int REFRESHER_REPS = 1;
  private static final int MENDING_REPS = 4;

  /** So many reps of one lesson at most, before the other side has its turn [C]. */
  private static final int LESSON_REPS = 4;

  /** No lesson is harder than that, whatever the rest of the session makes up for [C]. */
  private static final double LESSON_MIN = 0.62;

  /** Refreshers and what is mended take at most one rep in so many [C]. */
  private static final int REFRESHERS_ONE_IN = 4;

  private final DogStanding dog;
  private final CleanForecast forecast;
  private final Ground ground;
  private final SolidDrills solid;
  private final SessionDraft session;
  private final List<NextRung> refreshers;

  private Planner(DogStanding dog, CleanForecast forecast, Ground ground) {
    this.dog = dog;
    this.forecast = forecast;
    this.ground = ground;
    this.solid = new SolidDrills(dog, ground, forecast);
    this.session = new SessionDraft(dog.programme(), forecast, solid, ground.limits());
    this.refreshers =
        NextRungs.of(dog, forecast).stream()
            .filter(next -> isRefresher(next.why()))
            .filter(next -> !ground.allowed(next.standing()).isEmpty())
            .toList();
  }

  private static boolean isRefresher(NextRung.Reason why) {
    return switch (why) {
      case SLIPPING, DUE -> true;
      case EASIER, FRONTIER, PROBE -> false;
    };
  }

  /** The plan for a dog that stands there and can be expected to do as well as that. */
  public static SessionPlan plan(
      DogStanding dog, CleanForecast forecast, Available available, Limits limits) {
    return new Planner(dog, forecast, new Ground(available, limits)).plan();
  }

  private SessionPlan plan() {
    List<Work> work = Work.of(dog, ground, forecast);
    Optional<Part> look = new LookAhead(dog, ground, forecast).today();
    begin(Stream.concat(parts(work).first().stream(), look.map(Part::work).stream()).findFirst());
    refresh();
    look.ifPresent(this::probe);
    Parts parts = parts(work);
    parts.tests().forEach(part -> run(part, PlanBlock.Purpose.WORK));
    learn(parts.lessons());
    session.closeUp();
    if (session.isEmpty()) {
      Upkeep.of(dog, ground, forecast).forEach(part -> run(part, PlanBlock.Purpose.KEEP));
    }
    end();
    return session.plan();
  }

  private Parts parts(List<Work> work) {
    return Parts.of(work, session.repsLeft(), session.surplus(), dog.programme().cleanFloor());
  }

  private boolean isAsGoodAsSolid(double expected) {
    return expected >= dog.programme().cleanTarget();
  }

  /** Something solid, unless what comes first goes as well as that; what slips never does. */
  private void begin(Optional<Work> firstWork) {
    if (!refreshers.isEmpty() && repsForRefreshers() > 0) {
      NextRung first = refreshers.getFirst();
      List<Drill> drills = ground.allowed(first.standing());
      if (first.why() == NextRung.Reason.SLIPPING || !isAsGoodAsSolid(forecast.share(drills))) {
        warmUpFor(drills.getFirst());
      }
    } else {
      firstWork
          .map(Work::drills)
          .filter(drills -> reliable(drills).isEmpty())
          .ifPresent(drills -> warmUpFor(drills.getFirst()));
    }
  }

  private Optional<Drill> reliable(List<Drill> drills) {
    return drills.stream().filter(drill -> isAsGoodAsSolid(forecast.share(drill))).findFirst();
  }

  private void warmUpFor(Drill first) {
    solid.reliableNear(first).ifPresent(drill -> session.add(drill, 1, PlanBlock.Purpose.WARM_UP));
  }

  private int repsForRefreshers() {
    return ground.limits().reps() / REFRESHERS_ONE_IN;
  }

  private void end() {
    session
        .last()
        .filter(block -> !isAsGoodAsSolid(block.expected().value()))
        .flatMap(block -> solid.reliableNear(block.drill().drill()))
        .ifPresent(drill -> session.add(drill, 1, PlanBlock.Purpose.FINISH));
  }

  private void refresh() {
    int left = repsForRefreshers();
    for (NextRung next : refreshers) {
      boolean slips = next.why() == NextRung.Reason.SLIPPING;
      Drill drill = session.nearest(ground.allowed(next.standing()));
      left -=
          session.add(
              new DrillOfStage(next.standing().stage().id(), drill),
              Math.min(left, slips ? MENDING_REPS : REFRESHER_REPS),
              slips ? PlanBlock.Purpose.MEND : PlanBlock.Purpose.REFRESH);
    }
  }

  /** Once the rest is run: if it fails, nothing else is spoiled by it. */
  private void probe(Part part) {
    List<Drill> drills = part.work().drills();
    for (int rep = 0; rep < part.reps(); rep++) {
      Drill drill = drills.get(rep % drills.size());
      session.addLater(part.work().of(drill), 1, PlanBlock.Purpose.PROBE);
    }
  }

  /** A few reps of each, the entry sides in turn, as hard as the session can afford. */
  private void learn(List<Part> parts) {
    Lessons lessons = new Lessons(forecast, new SteppingStone(dog, forecast));
    int left = parts.stream().mapToInt(Part::reps).sum();
    int most = parts.stream().mapToInt(Part::reps).max().orElse(0);
    int rounds = Math.ceilDiv(most, LESSON_REPS);
    for (int round = 0; round < rounds; round++) {
      for (Part part : parts) {
        int reps = part.reps() / rounds + (round < part.reps() % rounds ? 1 : 0);
        if (reps > 0) {
          double share = dog.programme().cleanFloor() - session.surplus() / left;
          Drill lesson = lessons.towards(part.work(), Math.max(LESSON_MIN, share), last());
          session.add(part.work().of(lesson), reps, PlanBlock.Purpose.WORK);
          left -= reps;
        }
      }
    }
  }

  /** Every handling in turn, so that none is missing when the test is through. */
  private void run(Part part, PlanBlock.Purpose purpose) {
    List<Drill> drills = new ArrayList<>(part.work().drills());
    Drill nearest = session.nearest(drills);
    Drill first = last() == null ? reliable(drills).orElse(nearest) : nearest;
    for (int rep = 0; rep < part.reps(); rep++) {
      Drill drill = rep == 0 ? first : drills.getFirst();
      drills.remove(drill);
      drills.addLast(drill);
      session.add(part.work().of(drill), 1, purpose);
    }
  }

  private @Nullable Drill last() {
    return session.last().map(block -> block.drill().drill()).orElse(null);
  }
}
