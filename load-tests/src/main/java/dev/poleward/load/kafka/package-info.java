/** Kafka without the service: as a yardstick, as a cluster, as a place to look into. */
@NullMarked
package dev.poleward.load.kafka;

import org.jspecify.annotations.NullMarked;
