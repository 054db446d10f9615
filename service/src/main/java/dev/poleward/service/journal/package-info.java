/**
 * Events to Kafka and back: the journal that is never edited, the broker inside this process, and
 * the small topic that holds people's wrapped keys.
 *
 * <p>Knows the domain's events and {@code service.codec} for their JSON; knows nothing of HTTP or
 * of what is projected.
 */
@NullMarked
package dev.poleward.service.journal;

import org.jspecify.annotations.NullMarked;
