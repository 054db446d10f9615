/**
 * Programs that load the service, measure it and break it. Each is a class with a main method.
 *
 * <p>May know everything; nothing knows it.
 */
@NullMarked
package dev.poleward.load;

import org.jspecify.annotations.NullMarked;
