/** What must still be true after something broke. */
@NullMarked
package dev.poleward.load.drill;

import org.jspecify.annotations.NullMarked;
