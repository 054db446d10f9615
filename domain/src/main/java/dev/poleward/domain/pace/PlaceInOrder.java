package dev.poleward.domain.pace;

import dev.poleward.domain.event.TimingEvent.TimingRecorded;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.PlacedRep;
import dev.poleward.domain.timing.OrderedAlignment;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Which timings belong to which reps when nobody says so: as they follow each other. A rep is
 * logged some seconds after its run, about as many each time; of a few usual lags the one is taken
 * that fits best.
 */
final class PlaceInOrder {

  /** A run and the logging of its rep lie at most so far apart, beyond the usual lag [C]. */
  static final Duration APART_MAX = Duration.ofSeconds(30);

  /** More timings, or reps, of one device in one session are not looked at: the last ones are. */
  static final int TIMINGS_MAX = 300;

  private static final double MILLIS = 1_000;

  /** Usual lags in seconds, the likeliest first [C]. */
  private static final List<Double> LAGS = List.of(0.0, 10.0, 20.0, 30.0, 40.0);

  /** A timing and the rep that it is given to. */
  record Pair(Fact<TimingRecorded> timing, PlacedRep rep) {}

  /** Whether a timing may belong to a rep at all. */
  interface Allowed {
    boolean is(Fact<TimingRecorded> timing, PlacedRep rep);
  }

  private final List<Fact<TimingRecorded>> timings;
  private final List<PlacedRep> reps;
  private final List<double[]> ends;
  private final double[] logged;
  private final boolean[][] allowed;

  private PlaceInOrder(
      List<Fact<TimingRecorded>> timings, List<PlacedRep> reps, DeviceLog log, Allowed allowed) {
    this.timings = last(log.inOrder(timings));
    this.reps = last(reps);
    this.ends = this.timings.stream().map(log::ends).toList();
    this.logged =
        this.reps.stream().mapToDouble(rep -> Instants.millis(rep.moment().time())).toArray();
    this.allowed = new boolean[this.timings.size()][this.reps.size()];
    for (int i = 0; i < this.timings.size(); i++) {
      for (int j = 0; j < this.reps.size(); j++) {
        this.allowed[i][j] = allowed.is(this.timings.get(i), this.reps.get(j));
      }
    }
  }

  /**
   * The pairs, as the device took them.
   *
   * @param reps ascending by (time, id)
   */
  static List<Pair> of(
      List<Fact<TimingRecorded>> timings, List<PlacedRep> reps, DeviceLog log, Allowed allowed) {
    return timings.isEmpty() || reps.isEmpty()
        ? List.of()
        : new PlaceInOrder(timings, reps, log, allowed).pairs();
  }

  /** Whether a rep was logged near enough to a run, at whichever lag. */
  static boolean near(Fact<TimingRecorded> timing, PlacedRep rep, DeviceLog log) {
    double reach = APART_MAX.toSeconds() + LAGS.getLast();
    double logged = Instants.millis(rep.moment().time());
    return Arrays.stream(log.ends(timing))
        .anyMatch(end -> Math.abs(logged - end) / MILLIS <= reach);
  }

  private static <T> List<T> last(List<T> all) {
    return all.subList(Math.max(0, all.size() - TIMINGS_MAX), all.size());
  }

  private List<Pair> pairs() {
    OrderedAlignment best = null;
    for (double lag : LAGS) {
      OrderedAlignment alignment =
          OrderedAlignment.of(
              timings.size(),
              reps.size(),
              (timing, rep) -> apart(timing, rep, lag),
              APART_MAX.toSeconds() / 2.0);
      best = best == null || alignment.cost() < best.cost() ? alignment : best;
    }
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; best != null && i < timings.size(); i++) {
      int timing = i;
      best.partner(i).ifPresent(rep -> pairs.add(new Pair(timings.get(timing), reps.get(rep))));
    }
    return pairs;
  }

  /** Seconds, by whichever clock brings the two nearer. */
  private double apart(int timing, int rep, double lag) {
    if (!allowed[timing][rep]) {
      return Double.POSITIVE_INFINITY;
    }
    double least = Double.POSITIVE_INFINITY;
    for (double end : ends.get(timing)) {
      least = Math.min(least, Math.abs((logged[rep] - end) / MILLIS - lag));
    }
    return least <= APART_MAX.toSeconds() ? least : Double.POSITIVE_INFINITY;
  }
}
