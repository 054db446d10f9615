/** Classes as they come, for running orders to be made of. */
@NullMarked
package dev.poleward.load.running;

import org.jspecify.annotations.NullMarked;
