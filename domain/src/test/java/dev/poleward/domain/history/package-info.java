/**
 * Histories of a club to test with, generated or told by hand, and everything that can be asked of
 * one. For the tests of every module.
 */
@NullMarked
package dev.poleward.domain.history;

import org.jspecify.annotations.NullMarked;
