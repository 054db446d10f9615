/**
 * Pictures and tables of what the domain answers.
 *
 * <p>A picture is first a list of {@link Mark}s on a {@link Sheet}, and then painted as SVG or as
 * PNG: one drawing, two forms. Everything here is a function of what it is given, so that the same
 * answer is the same bytes on every machine. Knows the domain, not the door, the journal or the
 * rows. The only room that knows AWT, and it is entered when the first picture is asked for.
 */
@NullMarked
package dev.poleward.service.render;

import org.jspecify.annotations.NullMarked;
