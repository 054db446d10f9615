package dev.poleward.domain.pace;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.event.TimingEvent.TimingRecorded;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Moment;
import dev.poleward.domain.record.PlacedRep;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Timings that are given to reps by their order, where the truth is known. */
class PlaceInOrderTest {

  private static final Instant START = Instant.parse("2026-05-04T17:00:00Z");

  /** A session of which the truth is known. */
  private static final class Session {
    private final List<Fact<TimingRecorded>> timings = new ArrayList<>();
    private final List<PlacedRep> reps = new ArrayList<>();
    private final Map<String, String> truth = new HashMap<>();

    /**
     * A dozen runs, 25 to 90 seconds apart, each logged about 20 seconds later. The device's clock
     * drifts and began somewhere; what it sends is under way for seconds, sometimes for hours, and
     * says the time of its arrival. Some runs were not timed, some not logged, some timings are of
     * nothing.
     */
    Session(SplittableRandom random) {
      double booted = -random.nextDouble() * 3e7;
      double drift = 1 + (random.nextDouble() - 0.5) * 1e-4;
      double at = 0;
      for (int run = 0; run < 12; run++) {
        at += 25_000 + random.nextDouble() * 65_000;
        if (random.nextInt(12) == 0) {
          take(run + "-stray", at - 12_000, booted, drift, random);
        }
        if (random.nextInt(7) != 0) {
          take("t-" + run, at, booted, drift, random);
        }
        if (random.nextInt(10) != 0) {
          double logged = at + 20_000 + 5_000 * random.nextGaussian();
          PlacedRep rep = TimedRuns.OF_FOUR.clean(START.plusMillis((long) logged), 1.5).rep();
          reps.add(rep);
          truth.put("t-" + run, rep.rep());
        }
      }
      reps.sort(Comparator.naturalOrder());
    }

    private void take(String id, double at, double booted, double drift, SplittableRandom random) {
      double delay = -2_000 * Math.log(random.nextDouble());
      delay += random.nextInt(5) == 0 ? random.nextDouble() * 1e7 : 0;
      double shown = (at - booted) / drift;
      Instant arrived = START.plusMillis((long) (at + delay));
      timings.add(
          new Fact<>(
              new Moment(arrived, id),
              arrived,
              new TimingRecorded(
                  "gate-1",
                  timings.size(),
                  (long) shown,
                  shown - 1_500,
                  shown,
                  null,
                  null,
                  null,
                  null,
                  null),
              null));
    }

    List<PlaceInOrder.Pair> pairs() {
      return PlaceInOrder.of(timings, reps, new DeviceLog(timings), (timing, rep) -> true);
    }
  }

  /**
   * Simulated, seed 12, 500 sessions: 96.4% of the pairs are right, 98.5% of the true ones found.
   */
  @Test
  void nearlyAllPairsAreRightAndFound() {
    SplittableRandom random = new SplittableRandom(12);
    int right = 0;
    int found = 0;
    int there = 0;
    for (int i = 0; i < 500; i++) {
      Session session = new Session(random);
      for (PlaceInOrder.Pair pair : session.pairs()) {
        found++;
        right += pair.rep().rep().equals(session.truth.get(pair.timing().id())) ? 1 : 0;
      }
      there +=
          (int)
              session.timings.stream()
                  .filter(timing -> session.truth.containsKey(timing.id()))
                  .count();
    }

    assertThat((double) right / found).isGreaterThan(0.95);
    assertThat((double) right / there).isGreaterThan(0.97);
  }

  @Test
  void ofVeryManyTheLastAreLookedAt() {
    List<Fact<TimingRecorded>> timings = new ArrayList<>();
    List<PlacedRep> reps = new ArrayList<>();
    for (int i = 0; i < PlaceInOrder.TIMINGS_MAX + 50; i++) {
      TimedRep timed = TimedRuns.OF_FOUR.clean(START.plusSeconds(600L * i), 1.5);
      reps.add(timed.rep());
      double ended = 600_000.0 * i;
      timings.add(
          new Fact<>(
              new Moment(timed.rep().moment().time(), "t-" + i),
              timed.rep().moment().time(),
              new TimingRecorded(
                  "gate-1", i, (long) ended, ended - 1_500, ended, null, null, null, null, null),
              null));
    }
    List<PlaceInOrder.Pair> pairs =
        PlaceInOrder.of(timings, reps, new DeviceLog(timings), (timing, rep) -> true);

    assertThat(pairs).hasSize(PlaceInOrder.TIMINGS_MAX);
    assertThat(pairs.getFirst().timing().id()).isEqualTo("t-50");
  }
}
