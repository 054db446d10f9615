package dev.poleward.service.projection;

import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.service.journal.Place;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(30)
class AppliedOffsetsTest {

  private static final Duration LONG = Duration.ofSeconds(20);
  private static final Duration SHORT = Duration.ofMillis(5);

  @Test
  void whatIsAppliedIsNotWaitedFor() {
    AppliedOffsets offsets = new AppliedOffsets(new long[] {3, 0});

    assertThat(offsets.await(0, 3, 0)).isTrue();
    assertThat(offsets.await(List.of(new Place(0, 2)), Duration.ZERO)).isTrue();
    assertThat(offsets.await(List.of(), Duration.ZERO)).isTrue();
    assertThat(offsets.next()).containsExactly(3, 0);
  }

  @Test
  void whatIsNotAppliedInTimeIsNotWaitedForAnyLonger() {
    AppliedOffsets offsets = new AppliedOffsets(new long[] {3, 0});

    assertThat(offsets.await(List.of(new Place(0, 3)), SHORT)).isFalse();
    assertThat(offsets.await(List.of(new Place(0, 2), new Place(1, 0)), SHORT)).isFalse();
    assertThat(offsets.await(0, 4, 0)).isFalse();
    assertThat(offsets.waiting()).isZero();
  }

  @Test
  void aWaiterIsLetGoOnceAllItsPlacesAreApplied() throws Exception {
    AppliedOffsets offsets = new AppliedOffsets(new long[3]);
    try (ExecutorService threads = Executors.newVirtualThreadPerTaskExecutor()) {
      List<Place> places = List.of(new Place(2, 1), new Place(0, 4), new Place(0, 2));
      Future<Boolean> waiter = threads.submit(() -> offsets.await(places, LONG));

      offsets.reached(0, 5);
      offsets.reached(2, 1);
      untilThereWait(offsets, 1);
      assertThat(waiter.isDone()).isFalse();
      offsets.reached(2, 2);

      assertThat(waiter.get(10, TimeUnit.SECONDS)).isTrue();
    }
  }

  @Test
  void whoWaitsForLessIsNotKeptByThoseWhoWaitForMore() throws Exception {
    AppliedOffsets offsets = new AppliedOffsets(new long[1]);
    try (ExecutorService threads = Executors.newVirtualThreadPerTaskExecutor()) {
      Future<Boolean> more = threads.submit(() -> offsets.await(0, 5, LONG.toNanos()));
      Future<Boolean> less = threads.submit(() -> offsets.await(0, 2, LONG.toNanos()));
      untilThereWait(offsets, 2);

      offsets.reached(0, 2);

      assertThat(less.get(10, TimeUnit.SECONDS)).isTrue();
      assertThat(more.isDone()).isFalse();
      offsets.reached(0, 5);
      assertThat(more.get(10, TimeUnit.SECONDS)).isTrue();
    }
  }

  /** Many threads wait for many offsets, some not long enough, while partitions go on. */
  @Test
  void nobodyIsLetGoTooEarlyOrForgotten() throws Exception {
    int partitions = 3;
    long end = 500;
    AppliedOffsets offsets = new AppliedOffsets(new long[partitions]);
    Random random = new Random(7);
    List<Future<Boolean>> patient = new ArrayList<>();
    List<Future<?>> hasty = new ArrayList<>();
    try (ExecutorService threads = Executors.newVirtualThreadPerTaskExecutor()) {
      for (int i = 0; i < 3_000; i++) {
        int partition = random.nextInt(partitions);
        long next = 1 + random.nextInt((int) end);
        patient.add(
            threads.submit(
                () ->
                    offsets.await(partition, next, LONG.toNanos())
                        && offsets.next()[partition] >= next));
        if (i % 4 == 0) {
          hasty.add(threads.submit(() -> offsets.await(partition, next, 50_000)));
        }
      }
      List<Thread> folds = new ArrayList<>();
      for (int partition = 0; partition < partitions; partition++) {
        folds.add(advancing(offsets, partition, end));
      }
      for (Thread fold : folds) {
        fold.join();
      }
      for (Future<Boolean> waiter : patient) {
        assertThat(waiter.get(10, TimeUnit.SECONDS)).isTrue();
      }
      for (Future<?> waiter : hasty) {
        waiter.get(10, TimeUnit.SECONDS);
      }
    }
    assertThat(offsets.waiting()).isZero();
  }

  private static Thread advancing(AppliedOffsets offsets, int partition, long end) {
    return Thread.ofPlatform()
        .start(
            () -> {
              for (long next = 1; next <= end; next++) {
                offsets.reached(partition, next);
                LockSupport.parkNanos(20_000);
              }
            });
  }

  @Test
  void aWaiterThatIsInterruptedLeavesNothingBehind() throws Exception {
    AppliedOffsets offsets = new AppliedOffsets(new long[1]);
    AtomicBoolean stillInterrupted = new AtomicBoolean();
    Thread waiter =
        Thread.ofVirtual()
            .start(
                () -> {
                  boolean reached = offsets.await(List.of(new Place(0, 0)), LONG);
                  stillInterrupted.set(!reached && Thread.currentThread().isInterrupted());
                });
    untilThereWait(offsets, 1);

    waiter.interrupt();
    waiter.join();

    assertThat(stillInterrupted).isTrue();
    assertThat(offsets.waiting()).isZero();
  }

  private static void untilThereWait(AppliedOffsets offsets, int waiters) {
    Until.holds(() -> offsets.waiting() >= waiters);
  }
}
