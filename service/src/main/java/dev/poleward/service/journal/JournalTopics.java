package dev.poleward.service.journal;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.apache.kafka.clients.admin.Admin;
import org.apache.kafka.clients.admin.AlterConfigOp;
import org.apache.kafka.clients.admin.Config;
import org.apache.kafka.clients.admin.ConfigEntry;
import org.apache.kafka.common.KafkaFuture;
import org.apache.kafka.common.config.ConfigResource;
import org.apache.kafka.common.errors.TopicExistsException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Sees to the two topics of the service: creates what is not there, and lets no start pass with one
 * that would not keep what it is given. One object for each start, for one thread.
 */
public final class JournalTopics implements AutoCloseable {

  /** All that happened, for good. */
  static final String JOURNAL = "journal";

  /** Wrapped keys of people, compacted. */
  static final String PERSON_KEYS = "person-keys";

  private static final Logger LOG = LoggerFactory.getLogger(JournalTopics.class);
  private static final Duration ANSWER_MAX = Duration.ofSeconds(30);
  private static final UntilKnown KNOWN = new UntilKnown(ANSWER_MAX, Duration.ofMillis(100));

  private final KafkaConnection connection;
  private final Admin admin;

  private JournalTopics(KafkaConnection connection) {
    this.connection = connection;
    this.admin = Admin.create(connection.clientProperties("poleward-topics"));
  }

  /**
   * What tells this journal from every other, one of the same name that was made anew included.
   *
   * @throws CannotStart when the cluster does not say
   */
  public static String identity(KafkaConnection connection) {
    try (var admin = Admin.create(connection.clientProperties("poleward-identity"))) {
      var topics = admin.describeTopics(List.of(JOURNAL)).allTopicNames();
      return topics.get(ANSWER_MAX.toSeconds(), TimeUnit.SECONDS).values().stream()
          .map(topic -> topic.topicId().toString())
          .findFirst()
          .orElseThrow(() -> new CannotStart("Kafka knows no topic " + JOURNAL + "."));
    } catch (ExecutionException | TimeoutException silent) {
      throw new CannotStart(
          "Kafka at %s does not tell about its topic %s."
              .formatted(connection.bootstrapServers(), JOURNAL),
          silent);
    } catch (InterruptedException stopping) {
      Thread.currentThread().interrupt();
      throw new CannotStart("Interrupted while asking about the topic " + JOURNAL, stopping);
    }
  }

  /**
   * Creates the topics on a cluster, or checks those that are there; changes none of these.
   *
   * @throws CannotStart naming everything that is wrong with them, or when the cluster does not
   *     answer within 30 s
   */
  public static void prepareOnCluster(KafkaConnection connection, ClusterSettings settings) {
    try (var topics = new JournalTopics(connection)) {
      var replication =
          settings.replication().orElseGet(() -> Replication.forBrokers(topics.brokers()));
      topics.createOrCheck(
          List.of(
              TopicPlan.journal(replication),
              TopicPlan.personKeys(replication, settings.keyTiming())));
    }
  }

  /**
   * Creates the topics on the broker of this process, or sets them right.
   *
   * @param mustBeThere whether the broker's files hold entries, so that a missing topic would be a
   *     lost one
   */
  static void prepareEmbedded(
      KafkaConnection connection, PersonKeyTiming timing, boolean mustBeThere) {
    try (var topics = new JournalTopics(connection)) {
      var plans =
          List.of(
              TopicPlan.journal(Replication.SINGLE).flushed(),
              TopicPlan.personKeys(Replication.SINGLE, timing).flushed());
      if (mustBeThere && !topics.names().contains(JOURNAL)) {
        throw new CannotStart(
            "The data folder holds a journal that its broker does not know: its record of itself"
                + " (__cluster_metadata-0) was lost or is another's. Restore the whole folder from"
                + " a backup.");
      }
      topics.setRight(plans);
      topics.createOrCheck(plans);
    }
  }

