package dev.poleward.domain.judgement;

/**
 * What was solid slips.
 *
 * @param since index of the first rep after the watch last rested: from there on it got worse, as
 *     near as can be told
 * @param found index of the rep at which the watch sounded
 */
public record Slip(int since, int found) {}
