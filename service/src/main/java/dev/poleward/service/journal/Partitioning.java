package dev.poleward.service.journal;

import static java.nio.charset.StandardCharsets.UTF_8;

import org.apache.kafka.common.utils.Utils;

/** Which partition a club's entries stand in: the one that every stock Kafka client picks too. */
final class Partitioning {

  private Partitioning() {}

  static int partitionOf(String club) {
    return partitionOf(club.getBytes(UTF_8));
  }

  static int partitionOf(byte[] key) {
    return Utils.toPositive(Utils.murmur2(key)) % Journal.PARTITIONS;
  }
}
