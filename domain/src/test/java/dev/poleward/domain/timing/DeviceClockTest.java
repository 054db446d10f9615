package dev.poleward.domain.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class DeviceClockTest {

  private static final double HOUR = 3_600_000;

  /** 1 May 2026, in milliseconds since 1970. */
  private static final double ZERO = 1_777_593_600_000.0;

  /** By hand: the edge goes through the readings at 0, 2 and 4 hours; the middle is at 2 [D]. */
  @Test
  void theLineLiesBelowAllReadingsAndNearestToThem() {
    double slow = 100e-6;
    List<ClockReading> readings =
        List.of(
            new ClockReading(0, ZERO + 40),
            new ClockReading(HOUR, ZERO + HOUR * (1 + slow) + 5_000),
            new ClockReading(1.5 * HOUR, ZERO + 1.5 * HOUR * (1 + slow) + 900),
            new ClockReading(2 * HOUR, ZERO + 2 * HOUR * (1 + slow) + 40),
            new ClockReading(4 * HOUR, ZERO + 4 * HOUR * (1 + slow) + 40));
    DeviceClock clock = DeviceClock.of(readings).orElseThrow();

    assertThat(clock.drift()).isCloseTo(slow, within(1e-9));
    assertThat(clock.zero()).isCloseTo(ZERO + 40, within(0.01));
    assertThat(clock.at(3 * HOUR)).isCloseTo(ZERO + 40 + 3 * HOUR * (1 + slow), within(0.01));
    assertThat(clock.usualDelay()).isCloseTo(0, within(0.01));
  }

  /** Simulated, seed 9: delays of a quarter of a second on the mean, some of minutes or hours. */
  @Test
  void delaysDoNotShow() {
    SplittableRandom random = new SplittableRandom(9);
    for (int round = 0; round < 200; round++) {
      double drift = (random.nextDouble() - 0.5) * 200e-6;
      List<ClockReading> readings = new ArrayList<>();
      for (int i = 0; i < 60; i++) {
        double shown = random.nextDouble() * 30 * HOUR;
        double delay = -250 * Math.log(random.nextDouble());
        delay += random.nextInt(4) == 0 ? random.nextDouble() * 3 * HOUR : 0;
        readings.add(new ClockReading(shown, ZERO + shown * (1 + drift) + delay));
      }
      DeviceClock clock = DeviceClock.of(readings).orElseThrow();

      assertThat(clock.drift()).isCloseTo(drift, within(15e-6));
      assertThat(clock.at(15 * HOUR) - (ZERO + 15 * HOUR * (1 + drift))).isBetween(-1.0, 200.0);
      Collections.shuffle(readings, new Random(round));
      assertThat(DeviceClock.of(readings)).contains(clock);
    }
  }

  @Test
  void fewReadingsOrAShortTimeTellNoDrift() {
    List<ClockReading> readings = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      readings.add(new ClockReading(i * 60_000.0, ZERO + i * 60_000.0 + 20 * i));
    }
    DeviceClock clock = DeviceClock.of(readings).orElseThrow();

    assertThat(clock.drift()).isZero();
    assertThat(clock.zero()).isEqualTo(ZERO);
    assertThat(DeviceClock.of(readings.subList(0, 1)).orElseThrow().zero()).isEqualTo(ZERO);
    assertThat(DeviceClock.of(List.of())).isEmpty();
  }

  /** What was kept for days and sent at once arrives together: that is no drift of a clock. */
  @Test
  void whatArrivesAllAtOnceTellsNoDrift() {
    List<ClockReading> readings = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      readings.add(new ClockReading(i * HOUR, ZERO + 100 * HOUR));
    }
    DeviceClock clock = DeviceClock.of(readings).orElseThrow();

    assertThat(clock.drift()).isZero();
    assertThat(clock.at(19 * HOUR)).isEqualTo(ZERO + 100 * HOUR);
  }
}
