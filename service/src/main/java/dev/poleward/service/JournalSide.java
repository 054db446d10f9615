package dev.poleward.service;

import dev.poleward.service.access.MasterKey;
import dev.poleward.service.access.MasterKey.WhenMissing;
import dev.poleward.service.journal.ClusterSettings;
import dev.poleward.service.journal.DataFolder;
import dev.poleward.service.journal.EmbeddedBroker;
import dev.poleward.service.journal.EmbeddedSettings;
import dev.poleward.service.journal.Journal;
import dev.poleward.service.journal.JournalTopics;
import dev.poleward.service.journal.KafkaConnection;
import dev.poleward.service.journal.KafkaJournal;
import dev.poleward.service.journal.KafkaPersonKeyTopic;
import dev.poleward.service.journal.PersonKeyTiming;
import dev.poleward.service.journal.PersonKeyTopic;
import dev.poleward.service.journal.QueueLimits;
import java.nio.file.Files;

/**
 * The two topics and the key that goes with them: on the broker in this process, or on a cluster
 * that is there already.
 *
 * @param identity tells this journal from every other
 */
record JournalSide(
    Journal journal, PersonKeyTopic personKeys, MasterKey masterKey, String identity) {

  /**
   * Opens both topics.
   *
   * @param acknowledged for each partition, an offset below which all is known to have been
   *     acknowledged
   */
  static JournalSide open(
      Settings settings, DataFolder data, long[] acknowledged, ClosingInOrder closing) {
    return settings
        .kafka()
        .map(servers -> onCluster(settings, data, servers, closing))
        .orElseGet(() -> embedded(settings, data, acknowledged, closing));
  }

  private static JournalSide embedded(
      Settings settings, DataFolder data, long[] acknowledged, ClosingInOrder closing) {
    // A journal that was never begun has no keys that a new master key could not open.
    boolean begun = Files.exists(settings.journal());
    MasterKey masterKey =
        MasterKey.open(settings.masterKey(), begun ? WhenMissing.REFUSE : WhenMissing.CREATE);
    EmbeddedSettings broker =
        new EmbeddedSettings(settings.kafkaPort(), EmbeddedSettings.DEFAULT.keyTiming());
    EmbeddedBroker embedded =
        closing.add(EmbeddedBroker.start(data.journal(), broker, acknowledged));
    return connect(settings, data, embedded.connection(), broker.keyTiming(), masterKey, closing);
  }

  private static JournalSide onCluster(
      Settings settings, DataFolder data, String servers, ClosingInOrder closing) {
    KafkaConnection connection = KafkaConnection.open(servers);
    JournalTopics.prepareOnCluster(connection, ClusterSettings.DEFAULT);
    // All nodes share one master key; a node that made its own could open nothing of the others.
    MasterKey masterKey = MasterKey.open(settings.masterKey(), WhenMissing.REFUSE);
    return connect(
        settings, data, connection, ClusterSettings.DEFAULT.keyTiming(), masterKey, closing);
  }

  private static JournalSide connect(
      Settings settings,
      DataFolder data,
      KafkaConnection connection,
      PersonKeyTiming timing,
      MasterKey masterKey,
      ClosingInOrder closing) {
    Journal journal =
        closing.add(
            KafkaJournal.connect(
                connection, QueueLimits.DEFAULT, data.diskSpace(settings.minFreeBytes())));
    return new JournalSide(
        journal,
        KafkaPersonKeyTopic.connect(connection, timing),
        masterKey,
        JournalTopics.identity(connection));
  }
}
