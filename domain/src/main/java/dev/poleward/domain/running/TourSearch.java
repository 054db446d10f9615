package dev.poleward.domain.running;

import java.util.Arrays;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Finds a short tour where there are too many setups for all: puts each setup where it costs least,
 * then moves stretches of up to three, turns stretches round and swaps tails between pole sets
 * until nothing gets shorter, and does so again from tours that were shaken. Shaken the same way
 * each time. For one thread.
 */
final class TourSearch {

  private static final int SETUPS_SHAKEN = 5;
  private static final int STRETCH_MAX = 3;
  private static final long SEED = 12;

  private final Lesson lesson;
  private final Ways ways;

  private TourSearch(Lesson lesson) {
    this.lesson = lesson;
    this.ways = new Ways(lesson);
  }

  /**
   * Empty when none was found that there is time for.
   *
   * @param shakes how often to try from a tour that was shaken
   */
  static Optional<FoundTour> of(Lesson lesson, int shakes) {
    TourSearch search = new TourSearch(lesson);
    search.search(shakes);
    long cost = search.ways.cost();
    return cost >= Ways.FORBIDDEN
        ? Optional.empty()
        : Optional.of(
            new FoundTour(
                search.ways.all(),
                cost,
                SpanningBound.of(lesson.distances, lesson.poleSets(), cost)));
  }

  private void search(int shakes) {
    for (int setup = 0; setup < lesson.setups(); setup++) {
      insert(setup);
    }
    improve();
    SplittableRandom random = new SplittableRandom(SEED);
    long best = ways.cost();
    for (int shake = 0; shake < shakes; shake++) {
      int[][] before = ways.all();
      shake(random);
      improve();
      long now = ways.cost();
      if (now < best) {
        best = now;
      } else {
        ways.restore(before);
      }
    }
  }

  private void insert(int setup) {
    int bestPoleSet = 0;
    int bestPlace = 0;
    long best = Long.MAX_VALUE;
    for (int poleSet = 0; poleSet < lesson.poleSets(); poleSet++) {
      int[] way = ways.on(poleSet);
      long bits = Ways.bits(way);
      long late = ways.late(poleSet, bits | 1L << setup) - ways.late(poleSet, bits);
      for (int place = 0; place <= way.length; place++) {
        long more = late + inserted(poleSet, way, place, setup, setup);
        if (more < best) {
          best = more;
          bestPoleSet = poleSet;
          bestPlace = place;
        }
      }
    }
    ways.put(bestPoleSet, Ways.with(ways.on(bestPoleSet), bestPlace, setup));
  }

  private void shake(SplittableRandom random) {
    for (int i = 0; i < SETUPS_SHAKEN; i++) {
      int setup = random.nextInt(lesson.setups());
      for (int poleSet = 0; poleSet < lesson.poleSets(); poleSet++) {
        int[] way = ways.on(poleSet);
        for (int place = 0; place < way.length; place++) {
          if (way[place] == setup) {
            ways.put(poleSet, Ways.without(way, place, place + 1));
          }
        }
      }
      int to = random.nextInt(lesson.poleSets());
      int[] way = ways.on(to);
      ways.put(to, Ways.with(way, random.nextInt(way.length + 1), setup));
    }
  }

  private void improve() {
    while (movedStretch() || turnedStretch() || swappedTails()) {
      // Each is shorter by a millimetre at least, so it ends.
    }
  }

  /** What more it is to have a stretch, by its ends, at a place of a way. */
  private long inserted(int poleSet, int[] way, int place, int begins, int ends) {
    int before = Ways.at(way, place - 1);
    int after = Ways.at(way, place);
    return ways.edge(poleSet, before, begins)
        + ways.edge(poleSet, ends, after)
        - ways.edge(poleSet, before, after);
  }

