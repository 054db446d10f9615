package dev.poleward.service.projection;

import dev.poleward.service.journal.Journal;
import dev.poleward.service.journal.JournalException;
import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executor;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.jspecify.annotations.Nullable;

/**
 * One node among many: asks the journal for its ends, then applies up to there. Questions that come
 * while one is on its way share the next, so that any number of readers ask once a round trip. Safe
 * for use by many threads.
 */
public final class EndOfPartition implements CatchUp {

  private static final Duration ASK_WAIT = Duration.ofSeconds(5);

  private final Journal journal;
  private final Projection projection;
  private final Executor asking;
  private @Nullable CompletableFuture<long[]> onItsWay;
  private @Nullable CompletableFuture<long[]> waiting;

  /**
   * Asks {@code journal} and waits for {@code projection}.
   *
   * @param asking runs one question at a time
   */
  public EndOfPartition(Journal journal, Projection projection, Executor asking) {
    this.journal = journal;
    this.projection = projection;
    this.asking = asking;
  }

  @Override
  public boolean catchUp(String club, Duration wait) {
    long deadline = System.nanoTime() + wait.toNanos();
    int partition = journal.partitionOf(club);
    try {
      long[] ends = ends().get(wait.toNanos(), TimeUnit.NANOSECONDS);
      long left = Math.max(0, deadline - System.nanoTime());
      return projection.await(partition, ends[partition], Duration.ofNanos(left));
    } catch (TimeoutException e) {
      return false;
    } catch (ExecutionException e) {
      if (e.getCause() instanceof JournalException) {
        return false;
      }
      throw new IllegalStateException("asking for the journal's ends failed", e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  /** Ends that are asked for after this call began. */
  private synchronized CompletableFuture<long[]> ends() {
    if (onItsWay == null) {
      return ask(new CompletableFuture<>());
    }
    if (waiting == null) {
      waiting = new CompletableFuture<>();
    }
    return waiting;
  }

  private CompletableFuture<long[]> ask(CompletableFuture<long[]> answer) {
    onItsWay = answer;
    try {
      asking.execute(() -> answer(answer));
    } catch (RejectedExecutionException e) {
      onItsWay = null;
      answer.completeExceptionally(new JournalException("the service is stopping", e));
    }
    return answer;
  }

  private void answer(CompletableFuture<long[]> answer) {
    try {
      answer.complete(journal.ends(ASK_WAIT));
    } catch (RuntimeException | Error e) {
      answer.completeExceptionally(e);
    }
    next();
  }

  private synchronized void next() {
    onItsWay = null;
    if (waiting != null) {
      CompletableFuture<long[]> next = waiting;
      waiting = null;
      ask(next);
    }
  }
}
