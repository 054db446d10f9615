package dev.poleward.domain.planning;

import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.judgement.NextRung;
import dev.poleward.domain.judgement.NextRungs;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.DrillOfStage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Makes a session. What slips or is due is refreshed; then two or more rungs are worked on, the
 * entry sides in turn: those that can be expected to pass are tested, every handling in turn; those
 * that are too far are come nearer to by stepping stones. It begins and ends with something solid,
 * or with what can be expected to go as well as that.
 *
 * <p>Learns nothing and draws nothing: the same question has the same answer. For one thread.
 */
public final class Planner {

  private static final int REFRESHER_REPS = 2;
  private static final int MENDING_REPS = 4;

  /** Refreshers and what is mended take at most one rep in so many [C]. */
  private static final int REFRESHERS_ONE_IN = 4;

  private final DogStanding dog;
  private final CleanForecast forecast;
  private final Ground ground;
  private final SolidDrills solid;
  private final Room room;
  private final List<NextRung> refreshers;
  private final List<PlanBlock> blocks = new ArrayList<>();

  private Planner(DogStanding dog, CleanForecast forecast, Ground ground) {
    this.dog = dog;
    this.forecast = forecast;
    this.ground = ground;
    this.solid = new SolidDrills(dog, ground, forecast);
    this.room = new Room(ground.limits());
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
    room.keepOne();
    begin(Parts.of(work, room.reps()));
    refresh();
    List<Part> parts = Parts.of(work, room.reps());
    work(parts);
    room.useKept();
    end(parts);
    return new SessionPlan(blocks);
  }

  private boolean isAsGoodAsSolid(double expected) {
    return expected >= dog.programme().cleanTarget();
  }

  /** Something solid, unless what comes first goes as well as that; what slips never does. */
  private void begin(List<Part> parts) {
    if (!refreshers.isEmpty() && repsForRefreshers() > 0) {
      NextRung first = refreshers.getFirst();
      List<Drill> drills = ground.allowed(first.standing());
      if (first.why() == NextRung.Reason.SLIPPING || !isAsGoodAsSolid(forecast.share(drills))) {
        warmUpFor(drills.getFirst());
      }
    } else if (!parts.isEmpty() && !isAsGoodAsSolid(parts.getFirst().work().expected())) {
      warmUpFor(parts.getFirst().work().drills().getFirst());
    }
  }

  private void warmUpFor(Drill first) {
    solid.near(first).ifPresent(drill -> add(drill, 1, PlanBlock.Purpose.WARM_UP));
  }

  private int repsForRefreshers() {
    return ground.limits().reps() / REFRESHERS_ONE_IN;
  }

  private void end(List<Part> parts) {
    if (blocks.isEmpty() || isAsGoodAsSolid(blocks.getLast().expected().value())) {
      return;
    }
    Optional<Part> easy =
        parts.stream().filter(part -> isAsGoodAsSolid(part.work().expected())).findFirst();
    if (easy.isPresent()) {
      Work work = easy.get().work();
      add(work.of(nearest(work.drills())), 1, PlanBlock.Purpose.FINISH);
    } else {
      solid
          .near(blocks.getLast().drill().drill())
          .ifPresent(drill -> add(drill, 1, PlanBlock.Purpose.FINISH));
    }
  }

  private void refresh() {
    int left = repsForRefreshers();
    for (NextRung next : refreshers) {
      boolean slips = next.why() == NextRung.Reason.SLIPPING;
      Drill drill = nearest(ground.allowed(next.standing()));
      left -=
          add(
              new DrillOfStage(next.standing().stage().id(), drill),
              Math.min(left, slips ? MENDING_REPS : REFRESHER_REPS),
              slips ? PlanBlock.Purpose.MEND : PlanBlock.Purpose.REFRESH);
    }
  }

  private void work(List<Part> parts) {
    double share = Parts.shareOfStones(parts, blocks, dog.programme().cleanFloor());
    SteppingStone stones = new SteppingStone(dog, forecast);
    for (Part part : parts) {
      if (part.isTest()) {
        test(part);
      } else {
        Drill stone = stones.towards(nearest(part.work().drills()), share);
        add(part.work().of(stone), part.reps(), PlanBlock.Purpose.WORK);
      }
    }
  }

  /** Every handling in turn, so that none is missing when the test is through. */
  private void test(Part part) {
    List<Drill> drills = new ArrayList<>(part.work().drills());
    Drill first = nearest(drills);
    for (int rep = 0; rep < part.reps(); rep++) {
      Drill drill = rep == 0 ? first : drills.getFirst();
      drills.remove(drill);
      drills.addLast(drill);
      add(part.work().of(drill), 1, PlanBlock.Purpose.WORK);
    }
  }

  /** What changes least from the block before; of those the first. */
  private Drill nearest(List<Drill> drills) {
    return blocks.isEmpty()
        ? drills.getFirst()
        : drills.stream()
            .min(
                Comparator.comparingInt(
                    drill -> OneChange.between(drill, blocks.getLast().drill().drill())))
            .orElseThrow();
  }

  /** Adds as many reps as still fit. */
  private int add(DrillOfStage drill, int wanted, PlanBlock.Purpose purpose) {
    int reps = room.of(drill.drill(), wanted);
    if (reps > 0) {
      room.take(drill.drill(), reps);
      blocks.add(
          new PlanBlock(
              drill,
              reps,
              purpose,
              forecast.expected(drill.drill()),
              solid.easierThan(drill.drill()).orElse(null)));
    }
    return reps;
  }
}
