package dev.poleward.service;

import dev.poleward.service.access.PersonKeys;
import dev.poleward.service.projection.FoldListener;
import io.micrometer.core.instrument.Counter;
import io.micrometer.core.instrument.MeterRegistry;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;

/**
 * Counts what is applied, has a forgotten person's keys swept, and remembers whether something
 * stopped. Safe for use by many threads.
 */
final class ProgressListener implements FoldListener {

  private final PersonKeys personKeys;
  private final BooleanSupplier caughtUp;
  private final Counter applied;
  private final Counter passedOver;
  private final AtomicBoolean failed = new AtomicBoolean();

  /**
   * Listens.
   *
   * @param caughtUp whether all that was there at the start is applied
   */
  ProgressListener(PersonKeys personKeys, MeterRegistry metrics, BooleanSupplier caughtUp) {
    this.personKeys = personKeys;
    this.caughtUp = caughtUp;
    this.applied =
        Counter.builder("poleward.projection.applied")
            .description("Records of the journal that this node has applied")
            .register(metrics);
    this.passedOver =
        Counter.builder("poleward.projection.passed.over")
            .description("Records of the journal that are no events of ours")
            .register(metrics);
  }

  /** Whether a share of the partitions is no longer applied. */
  boolean hasFailed() {
    return failed.get();
  }

  @Override
  public void applied(int records) {
    applied.increment(records);
  }

  @Override
  public void passedOver() {
    passedOver.increment();
  }

  @Override
  public void forgotten(String club, String person) {
    // Half a record must not destroy a key: until all is applied, the sweep after that is enough.
    if (caughtUp.getAsBoolean()) {
      personKeys.sweep(club, person);
    }
  }

  @Override
  public void failed(Throwable why) {
    failed.set(true);
  }
}
