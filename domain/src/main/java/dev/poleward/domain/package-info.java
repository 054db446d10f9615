/**
 * The trade: what happened on the ground, and what can be said about it.
 *
 * <p>Knows the JDK, libraries for mathematics, and nothing else of the project. Nothing in here
 * looks at a clock, draws at random without a seed, or reads a file.
 */
@NullMarked
package dev.poleward.domain;

import org.jspecify.annotations.NullMarked;
