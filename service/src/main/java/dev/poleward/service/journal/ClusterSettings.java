package dev.poleward.service.journal;

import java.time.Duration;
import java.util.Optional;

/**
 * Settings of the topics on a cluster that is there already.
 *
 * @param replication what the topics must have at least; empty: as many copies as a cluster of that
 *     size allows, up to three
 * @param keyTiming how fast a destroyed key's last copy goes; the pause of the cleaner is the
 *     brokers' {@code log.cleaner.backoff.ms}
 */
public record ClusterSettings(Optional<Replication> replication, PersonKeyTiming keyTiming) {

  /** By the number of brokers, keys gone within 5 minutes. */
  public static final ClusterSettings DEFAULT =
      new ClusterSettings(
          Optional.empty(),
          new PersonKeyTiming(
              Duration.ofSeconds(60),
              Duration.ofSeconds(15),
              Duration.ofSeconds(1),
              Duration.ofSeconds(222)));
}
