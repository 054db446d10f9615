/** What simulated dogs do over weeks, as series that can be plotted. */
@NullMarked
package dev.poleward.load.learner;

import org.jspecify.annotations.NullMarked;
