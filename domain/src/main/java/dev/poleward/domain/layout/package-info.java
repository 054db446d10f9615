/**
 * Geometry on the ground: where a dog comes from, on which entry side, and what stands there.
 *
 * <p>Knows the Java library, and JGraphT for the assignment problem. Units: metres and degrees.
 */
@NullMarked
package dev.poleward.domain.layout;

import org.jspecify.annotations.NullMarked;
