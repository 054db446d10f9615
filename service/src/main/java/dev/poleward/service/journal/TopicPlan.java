package dev.poleward.service.journal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.LongPredicate;
import java.util.function.UnaryOperator;
import org.apache.kafka.clients.admin.NewTopic;
import org.apache.kafka.clients.admin.TopicDescription;

/**
 * A topic as it has to be: how to create it, and what is wrong with one that is there.
 *
 * @param name the topic
 * @param partitions how many, fixed for life
 * @param replication of a new one
 * @param settings of a new one
 * @param demands what one that is there has to meet
 */
record TopicPlan(
    String name,
    int partitions,
    Replication replication,
    Map<String, String> settings,
    List<Demand> demands) {

  /** A setting that must have one value. */
  record Demand(String setting, Optional<String> value, LongPredicate range, String words) {

    static Demand is(String setting, String value) {
      return new Demand(setting, Optional.of(value), _ -> true, value);
    }

    static Demand atLeast(String setting, long least) {
      return new Demand(setting, Optional.empty(), is -> is >= least, "at least " + least);
    }

    static Demand atMost(String setting, long most) {
      return new Demand(setting, Optional.empty(), is -> is <= most, "at most " + most);
    }

    boolean isMetBy(String is) {
      try {
        return value.map(is::equals).orElseGet(() -> range.test(Long.parseLong(is)));
      } catch (NumberFormatException none) {
        return false;
      }
    }
  }

  /** The journal: for good, in {@link Journal#PARTITIONS} partitions. */
  static TopicPlan journal(Replication replication) {
    var settings = common(replication);
    settings.put("cleanup.policy", "delete");
    settings.put("retention.ms", "-1");
    settings.put("retention.bytes", "-1");
    settings.put("max.message.bytes", Integer.toString(KafkaJournal.ENTRY_BYTES_MAX));
    settings.put("segment.bytes", Integer.toString(64 << 20));
    return new TopicPlan(
        JournalTopics.JOURNAL,
        Journal.PARTITIONS,
        replication,
        settings,
        List.of(
            Demand.is("cleanup.policy", "delete"),
            Demand.is("retention.ms", "-1"),
            Demand.is("retention.bytes", "-1"),
            Demand.is("unclean.leader.election.enable", "false"),
            Demand.atLeast("max.message.bytes", KafkaJournal.ENTRY_BYTES_MAX)));
  }

  /** Wrapped keys: compacted, and soon. */
  static TopicPlan personKeys(Replication replication, PersonKeyTiming timing) {
    var lag = Long.toString(timing.lag().toMillis());
    var settings = common(replication);
    settings.put("cleanup.policy", "compact");
    settings.put("segment.ms", lag);
    settings.put("segment.bytes", Integer.toString(4 << 20));
    settings.put("segment.jitter.ms", "0");
    settings.put("min.compaction.lag.ms", "0");
    settings.put("max.compaction.lag.ms", lag);
    settings.put("min.cleanable.dirty.ratio", "0.01");
    settings.put("file.delete.delay.ms", Long.toString(timing.fileDeleteDelay().toMillis()));
    // Segments close by the broker's clock alone, so that those of the nodes may differ.
    settings.put("message.timestamp.type", "LogAppendTime");
    return new TopicPlan(
        JournalTopics.PERSON_KEYS,
        1,
        replication,
        settings,
        List.of(
            Demand.is("cleanup.policy", "compact"),
            Demand.atMost("segment.ms", timing.lag().toMillis()),
            Demand.is("min.compaction.lag.ms", "0"),
            Demand.atMost("max.compaction.lag.ms", timing.lag().toMillis()),
            Demand.atMost("file.delete.delay.ms", timing.fileDeleteDelay().toMillis()),
            Demand.is("message.timestamp.type", "LogAppendTime"),
            Demand.is("unclean.leader.election.enable", "false")));
  }

  private static Map<String, String> common(Replication replication) {
    var settings = new TreeMap<String, String>();
    settings.put("min.insync.replicas", Integer.toString(replication.inSyncMin()));
    settings.put("unclean.leader.election.enable", "false");
    return settings;
  }

  /** The same, with every record on the disk before it is acknowledged. */
  TopicPlan flushed() {
    var with = new TreeMap<>(settings);
    with.put("flush.messages", "1");
    return new TopicPlan(name, partitions, replication, with, demands);
  }

  NewTopic newTopic() {
    return new NewTopic(name, partitions, (short) replication.copies()).configs(settings);
  }

  /** Those settings of a new topic that one that is there has otherwise. */
  Map<String, String> deviations(UnaryOperator<String> valueOf) {
    var deviations = new HashMap<String, String>();
    settings.forEach(
        (setting, value) -> {
          if (!value.equals(valueOf.apply(setting))) {
            deviations.put(setting, value);
          }
        });
    return deviations;
  }

  /**
   * All that is wrong with a topic that is there, each in words.
   *
   * @param valueOf its settings
   */
  List<String> faults(TopicDescription there, UnaryOperator<String> valueOf) {
    var faults = new ArrayList<String>();
    if (there.partitions().size() != partitions) {
      faults.add(
          "topic %s has %d partitions instead of %d, which cannot be changed later"
              .formatted(name, there.partitions().size(), partitions));
    }
    int copies =
        there.partitions().stream().mapToInt(each -> each.replicas().size()).min().orElse(0);
    if (copies < replication.copies()) {
      faults.add(
          "topic %s has %d copies instead of %d".formatted(name, copies, replication.copies()));
    }
    for (var demand : demands) {
      var is = valueOf.apply(demand.setting);
      if (!demand.isMetBy(is)) {
        faults.add(
            "topic %s has %s=%s instead of %s".formatted(name, demand.setting, is, demand.words));
      }
    }
    int least = Math.min(replication.inSyncMin(), Math.max(copies, 1));
    for (var demand :
        List.of(
            Demand.atLeast("min.insync.replicas", least),
            Demand.atMost("min.insync.replicas", Math.max(copies, 1)))) {
      var is = valueOf.apply(demand.setting);
      if (!demand.isMetBy(is)) {
        faults.add(
            "topic %s has %s=%s instead of %s, with %d copies"
                .formatted(name, demand.setting, is, demand.words, copies));
      }
    }
    return faults;
  }
}
