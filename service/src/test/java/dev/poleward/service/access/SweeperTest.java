package dev.poleward.service.access;

import static dev.poleward.service.access.PersonKeysTest.eventually;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.service.access.Sweeper.Sweep;
import dev.poleward.service.journal.JournalException;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class SweeperTest {

  private static final Sweep INES = new Sweep.OfForgotten(new Person("saltmarsh", "ines"));

  @Test
  void comesBackToASweepThatFailed() throws Exception {
    AtomicInteger tries = new AtomicInteger();
    try (Sweeper sweeper =
        new Sweeper(
            _ -> {
              if (tries.incrementAndGet() < 3) {
                throw new JournalException("out of reach");
              }
            },
            Duration.ofMillis(1))) {
      sweeper.request(INES);

      eventually(() -> tries.get() == 3);
      Thread.sleep(20);
      assertThat(tries).hasValue(3);
    }
  }

  @Test
  void sweepsOnceForManyRequestsAndOnceMoreForThoseThatCameMeanwhile() throws Exception {
    List<Sweep> swept = new CopyOnWriteArrayList<>();
    CountDownLatch going = new CountDownLatch(1);
    CountDownLatch goOn = new CountDownLatch(1);
    try (Sweeper sweeper =
        new Sweeper(
            sweep -> {
              swept.add(sweep);
              going.countDown();
              await(goOn);
            },
            Duration.ofDays(1))) {
      sweeper.request(INES);
      await(going);
      for (int i = 0; i < 100; i++) {
        sweeper.request(INES);
      }
      goOn.countDown();

      eventually(() -> swept.size() == 2);
      Thread.sleep(20);
      assertThat(swept).containsExactly(INES, INES);
    }
  }

  @Test
  void looksAtEverybodyRatherThanRememberTooMany() throws Exception {
    List<Sweep> swept = new CopyOnWriteArrayList<>();
    CountDownLatch goOn = new CountDownLatch(1);
    try (Sweeper sweeper =
        new Sweeper(
            sweep -> {
              await(goOn);
              swept.add(sweep);
            },
            Duration.ofDays(1))) {
      for (int i = 0; i < 10_002; i++) {
        sweeper.suspect(new Person("saltmarsh", "p-" + i));
      }
      goOn.countDown();

      eventually(() -> swept.contains(new Sweep.OfEverybody()));
      assertThat(swept.size()).isLessThan(10);
    }
  }

  @Test
  void takesNoMoreOnceClosed() {
    Sweeper sweeper = new Sweeper(_ -> {}, Duration.ofDays(1));
    sweeper.close();
    sweeper.request(INES);
  }

  private static void await(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
