package dev.poleward.service.journal;

/**
 * Where in the journal a record stands.
 *
 * @param partition 0 to {@link Journal#PARTITIONS} - 1
 * @param offset from 0
 */
public record Place(int partition, long offset) {}
