/**
 * The contract as the service reads it: whether a body is JSON as it should be, whether an event or
 * a request keeps to its schema and to the rules that no schema can say, and what is wrong where it
 * does not.
 *
 * <p>Knows Jackson, the schema validator, the codec and the domain; neither HTTP nor Kafka, and no
 * clock.
 */
@NullMarked
package dev.poleward.service.contract;

import org.jspecify.annotations.NullMarked;
