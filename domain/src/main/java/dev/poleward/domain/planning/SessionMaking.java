package dev.poleward.domain.planning;

import dev.poleward.domain.care.Load;
import dev.poleward.domain.judgement.NextRung;
import dev.poleward.domain.judgement.Verdict;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.DrillOfStage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What a session is made of. What slips or is due is refreshed; then two or more rungs are worked
 * on, the entry sides in turn: those that can be expected to pass are tested, every handling in
 * turn; those that are too far are come nearer to by stepping stones; now and then something is
 * tried before its turn. With nothing of all that, what is solid is kept so. For one thread.
 */
final class SessionMaking {

  private static final int REFRESHER_REPS = 1;
  private static final int MENDING_REPS = 4;

  /** So many reps of one lesson at most, before the other side has its turn [C]. */
  private static final int LESSON_REPS = 4;

  /** No lesson is harder than that, whatever the rest of the session makes up for [C]. */
  private static final double LESSON_MIN = 0.62;

  /** Of what is harder than that no more: who knows nothing easier is helped, not drilled [C]. */
  private static final int TOO_HARD_REPS_MAX = 4;

  /** Refreshers and what is mended take at most one rep in so many [C]. */
  private static final int REFRESHERS_ONE_IN = 4;

  private final Outset outset;
  private final CleanForecast forecast;
  private final SteppingStone stones;
  private final Lessons lessons;
  private final SessionDraft session;
  private int tooHard;

  /**
   * Nothing made yet.
   *
   * @param end what it is to end with, if nothing nearer is found; null when it may end as it comes
   */
  SessionMaking(Outset outset, @Nullable DrillOfStage end) {
    this.outset = outset;
    this.forecast = outset.forecast();
    this.stones = outset.stones();
    this.lessons = new Lessons(forecast, stones);
    this.session = new SessionDraft(outset, end);
  }

  List<PlanBlock> blocks() {
    begin();
    refresh();
    outset.look().ifPresent(this::probe);
    Parts parts = parts();
    test(parts.tests());
    learn(parts.lessons());
    outset.upkeep().forEach(part -> run(part, PlanBlock.Purpose.KEEP));
    session.closeUp();
    session.end();
    return session.blocks();
  }

  private Parts parts() {
    return Parts.of(outset.work(), session.room(), session.surplus(), outset.floor());
  }

  /** Something solid, unless what comes first goes as well as that; what slips never does. */
  private void begin() {
    first()
        .flatMap(outset::beginning)
        .ifPresent(drill -> session.add(drill, 1, PlanBlock.Purpose.WARM_UP));
  }

  /** What comes first, unless it is a beginning itself; a probe never is. */
  private Optional<DrillOfStage> first() {
    if (!outset.refreshers().isEmpty() && repsForRefreshers() > 0) {
      NextRung first = outset.refreshers().getFirst();
      Drill drill = refresher(first);
      return first.why() != NextRung.Reason.SLIPPING && outset.isBeginning(drill)
          ? Optional.empty()
          : Optional.of(new DrillOfStage(first.standing().stage().id(), drill));
    }
    Optional<Work> work =
        Stream.concat(parts().first().stream(), outset.upkeep().stream().map(Part::work))
            .findFirst();
    return work.isPresent()
        ? work.filter(each -> each.drills().stream().noneMatch(outset::isBeginning))
            .map(each -> each.of(each.drills().getFirst()))
        : outset.look().map(look -> look.work().of(look.work().drills().getFirst()));
  }

  private int repsForRefreshers() {
    return outset.ground().limits().reps() / REFRESHERS_ONE_IN;
  }

  private void refresh() {
    int left = repsForRefreshers();
    for (NextRung next : outset.refreshers()) {
      boolean slips = next.why() == NextRung.Reason.SLIPPING;
      left -=
          session.add(
              new DrillOfStage(next.standing().stage().id(), refresher(next)),
              Math.min(left, slips ? MENDING_REPS : REFRESHER_REPS),
              slips ? PlanBlock.Purpose.MEND : PlanBlock.Purpose.REFRESH);
    }
  }

  /** From where it was left, if that goes; else from a smaller angle. */
  private Drill refresher(NextRung next) {
    Drill drill = session.nearest(outset.ground().allowed(next.standing()));
    boolean slips = next.why() == NextRung.Reason.SLIPPING;
    boolean stepsBack = next.standing().judgement().verdict() instanceof Verdict.StepBack;
    double share = forecast.share(drill);
    return share >= outset.floor() || (slips && !stepsBack && share >= LESSON_MIN)
        ? drill
        : stones.towards(List.of(drill), outset.floor()).getFirst();
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
    int left = parts.stream().mapToInt(Part::reps).sum();
    int most = parts.stream().mapToInt(Part::reps).max().orElse(0);
    int rounds = Math.ceilDiv(most, LESSON_REPS);
    for (int round = 0; round < rounds; round++) {
      for (Part part : parts) {
        int reps = part.reps() / rounds + (round < part.reps() % rounds ? 1 : 0);
        if (reps > 0) {
          teach(part.work(), reps, left);
          left -= reps;
        }
      }
    }
  }

  private void teach(Work work, int reps, int left) {
    double share = outset.floor() - session.surplus() / left;
    double least = work.stepsBack() ? outset.floor() : LESSON_MIN;
    for (Drill lesson : lessons.towards(work, reps, Math.max(least, share), last())) {
      if (forecast.share(lesson) < LESSON_MIN && ++tooHard > TOO_HARD_REPS_MAX) {
        return;
      }
      if (session.add(work.of(lesson), 1, PlanBlock.Purpose.WORK) == 0) {
        Drill gentler = stones.within(lesson, Load.SHARP_BEND_DEGREES);
        session.add(work.of(gentler), 1, PlanBlock.Purpose.WORK);
      }
    }
  }

  /** The easiest first; then always what changes least. */
  private void test(List<Part> parts) {
    List<Part> left = new ArrayList<>(parts);
    while (!left.isEmpty()) {
      Part next = left.getFirst();
      if (session.last().isPresent()) {
        Drill nearest =
            session.nearest(left.stream().flatMap(part -> part.work().drills().stream()).toList());
        next =
            left.stream()
                .filter(part -> part.work().drills().contains(nearest))
                .findFirst()
                .orElse(next);
      }
      left.remove(next);
      run(next, PlanBlock.Purpose.WORK);
    }
  }

  /** Every handling in turn, so that none is missing when the test is through. */
  private void run(Part part, PlanBlock.Purpose purpose) {
    List<Drill> all = part.work().drills();
    List<Drill> turn = new ArrayList<>();
    for (int rep = 0; rep < part.reps(); rep++) {
      if (turn.isEmpty()) {
        turn.addAll(all);
      }
      Drill drill =
          session.last().isEmpty()
              ? turn.stream().filter(outset::isBeginning).findFirst().orElse(turn.getFirst())
              : session.nearest(turn);
      turn.remove(drill);
      session.add(part.work().of(drill), 1, purpose);
    }
  }

  private @Nullable Drill last() {
    return session.last().map(block -> block.drill().drill()).orElse(null);
  }
}
