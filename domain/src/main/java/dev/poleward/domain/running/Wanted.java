package dev.poleward.domain.running;

import dev.poleward.domain.layout.Setup;

/**
 * What a dog is to run.
 *
 * @param turns how often it comes out for it, from 1
 */
public record Wanted(String dog, Setup setup, int turns) {}
