/**
 * Routes by resource, thin: what comes in is judged, what goes out is shaped, in one place each.
 *
 * <p>Knows the journal and the projection by their narrow interfaces only.
 */
@NullMarked
package dev.poleward.service.http;

import org.jspecify.annotations.NullMarked;
