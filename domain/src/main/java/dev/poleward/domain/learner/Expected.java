package dev.poleward.domain.learner;

/**
 * What is to be expected of a rep before it is run.
 *
 * @param entry the chance that the entry is made, 0 to 1
 * @param through the chance that every gap behind it is passed, once it is made, 0 to 1
 */
public record Expected(double entry, double through) {}
