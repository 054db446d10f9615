/** The service as a process of its own, started as users start it, stopped and killed. */
@NullMarked
package dev.poleward.load.node;

import org.jspecify.annotations.NullMarked;
