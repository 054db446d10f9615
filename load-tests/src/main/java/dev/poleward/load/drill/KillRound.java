package dev.poleward.load.drill;

import dev.poleward.load.node.Node;
import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Writers write, the service is killed in the midst of it, and starts again. */
final class KillRound {

  private static final Duration FIRST_ANSWERS_MAX = Duration.ofSeconds(30);

  private KillRound() {}

  /**
   * One round.
   *
   * @param answersFirst whether every writer gets an answer before the time begins to count
   * @param time from then to the kill
   * @return from the start of the process to ready
   */
  static Duration run(Node node, List<Writer> writers, boolean answersFirst, Duration time)
      throws IOException, InterruptedException {
    int port = node.port();
    long[] before = writers.stream().mapToLong(Writer::answers).toArray();
    try (ExecutorService threads = Executors.newCachedThreadPool()) {
      List<Future<?>> all =
          writers.stream()
              .<Future<?>>map(
                  writer ->
                      threads.submit(
                          () -> {
                            writer.writeUntilCut(port);
                            return null;
                          }))
              .toList();
      if (answersFirst) {
        awaitAnswers(writers, before);
      }
      Thread.sleep(time);
      node.kill();
      for (Future<?> each : all) {
        each.get();
      }
    } catch (ExecutionException e) {
      throw new IllegalStateException("a writer failed", e.getCause());
    }
    node.startAgain();
    return node.awaitReady();
  }

  private static void awaitAnswers(List<Writer> writers, long[] before)
      throws InterruptedException {
    long giveUpAt = System.nanoTime() + FIRST_ANSWERS_MAX.toNanos();
    for (int i = 0; i < before.length; i++) {
      while (writers.get(i).answers() == before[i] && System.nanoTime() < giveUpAt) {
        Thread.sleep(1);
      }
    }
  }
}
