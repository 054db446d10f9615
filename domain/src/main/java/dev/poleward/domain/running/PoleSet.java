package dev.poleward.domain.running;

import dev.poleward.domain.layout.Setup;
import org.jspecify.annotations.Nullable;

/**
 * A set of poles with what belongs to it.
 *
 * @param stands what stands there now; null where nothing does
 */
public record PoleSet(String name, @Nullable Setup stands) {}
