/** What was measured, with what it takes to believe it: machine, date, settings. */
@NullMarked
package dev.poleward.load.figures;

import org.jspecify.annotations.NullMarked;
