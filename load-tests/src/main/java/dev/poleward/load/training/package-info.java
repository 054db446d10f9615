/** Invented clubs and what they send. The same seed gives the same events. */
@NullMarked
package dev.poleward.load.training;

import org.jspecify.annotations.NullMarked;
