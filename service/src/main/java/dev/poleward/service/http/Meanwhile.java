package dev.poleward.service.http;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;

/**
 * Something that is computed on a thread of its own while its asker computes something else: of a
 * long record each of several looks takes milliseconds, and none needs the others. Pure
 * computations only, which end by themselves.
 */
final class Meanwhile<T> {

  private final FutureTask<T> task;

  private Meanwhile(FutureTask<T> task) {
    this.task = task;
  }

  /** Begins. */
  static <T> Meanwhile<T> of(Supplier<T> computation) {
    FutureTask<T> task = new FutureTask<>(computation::get);
    Thread.ofVirtual().name("meanwhile").start(task);
    return new Meanwhile<>(task);
  }

  /** What came of it, once it has; throws what it threw. */
  T get() {
    try {
      return task.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while something was computed", e);
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException bug) {
        throw bug;
      }
      throw new IllegalStateException(e.getCause());
    }
  }
}
