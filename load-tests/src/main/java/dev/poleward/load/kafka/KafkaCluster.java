package dev.poleward.load.kafka;

import static java.nio.charset.StandardCharsets.UTF_8;

import dev.poleward.load.node.FreePort;
import dev.poleward.load.node.ScratchFolder;
import dev.poleward.service.journal.Journal;
import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.kafka.clients.admin.Admin;
import org.apache.kafka.clients.admin.TopicDescription;
import org.apache.kafka.common.Node;
import org.apache.kafka.common.TopicPartitionInfo;
import org.apache.kafka.common.Uuid;
import org.apache.kafka.common.utils.Utils;

/** Three brokers of one cluster on this machine. For one thread. */
public final class KafkaCluster implements AutoCloseable {

  private static final int BROKERS = 3;
  private static final String JOURNAL = "journal";
  private static final Duration UP_MAX = Duration.ofSeconds(120);
  private static final int POLL_MILLIS = 100;
  private static final int ANSWER_SECONDS_MAX = 10;

  private final List<BrokerProcess> brokers = new ArrayList<>();
  private final String bootstrap;

  private KafkaCluster(String bootstrap) {
    this.bootstrap = bootstrap;
  }

  /** Starts all brokers and waits until they know each other. */
  public static KafkaCluster start(ScratchFolder scratch) throws IOException {
    int[] clients = IntStream.range(0, BROKERS).map(_ -> FreePort.find()).toArray();
    int[] controllers = IntStream.range(0, BROKERS).map(_ -> FreePort.find()).toArray();
    String voters =
        IntStream.range(0, BROKERS)
            .mapToObj(i -> (i + 1) + "@127.0.0.1:" + controllers[i])
            .collect(Collectors.joining(","));
    String bootstrap =
        IntStream.of(clients)
            .mapToObj(port -> "127.0.0.1:" + port)
            .collect(Collectors.joining(","));
    String clusterId = Uuid.randomUuid().toString();
    KafkaCluster cluster = new KafkaCluster(bootstrap);
    for (int i = 0; i < BROKERS; i++) {
      cluster.brokers.add(
          BrokerProcess.start(
              scratch.resolve("broker-" + (i + 1)),
              clusterId,
              i + 1,
              voters,
              clients[i],
              controllers[i]));
    }
    cluster.await("all brokers are up", admin -> brokersOf(admin) == BROKERS);
    return cluster;
  }

  /** {@code host:port,…} of all brokers. */
  public String bootstrap() {
    return bootstrap;
  }

  /** SIGKILL for the broker that leads where a club's events are; returns its id. */
  public int killLeaderOf(String club) {
    try (Admin admin = admin()) {
      int partition = Utils.toPositive(Utils.murmur2(club.getBytes(UTF_8))) % Journal.PARTITIONS;
      Node leader = journal(admin).partitions().get(partition).leader();
      brokers.get(leader.id() - 1).kill();
      return leader.id();
    }
  }

  /** Starts a killed broker again and waits until it has all that the others have. */
  public void startAgain(int id) throws IOException {
    brokers.get(id - 1).startAgain();
    await(
        "all copies are in step",
        admin -> journal(admin).partitions().stream().allMatch(KafkaCluster::isInStep));
  }

  private static boolean isInStep(TopicPartitionInfo partition) {
    return partition.isr().size() == BROKERS;
  }

  private Admin admin() {
    return Admin.create(Map.of("bootstrap.servers", bootstrap, "request.timeout.ms", 5_000));
  }

  private interface Condition {
    boolean holds(Admin admin);
  }

  private void await(String what, Condition condition) {
    long giveUpAt = System.nanoTime() + UP_MAX.toNanos();
    try (Admin admin = admin()) {
      while (!condition.holds(admin)) {
        for (BrokerProcess broker : brokers) {
          if (!broker.isAlive()) {
            throw new IllegalStateException("broker " + broker.id() + " ended" + broker.logged());
          }
        }
        if (System.nanoTime() > giveUpAt) {
          throw new IllegalStateException("not in " + UP_MAX + ": " + what);
        }
        Thread.sleep(POLL_MILLIS);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted before " + what, e);
    }
  }

  private static int brokersOf(Admin admin) {
    try {
      return admin.describeCluster().nodes().get(ANSWER_SECONDS_MAX, TimeUnit.SECONDS).size();
    } catch (ExecutionException | TimeoutException e) {
      return 0;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return 0;
    }
  }

  private static TopicDescription journal(Admin admin) {
    try {
      TopicDescription journal =
          admin
              .describeTopics(List.of(JOURNAL))
              .allTopicNames()
              .get(ANSWER_SECONDS_MAX, TimeUnit.SECONDS)
              .get(JOURNAL);
      if (journal == null) {
        throw new IllegalStateException("there is no journal");
      }
      return journal;
    } catch (ExecutionException | TimeoutException e) {
      throw new IllegalStateException("the cluster does not tell of its journal", e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    }
  }

  /** What is wrong with the journal's copies, empty when nothing is. */
  public List<String> faultsOfJournal() {
    try (Admin admin = admin()) {
      return journal(admin).partitions().stream()
          .filter(partition -> partition.replicas().size() != BROKERS || !isInStep(partition))
          .map(TopicPartitionInfo::toString)
          .toList();
    }
  }

  /** At once: the last two could not leave in order, and nobody needs their data any more. */
  @Override
  public void close() {
    brokers.forEach(BrokerProcess::kill);
  }
}
