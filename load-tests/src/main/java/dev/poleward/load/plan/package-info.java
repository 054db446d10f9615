/** Simulated dogs that are taken through a programme, by a plain trainer and by the planner. */
@NullMarked
package dev.poleward.load.plan;

import org.jspecify.annotations.NullMarked;
