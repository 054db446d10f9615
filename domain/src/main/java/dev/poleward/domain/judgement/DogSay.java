package dev.poleward.domain.judgement;

/**
 * What the returns of one dog make of the usual expectation.
 *
 * @param retention its likeliest, were nothing known of its club
 * @param returns how many it was read from, at least 1
 */
public record DogSay(Retention retention, int returns) {}
