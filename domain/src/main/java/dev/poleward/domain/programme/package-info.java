/**
 * What is to be learned: programmes as data, read from their documents with every fault at once;
 * their rungs and drills; which drill a placed rep belongs to; which programme a dog followed when.
 *
 * <p>Knows {@code domain.event}, {@code domain.layout} and {@code domain.record}. Says nothing
 * about how well a dog does: that is judgement.
 */
@NullMarked
package dev.poleward.domain.programme;

import org.jspecify.annotations.NullMarked;
