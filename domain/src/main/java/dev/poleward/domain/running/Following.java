package dev.poleward.domain.running;

/**
 * A dog that may not come to a pole set right after another: a turn stays empty between them unless
 * somebody else runs there.
 */
public record Following(String dog, String after) {}
