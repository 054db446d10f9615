package dev.poleward.domain.running;

import dev.poleward.domain.layout.Setup;

/**
 * A turn that was run already.
 *
 * @param ended in seconds from the beginning, 0 or before
 */
public record Ran(String dog, String poleSet, Setup setup, int ended) {}
