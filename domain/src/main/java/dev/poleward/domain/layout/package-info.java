/**
 * Geometry on the ground: where a dog comes from, on which entry side, and what stands there.
 *
 * <p>Knows nothing but the Java library. Units: metres and degrees.
 */
@NullMarked
package dev.poleward.domain.layout;

import org.jspecify.annotations.NullMarked;
