/** How well outlooks and starting stages hold for simulated dogs, whose truth is known. */
@NullMarked
package dev.poleward.load.outlook;

import org.jspecify.annotations.NullMarked;