  private boolean movedStretch() {
    for (int from = 0; from < lesson.poleSets(); from++) {
      for (int length = 1; length <= STRETCH_MAX; length++) {
        for (int place = 0; place + length <= ways.on(from).length; place++) {
          if (movedStretch(from, place, place + length)) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private boolean movedStretch(int from, int begin, int end) {
    int[] way = ways.on(from);
    int[] stretch = Arrays.copyOfRange(way, begin, end);
    int[] rest = Ways.without(way, begin, end);
    for (int[] part : new int[][] {stretch, Ways.reversed(stretch)}) {
      for (int to = 0; to < lesson.poleSets(); to++) {
        int[] target = to == from ? rest : ways.on(to);
        // What a stretch costs inside depends on where it goes and which way round it lies.
        long gained =
            inserted(from, rest, begin, stretch[0], stretch[stretch.length - 1])
                + inside(from, stretch)
                - inside(to, part)
                - (to == from ? 0 : later(from, rest, to, target, stretch));
        for (int place = 0; place <= target.length; place++) {
          if (inserted(to, target, place, part[0], part[part.length - 1]) < gained) {
            ways.put(from, rest);
            ways.put(to, Ways.with(target, place, part));
            return true;
          }
        }
      }
    }
    return false;
  }

  /** What more it costs in time that a stretch goes from one pole set to another. */
  private long later(int from, int[] rest, int to, int[] target, int[] stretch) {
    long moved = Ways.bits(stretch);
    long left = Ways.bits(rest);
    long met = Ways.bits(target);
    return ways.late(from, left)
        - ways.late(from, left | moved)
        + ways.late(to, met | moved)
        - ways.late(to, met);
  }

  private long inside(int poleSet, int[] stretch) {
    long inside = 0;
    for (int i = 1; i < stretch.length; i++) {
      inside += ways.edge(poleSet, stretch[i - 1], stretch[i]);
    }
    return inside;
  }

  private boolean turnedStretch() {
    for (int poleSet = 0; poleSet < lesson.poleSets(); poleSet++) {
      int[] way = ways.on(poleSet);
      for (int begin = 0; begin < way.length; begin++) {
        long forwards = 0;
        long backwards = 0;
        for (int last = begin + 1; last < way.length; last++) {
          forwards += ways.edge(poleSet, way[last - 1], way[last]);
          backwards += ways.edge(poleSet, way[last], way[last - 1]);
          int before = Ways.at(way, begin - 1);
          int after = Ways.at(way, last + 1);
          long now =
              ways.edge(poleSet, before, way[begin])
                  + forwards
                  + ways.edge(poleSet, way[last], after);
          long then =
              ways.edge(poleSet, before, way[last])
                  + backwards
                  + ways.edge(poleSet, way[begin], after);
          if (then < now) {
            int[] turned = Ways.reversed(Arrays.copyOfRange(way, begin, last + 1));
            ways.put(poleSet, Ways.with(Ways.without(way, begin, last + 1), begin, turned));
            return true;
          }
        }
      }
    }
    return false;
  }

  private boolean swappedTails() {
    for (int one = 0; one < lesson.poleSets(); one++) {
      for (int other = one + 1; other < lesson.poleSets(); other++) {
        if (swappedTails(one, other)) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean swappedTails(int one, int other) {
    int[] first = ways.on(one);
    int[] second = ways.on(other);
    long now = costOf(one, first) + costOf(other, second);
    for (int i = 0; i <= first.length; i++) {
      for (int j = 0; j <= second.length; j++) {
        int[] toFirst = Ways.joined(Arrays.copyOf(first, i), tail(second, j));
        int[] toSecond = Ways.joined(Arrays.copyOf(second, j), tail(first, i));
        if (costOf(one, toFirst) + costOf(other, toSecond) < now) {
          ways.put(one, toFirst);
          ways.put(other, toSecond);
          return true;
        }
      }
    }
    return false;
  }

  private static int[] tail(int[] way, int from) {
    return Arrays.copyOfRange(way, from, way.length);
  }

  private long costOf(int poleSet, int[] way) {
    return ways.length(poleSet, way) + ways.late(poleSet, Ways.bits(way));
  }
}
