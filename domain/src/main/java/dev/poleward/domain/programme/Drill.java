package dev.poleward.domain.programme;

/**
 * What is practised in one rep.
 *
 * @param poles how many, 2 to 24
 */
public record Drill(int poles, RunUp runUp, Rung rung, Handling handling) {}