  private void setRight(List<TopicPlan> plans) {
    var there = names();
    for (var plan : plans) {
      if (!there.contains(plan.name())) {
        continue;
      }
      var changes = plan.deviations(settings(plan));
      if (!changes.isEmpty()) {
        LOG.info("Setting {} of topic {}", changes, plan.name());
        var operations =
            changes.entrySet().stream()
                .map(
                    change ->
                        new AlterConfigOp(
                            new ConfigEntry(change.getKey(), change.getValue()),
                            AlterConfigOp.OpType.SET))
                .toList();
        var unused =
            answer(() -> admin.incrementalAlterConfigs(Map.of(resource(plan), operations)).all());
      }
    }
  }

  private void createOrCheck(List<TopicPlan> plans) {
    var there = names();
    var faults = new ArrayList<String>();
    for (var plan : plans) {
      if (there.contains(plan.name()) || !create(plan)) {
        var description =
            answer(() -> admin.describeTopics(List.of(plan.name())).allTopicNames())
                .get(plan.name());
        if (description != null) {
          faults.addAll(plan.faults(description, settings(plan)));
        }
      }
    }
    if (!faults.isEmpty()) {
      throw new CannotStart(
          "Kafka at %s has topics that would not keep what they are given:\n  %s"
              .formatted(connection.bootstrapServers(), String.join("\n  ", faults)));
    }
    for (var plan : plans) {
      awaitLeaders(plan);
    }
  }

  /** Whether it was not there before; another node may start at the same time. */
  private boolean create(TopicPlan plan) {
    try {
      var unused =
          admin
              .createTopics(List.of(plan.newTopic()))
              .all()
              .get(ANSWER_MAX.toSeconds(), TimeUnit.SECONDS);
      return true;
    } catch (ExecutionException failed) {
      if (failed.getCause() instanceof TopicExistsException) {
        return false;
      }
      throw cannot("create the topic " + plan.name(), failed);
    } catch (TimeoutException late) {
      throw cannot("create the topic " + plan.name(), late);
    } catch (InterruptedException stopping) {
      Thread.currentThread().interrupt();
      throw cannot("create the topic " + plan.name(), stopping);
    }
  }

  /** Returns once every partition can be read, and so has its files. */
  private void awaitLeaders(TopicPlan plan) {
    try (var ends = new PartitionEnds(connection, plan.name(), plan.partitions())) {
      var unused = KNOWN.answer(() -> ends.now(ANSWER_MAX));
    } catch (JournalException unreadable) {
      throw cannot("read the topic " + plan.name(), unreadable);
    } catch (InterruptedException stopping) {
      Thread.currentThread().interrupt();
      throw cannot("read the topic " + plan.name(), stopping);
    }
  }

  private int brokers() {
    return answer(() -> admin.describeCluster().nodes()).size();
  }

  private Set<String> names() {
    return answer(() -> admin.listTopics().names());
  }

  private UnaryOperator<String> settings(TopicPlan plan) {
    var resource = resource(plan);
    Config config = answer(() -> admin.describeConfigs(List.of(resource)).all()).get(resource);
    return setting -> {
      var entry = config == null ? null : config.get(setting);
      return entry == null ? "unknown" : String.valueOf(entry.value());
    };
  }

  private static ConfigResource resource(TopicPlan plan) {
    return new ConfigResource(ConfigResource.Type.TOPIC, plan.name());
  }

  private <T> T answer(Supplier<KafkaFuture<T>> question) {
    try {
      return KNOWN.answer(() -> question.get().get(ANSWER_MAX.toSeconds(), TimeUnit.SECONDS));
    } catch (InterruptedException stopping) {
      Thread.currentThread().interrupt();
      throw cannot("look at its topics", stopping);
    } catch (Exception silent) {
      throw cannot("look at its topics", silent);
    }
  }

  private CannotStart cannot(String what, Exception why) {
    var cause = why.getCause() == null ? why : why.getCause();
    return new CannotStart(
        "Kafka at %s did not let us %s within %d s. Check that it runs and may be reached: %s"
            .formatted(
                connection.bootstrapServers(), what, ANSWER_MAX.toSeconds(), cause.getMessage()),
        why);
  }

  @Override
  public void close() {
    admin.close(Duration.ofSeconds(1));
  }
}
