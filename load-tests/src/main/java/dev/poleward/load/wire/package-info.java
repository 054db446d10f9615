/** HTTP as a client sees it that wants to cost little and to hide nothing. */
@NullMarked
package dev.poleward.load.wire;

import org.jspecify.annotations.NullMarked;
