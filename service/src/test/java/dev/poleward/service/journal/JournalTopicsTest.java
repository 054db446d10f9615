package dev.poleward.service.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.apache.kafka.clients.admin.Admin;
import org.apache.kafka.clients.admin.AlterConfigOp;
import org.apache.kafka.clients.admin.ConfigEntry;
import org.apache.kafka.clients.admin.NewTopic;
import org.apache.kafka.common.config.ConfigResource;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Topics on a cluster, of which one broker is enough. In order: each goes on from the last. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
@Timeout(120)
class JournalTopicsTest {

  private EmbeddedBroker broker;
  private Admin admin;

  @BeforeAll
  void start(@TempDir Path folder) throws Exception {
    broker = EmbeddedBroker.start(folder, EmbeddedSettings.DEFAULT, new long[Journal.PARTITIONS]);
    admin = Admin.create(broker.connection().clientProperties("test"));
    remove();
  }

  @AfterAll
  void stop() {
    admin.close(Duration.ofSeconds(1));
    broker.close();
  }

  @Test
  @Order(1)
  void whatIsNotThereIsCreatedAndFoundGood() throws Exception {
    prepare(ClusterSettings.DEFAULT);

    assertThat(setting("journal", "retention.ms")).isEqualTo("-1");
    assertThat(setting("person-keys", "cleanup.policy")).isEqualTo("compact");
    assertThat(setting("person-keys", "message.timestamp.type")).isEqualTo("LogAppendTime");
    assertThatCode(() -> prepare(ClusterSettings.DEFAULT)).doesNotThrowAnyException();
  }

  @Test
  @Order(2)
  void everyFaultOfTopicsThatAreThereIsSaidAtOnce() throws Exception {
    set("journal", "retention.ms", "604800000");
    set("journal", "cleanup.policy", "compact");
    set("journal", "max.message.bytes", "1000000");
    set("person-keys", "min.compaction.lag.ms", "60000");
    set("person-keys", "max.compaction.lag.ms", "9000000");
    set("person-keys", "min.insync.replicas", "2");

    assertThatThrownBy(
            () ->
                prepare(
                    new ClusterSettings(
                        Optional.of(new Replication(3, 2)), PersonKeyTiming.DEFAULT)))
        .isInstanceOf(CannotStart.class)
        .hasMessageContaining("topic journal has 1 copies instead of 3")
        .hasMessageContaining("topic journal has cleanup.policy=compact instead of delete")
        .hasMessageContaining("topic journal has retention.ms=604800000 instead of -1")
        .hasMessageContaining("topic journal has max.message.bytes=1000000 instead of at least")
        .hasMessageContaining("topic person-keys has min.compaction.lag.ms=60000 instead of 0")
        .hasMessageContaining("topic person-keys has max.compaction.lag.ms=9000000 instead of at")
        .hasMessageContaining("topic person-keys has min.insync.replicas=2 instead of at most 1");
    assertThat(setting("journal", "cleanup.policy")).isEqualTo("compact");
  }

  @Test
  @Order(3)
  void aTopicWithOtherPartitionsIsRefused() throws Exception {
    remove();
    admin
        .createTopics(List.of(new NewTopic("journal", 6, (short) 1)))
        .all()
        .get(30, TimeUnit.SECONDS);

    assertThatThrownBy(() -> prepare(ClusterSettings.DEFAULT))
        .isInstanceOf(CannotStart.class)
        .hasMessageContaining("topic journal has 6 partitions instead of 12");
  }

  @Test
  void thereAreAsManyCopiesAsBrokersUpToThree() {
    assertThat(Replication.forBrokers(1)).isEqualTo(new Replication(1, 1));
    assertThat(Replication.forBrokers(2)).isEqualTo(new Replication(2, 1));
    assertThat(Replication.forBrokers(7)).isEqualTo(new Replication(3, 2));
  }

  private void prepare(ClusterSettings settings) {
    JournalTopics.prepareOnCluster(broker.connection(), settings);
  }

  private void remove() throws Exception {
    admin.deleteTopics(Set.of("journal", "person-keys")).all().get(30, TimeUnit.SECONDS);
    while (!admin.listTopics().names().get(30, TimeUnit.SECONDS).isEmpty()) {
      Thread.sleep(20);
    }
  }

  private void set(String topic, String name, String value) throws Exception {
    var change = new AlterConfigOp(new ConfigEntry(name, value), AlterConfigOp.OpType.SET);
    admin
        .incrementalAlterConfigs(
            Map.of(new ConfigResource(ConfigResource.Type.TOPIC, topic), List.of(change)))
        .all()
        .get(30, TimeUnit.SECONDS);
  }

  private String setting(String topic, String name) throws Exception {
    var resource = new ConfigResource(ConfigResource.Type.TOPIC, topic);
    var config =
        admin.describeConfigs(List.of(resource)).all().get(30, TimeUnit.SECONDS).get(resource);
    return config == null ? "" : config.get(name).value();
  }
}
