/**
 * Events as JSON, both ways, one small class for each family of events, and the RFC 8785 form.
 *
 * <p>Knows the domain and Jackson, nothing else of the service.
 */
@NullMarked
package dev.poleward.service.codec;

import org.jspecify.annotations.NullMarked;
