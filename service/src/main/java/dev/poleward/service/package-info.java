/**
 * The composition root: reads the settings, builds the parts, wires them, starts and stops them.
 *
 * <p>May know every package below it; none of them knows this one.
 */
@NullMarked
package dev.poleward.service;

import org.jspecify.annotations.NullMarked;
