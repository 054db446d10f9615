/**
 * Kafka to rows and back: folds the journal into RocksDB, and reads facts of one club from the
 * rows.
 *
 * <p>Knows the journal's port and the domain; knows nothing of HTTP.
 */
@NullMarked
package dev.poleward.service.projection;

import org.jspecify.annotations.NullMarked;
