package dev.poleward.domain.planning;

import dev.poleward.domain.layout.EntrySide;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * How a session is shared out among the rungs that have their turn.
 *
 * @param tests rungs that can be expected to pass, the easiest first
 * @param lessons rungs that are come nearer to, the entry sides in turn
 */
record Parts(List<Part> tests, List<Part> lessons) {

  /** What lessons are to be expected to come to, where tests beside them make up for it [C]. */
  private static final double LESSON = 0.78;

  /** So many rungs are come nearer to in one session: one on either side [C]. */
  private static final int LESSONS_MAX = 2;

  /** Keeps the parts from changing. */
  Parts {
    tests = List.copyOf(tests);
    lessons = List.copyOf(lessons);
  }

  /**
   * As few reps of tests as pay for what is learned beside them, so that some are left for the next
   * session: a session without any has to learn at what is nearly known, which teaches little.
   *
   * @param all what is decided soonest first
   * @param room what is left of the session
   * @param surplus what the session's expected share is above the floor already, in clean reps
   */
  static Parts of(List<Work> all, Room room, double surplus, double floor) {
    if (all.isEmpty()) {
      return new Parts(List.of(), List.of());
    }
    List<Work> work = stayingInStage(all);
    List<Work> learners =
        alternating(work.stream().filter(each -> !each.isReady()).toList()).stream()
            .limit(LESSONS_MAX)
            .toList();
    List<Part> tests = new ArrayList<>();
    double have = surplus;
    int left = room.repsOver(work.getFirst().drills().getFirst().poles());
    int sharpBends = room.sharpBends();
    for (Work test : alternating(work.stream().filter(Work::isReady).toList())) {
      int most = test.isSharp() ? Math.min(sharpBends, test.repsToBeSure()) : test.repsToBeSure();
      int own = 0;
      while (own < most && left > 0 && (learners.isEmpty() || have < owed(left, floor))) {
        own++;
        left--;
        have += test.expected() - floor;
      }
      sharpBends -= test.isSharp() ? own : 0;
      if (own > 0) {
        tests.add(new Part(test, own));
      }
    }
    tests.sort(Comparator.comparingDouble(part -> -part.work().expected()));
    return new Parts(tests, shared(learners, Math.min(left, Planner.LESSON_REPS_MAX)));
  }

  /** What lessons will take from what the session is above the floor, in clean reps. */
  private static double owed(int left, double floor) {
    return Math.min(left, Planner.LESSON_REPS_MAX) * (floor - LESSON);
  }

  /** What comes first. */
  Optional<Work> first() {
    return Stream.of(tests, lessons).flatMap(List::stream).map(Part::work).findFirst();
  }

  private static List<Part> shared(List<Work> learners, int reps) {
    List<Part> parts = new ArrayList<>();
    int count = learners.size();
    for (int i = 0; i < count; i++) {
      int own = reps / count + (i < reps % count ? 1 : 0);
      if (own > 0) {
        parts.add(new Part(learners.get(i), own));
      }
    }
    return parts;
  }

  /** What stands already need not be moved: the stage of what comes first goes before others. */
  private static List<Work> stayingInStage(List<Work> work) {
    List<Work> order = new ArrayList<>(work);
    if (!work.isEmpty()) {
      String stage = work.getFirst().standing().stage().id();
      order.sort(Comparator.comparing((Work each) -> !each.standing().stage().id().equals(stage)));
    }
    return order;
  }

  /** The entry sides in turn, as far as both have something. */
  private static List<Work> alternating(List<Work> all) {
    List<Work> left = new ArrayList<>(all);
    List<Work> order = new ArrayList<>();
    EntrySide last = null;
    while (!left.isEmpty()) {
      Work next = onOtherSide(left, last);
      left.remove(next);
      order.add(next);
      last = next.side();
    }
    return order;
  }

  private static Work onOtherSide(List<Work> left, @Nullable EntrySide last) {
    return left.stream().filter(work -> work.side() != last).findFirst().orElse(left.getFirst());
  }
}
