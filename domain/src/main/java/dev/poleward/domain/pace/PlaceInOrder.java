package dev.poleward.domain.pace;

import dev.poleward.domain.event.TimingEvent.TimingRecorded;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.PlacedRep;
import dev.poleward.domain.timing.OrderedAlignment;
import java.time.Duration;
import java.util.ArrayList;
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

  private static final double APART = APART_MAX.toSeconds();

  /** Two that are left alone cost as much as two that lie as far apart as any may. */
  private static final double ALONE = APART / 2;

  private static final double REACH = APART + LAGS.getLast();

  /** A timing and the rep that it is given to. */
  record Pair(Fact<TimingRecorded> timing, PlacedRep rep) {}

  /** Whether a timing may belong to a rep at all. */
  interface Allowed {
    boolean is(Fact<TimingRecorded> timing, PlacedRep rep);
  }

  /**
   * A lag that is tried.
   *
   * @param least what any pairing at that lag costs at least
   */
  private record Try(double lag, double least) implements Comparable<Try> {
    @Override
    public int compareTo(Try other) {
      return Double.compare(least, other.least);
    }
  }

  private final List<Fact<TimingRecorded>> timings;
  private final List<PlacedRep> reps;

  /** Seconds from the end of a run to the logging of a rep: by one clock, and by the other. */
  private final double[][] byClock;

  private final double[][] asSaid;

  private PlaceInOrder(
      List<Fact<TimingRecorded>> timings, List<PlacedRep> reps, DeviceLog log, Allowed allowed) {
    this.timings = last(log.inOrder(timings));
    this.reps = last(reps);
    this.byClock = new double[this.timings.size()][this.reps.size()];
    this.asSaid = new double[this.timings.size()][this.reps.size()];
    double[] logged =
        this.reps.stream().mapToDouble(rep -> Instants.millis(rep.moment().time())).toArray();
    for (int i = 0; i < this.timings.size(); i++) {
      Fact<TimingRecorded> timing = this.timings.get(i);
      DeviceLog.End end = log.end(timing);
      for (int j = 0; j < logged.length; j++) {
        byClock[i][j] = (logged[j] - end.byClock()) / MILLIS;
        asSaid[i][j] = (logged[j] - end.asSaid()) / MILLIS;
        if (isNear(byClock[i][j], asSaid[i][j]) && !allowed.is(timing, this.reps.get(j))) {
          byClock[i][j] = Double.POSITIVE_INFINITY;
          asSaid[i][j] = Double.POSITIVE_INFINITY;
        }
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
    double logged = Instants.millis(rep.moment().time());
    DeviceLog.End end = log.end(timing);
    return isNear((logged - end.byClock()) / MILLIS, (logged - end.asSaid()) / MILLIS);
  }

  private static boolean isNear(double byClock, double asSaid) {
    return Math.min(Math.abs(byClock), Math.abs(asSaid)) <= REACH;
  }

  private static <T> List<T> last(List<T> all) {
    return all.subList(Math.max(0, all.size() - TIMINGS_MAX), all.size());
  }

  private List<Pair> pairs() {
    OrderedAlignment best = null;
    // The most promising lag first, so that most others need not be tried; the sort is stable.
    for (Try each : LAGS.stream().map(lag -> new Try(lag, leastPossible(lag))).sorted().toList()) {
      if (best == null || each.least() < best.cost()) {
        OrderedAlignment alignment =
            OrderedAlignment.of(
                timings.size(),
                reps.size(),
                (timing, rep) -> apart(timing, rep, each.lag()),
                ALONE);
        best = best == null || alignment.cost() < best.cost() ? alignment : best;
      }
    }
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; best != null && i < timings.size(); i++) {
      int timing = i;
      best.partner(i).ifPresent(rep -> pairs.add(new Pair(timings.get(timing), reps.get(rep))));
    }
    return pairs;
  }

  /** No pairing costs less: each timing with the rep that is nearest, or alone. */
  private double leastPossible(double lag) {
    double least = ALONE * Math.max(0, reps.size() - timings.size());
    for (int timing = 0; timing < timings.size(); timing++) {
      double nearest = ALONE;
      for (int rep = 0; rep < reps.size(); rep++) {
        nearest = Math.min(nearest, apart(timing, rep, lag));
      }
      least += nearest;
    }
    return least;
  }

  /** By whichever clock brings the two nearer. */
  private double apart(int timing, int rep, double lag) {
    double least =
        Math.min(Math.abs(byClock[timing][rep] - lag), Math.abs(asSaid[timing][rep] - lag));
    return least <= APART ? least : Double.POSITIVE_INFINITY;
  }
}
