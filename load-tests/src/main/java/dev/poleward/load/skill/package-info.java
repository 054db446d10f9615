/** Dogs of constant skill, and how often the limits of a threshold hold the truth about them. */
@NullMarked
package dev.poleward.load.skill;

import org.jspecify.annotations.NullMarked;
