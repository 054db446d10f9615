/** Dogs of a constant share of clean reps, and how often tests and watches err about them. */
@NullMarked
package dev.poleward.load.judgement;

import org.jspecify.annotations.NullMarked;
